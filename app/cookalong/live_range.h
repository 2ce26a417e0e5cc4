#pragma once
// The range from above and the ovens, as they stand now.

#include <QWidget>
#include <memory>

#include "live/service.h"
#include "range/range_painter.h"
#include "timeline/primitives_qt.h"

namespace rangeline {

class LiveRange : public QWidget {
    Q_OBJECT

  public:
    LiveRange(const live::Service& service, const QLocale& locale, QWidget* parent = nullptr);
    ~LiveRange() override;

    void show(Instant now);
    /// How large its letters are: 1 as in the other windows.
    void setEnlarged(double factor);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    const live::Service& service_;
    QLocale locale_;
    RangeScene scene_;
    double factor_ = 1;
    std::unique_ptr<QtFonts> fonts_;
};

}  // namespace rangeline
