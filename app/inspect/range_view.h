#pragma once
// The range from above and the ovens from the front, at one instant of the open lesson.

#include <QWidget>
#include <memory>

#include "document/lesson_document.h"
#include "range/range_painter.h"

namespace rangeline {

class QtFonts;

class RangeView : public QWidget {
    Q_OBJECT

  public:
    RangeView(const LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);
    ~RangeView() override;

    /// The picture is of this instant, at the station of this group.
    void show(Instant at, int group);
    Instant time() const { return at_; }
    QSize sizeHint() const override { return {300, 330}; }
    QSize minimumSizeHint() const override { return {200, 180}; }

  Q_SIGNALS:
    /// A click on what stands there.
    void stepChosen(const rangeline::PlacementKey& key);
    /// Left and right go along the time.
    void timeChosen(rangeline::Instant at);

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void renew();
    const std::pair<QRectF, PlacementKey>* targetAt(const QPointF& point) const;
    void step(int grains);

    const LessonDocument& document_;
    QLocale locale_;
    Instant at_;
    int group_ = 0;
    RangeScene scene_;
    RangePicture picture_;
    std::unique_ptr<QtFonts> fonts_;
};

}  // namespace rangeline
