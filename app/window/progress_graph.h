#pragma once
// How arranging gets on: the best plan and what none can better, over time, with what they come to
// written beside. The sentence above it says the same in words.

#include <QElapsedTimer>
#include <QLocale>
#include <QTimer>
#include <QWidget>

#include "document/lesson_document.h"
#include "window/progress_trace.h"

namespace rangeline {

class ProgressGraph : public QWidget {
    Q_OBJECT

  public:
    ProgressGraph(const LessonDocument& document, const QLocale& locale, QWidget* parent);

    void clear();
    /// `text`: the sentence, which is what a screen reader is given.
    void add(const ArrangeProgress& progress, const QString& text);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paintGap(QPainter& painter, const QPolygonF& best, const QPolygonF& bound) const;
    void paintCaptions(QPainter& painter, const QRectF& captions, double bestY,
                       double boundY) const;
    QString caption(const QString& words, std::int64_t value) const;

    const LessonDocument& document_;
    QLocale locale_;
    ProgressTrace trace_;
    Aim aim_ = Aim::StartLate;
    QElapsedTimer clock_;  ///< since the last thing that was told
    double lastSeconds_ = 0;
    QTimer* again_;  ///< while it runs the lines go on
};

}  // namespace rangeline
