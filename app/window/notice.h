#pragma once

#include <QFrame>

class QLabel;

namespace rangeline {

/// A sentence below the timeline that stays until it is read and put away.
class Notice : public QFrame {
    Q_OBJECT

  public:
    explicit Notice(QWidget* parent = nullptr);

    /// Empty: nothing is shown.
    void say(const QString& text);
    QString text() const;

  private:
    QLabel* text_;
};

}  // namespace rangeline
