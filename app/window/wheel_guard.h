#pragma once

#include <QObject>

namespace rangeline {

/// Keeps the wheel, meant to scroll, from changing lists, numbers and times it passes over: only
/// what has the focus takes it.
class WheelGuard : public QObject {
  public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace rangeline
