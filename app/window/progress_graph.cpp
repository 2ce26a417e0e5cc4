#include "window/progress_graph.h"

#include <QPainter>
#include <algorithm>

#include "text/arrange_text.h"

namespace rangeline {
namespace {

constexpr int linesHigh = 7;
constexpr qreal planWidth = 2.5;
constexpr qreal boundWidth = 1.5;
constexpr int milliseconds = 200;

}  // namespace

ProgressGraph::ProgressGraph(const LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QWidget(parent), document_(document), locale_(locale), again_(new QTimer(this)) {
    setAccessibleName(tr("Best plan and what none can better"));
    again_->setInterval(milliseconds);
    connect(again_, &QTimer::timeout, this, qOverload<>(&QWidget::update));
}

QSize ProgressGraph::sizeHint() const {
    const QFontMetrics metrics = fontMetrics();
    return {metrics.averageCharWidth() * 60, metrics.lineSpacing() * linesHigh};
}

void ProgressGraph::clear() {
    trace_.clear();
    again_->stop();
    setAccessibleDescription({});
    update();
}

void ProgressGraph::add(const ArrangeProgress& progress, const QString& text) {
    trace_.add(progress);
    aim_ = progress.aim;
    lastSeconds_ = progress.seconds;
    clock_.start();
    again_->start();
    setAccessibleDescription(text);
    update();
}

QString ProgressGraph::caption(const QString& words, std::int64_t value) const {
    return words.arg(aimValueText(aim_, value, document_.shownHead(), locale_));
}

void ProgressGraph::paintGap(QPainter& painter, const QPolygonF& best,
                             const QPolygonF& bound) const {
    QPolygonF between = bound;
    std::for_each(best.crbegin(), best.crend(), [&](const QPointF& p) { between << p; });
    QColor light = palette().color(QPalette::Highlight);
    light.setAlphaF(0.15F);
    painter.setPen(Qt::NoPen);
    painter.setBrush(light);
    painter.drawPolygon(between);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette().color(QPalette::WindowText), boundWidth, Qt::DashLine));
    painter.drawPolyline(bound);
    painter.setPen(QPen(palette().color(QPalette::WindowText), planWidth));
    painter.drawPolyline(best);
}

/// Each beside the end of its line, and never one over the other.
void ProgressGraph::paintCaptions(QPainter& painter, const QRectF& captions, double bestY,
                                  double boundY) const {
    const double line = fontMetrics().lineSpacing();
    const double upper =
        std::clamp(boundY - line / 2, captions.top(), captions.bottom() - 2 * line);
    const double lower = std::clamp(bestY - line / 2, upper + line, captions.bottom() - line);
    const auto put = [&](double top, const QString& words) {
        painter.drawText(QRectF(captions.left(), top, captions.width(), line),
                         Qt::AlignLeading | Qt::AlignVCenter, words);
    };
    put(lower, caption(tr("best plan: %1"), trace_.best()));
    put(upper, trace_.best() <= trace_.bound() ? tr("none can be better")
                                               : caption(tr("none beyond: %1"), trace_.bound()));
}

void ProgressGraph::paintEvent(QPaintEvent*) {
    if (trace_.empty()) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QFontMetrics metrics = fontMetrics();
    const int captionWidth =
        std::max(metrics.horizontalAdvance(caption(tr("best plan: %1"), trace_.best())),
                 metrics.horizontalAdvance(caption(tr("none beyond: %1"), trace_.bound()))) +
        metrics.averageCharWidth();
    const QRectF whole = QRectF(rect()).adjusted(planWidth, planWidth, -planWidth, -planWidth);
    const qreal gap = metrics.averageCharWidth();
    QRectF lines = whole.adjusted(0, metrics.lineSpacing() / 2.0, -captionWidth - gap,
                                  -metrics.lineSpacing() / 2.0);
    QRectF captions = whole;
    captions.setLeft(lines.right() + gap);
    const double now = lastSeconds_ + static_cast<double>(clock_.elapsed()) / 1000;
    const QPolygonF best = trace_.bestIn(lines, now);
    const QPolygonF bound = trace_.boundIn(lines, now);
    painter.setPen(QPen(palette().color(QPalette::Mid), 1));
    painter.drawLine(lines.bottomLeft(), lines.bottomRight());
    paintGap(painter, best, bound);
    painter.setPen(palette().color(QPalette::WindowText));
    paintCaptions(painter, captions, best.last().y(), bound.last().y());
}

}  // namespace rangeline
