#include "timeline_view/timeline_view.h"

#include <QEvent>
#include <QFontInfo>
#include <QResizeEvent>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "document/free_place.h"
#include "timeline_view/carry_tool.h"
#include "timeline_view/describe.h"
#include "timeline_view/point_tool.h"
#include "timeline_view/selection_overlay.h"
#include "timeline_view/timeline_access.h"

namespace rangeline {
namespace {

constexpr double leastZoom = 0.5;
constexpr double mostZoom = 60;
constexpr double zoomStep = 1.25;

/// The screen's sizes for the user's own font size.
TimelineStyle styleFor(const QFont& font) {
    constexpr double designedFor = 13;
    const double factor = std::clamp(QFontInfo(font).pixelSize() / designedFor, 0.8, 2.5);
    return TimelineStyle::screenEnlarged(factor);
}

}  // namespace

TimelineView::TimelineView(LessonDocument& document, QWidget* parent)
    : QAbstractScrollArea(parent), document_(document) {
    installTimelineAccess();
    setFocusPolicy(Qt::StrongFocus);
    // Time runs as clocks and printed sheets have it, also where the text runs from right to left:
    // the plan on the screen and the one on the wall must not be mirror images.
    setLayoutDirection(Qt::LeftToRight);
    setAccessibleName(tr("Timeline"));
    viewport()->setMouseTracking(true);
    viewport()->setAcceptDrops(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);  // every pixel is painted here
    setAcceptDrops(true);
    setFrameShape(QFrame::NoFrame);
    tool_ = std::make_unique<PointTool>(asAdapter());
    connect(&document_, &LessonDocument::changed, this, &TimelineView::lessonChanged);
    styleAgain();
}

TimelineView::~TimelineView() = default;

// ---- the lesson -----------------------------------------------------------------------------

void TimelineView::lessonChanged(const LessonChange& change) {
    letGo();
    if (!committing_) {
        nudging_ = 0;
    }
    if (change.all) {
        selection_.clear();
        fitting_ = true;
    }
    readLesson();
    std::vector<PlacementKey> kept = selection_;
    std::erase_if(kept, [&](const PlacementKey& key) { return scene_.itemOf(key) < 0; });
    if (kept != selection_ || change.all) {
        selection_ = std::move(kept);
        Q_EMIT selectionChanged();
    }
    if (change.all && isVisible()) {
        zoomToFit();
    }
    blocksChanged(*this);
    // What was said of the block before the change, or before it was taken back, is no longer so.
    announce(focusItem() < 0 ? QString() : describe(focusItem()));
}

/// The time at the left edge stays there.
void TimelineView::readLesson() {
    const bool first = scene_.model().lanes.empty();
    const double edge = style_.headWidth + offset().x();
    const Instant left = first ? Instant() : scene_.layout().scale.timeAt(edge);
    scene_.read(document_, locale());
    layOutAgain();
    if (!first) {
        horizontalScrollBar()->setValue(qRound(scene_.layout().scale.xOf(left) - style_.headWidth));
    }
}

void TimelineView::layOutAgain() {
    scene_.layOut(style_, {unitsPerMinute_, devicePixelRatioF(), onlyUsedLanes_});
    overlay_.reset();
    updateScrollBars();
    viewport()->update();
}

void TimelineView::styleAgain() {
    style_ = styleFor(font());
    fonts_ = std::make_unique<QtFonts>(style_, 1.0);
    readLesson();
}

void TimelineView::setOnlyUsedLanes(bool only) {
    onlyUsedLanes_ = only;
    layOutAgain();
}

// ---- where things are -----------------------------------------------------------------------

QRectF TimelineView::plotArea() const {
    const double top = 2 * style_.axisRow;
    return QRectF(QPointF(style_.headWidth, top),
                  QPointF(viewport()->width(), viewport()->height()));
}

/// On whole device pixels, so that edges of blocks stay sharp.
QPointF TimelineView::offset() const {
    const double scale = devicePixelRatioF();
    return {std::round(horizontalScrollBar()->value() * scale) / scale,
            std::round(verticalScrollBar()->value() * scale) / scale};
}

QRectF TimelineView::toViewport(const QRectF& rect) const {
    return rect.translated(-offset());
}

void TimelineView::updateScrollBars() {
    const QSize room = viewport()->size();
    const QRectF& all = scene_.layout().bounds;
    horizontalScrollBar()->setRange(
        0, std::max(0, static_cast<int>(std::ceil(all.width())) - room.width()));
    horizontalScrollBar()->setPageStep(room.width());
    horizontalScrollBar()->setSingleStep(40);
    verticalScrollBar()->setRange(
        0, std::max(0, static_cast<int>(std::ceil(all.height())) - room.height()));
    verticalScrollBar()->setPageStep(room.height());
    verticalScrollBar()->setSingleStep(qRound(style_.rowHeight));
}

void TimelineView::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    updateScrollBars();
    constexpr double least = 100;
    if (fitting_ && event->size().width() > style_.headWidth + least) {
        zoomToFit();
    }
}

void TimelineView::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LocaleChange) {
        styleAgain();
    } else if (event->type() == QEvent::PaletteChange) {
        viewport()->update();
    }
}

void TimelineView::scrollContentsBy(int, int) {
    viewport()->update();
}

void TimelineView::scrollTo(const QRectF& rect) {
    const QRectF area = plotArea();
    const auto along = [](QScrollBar* bar, double low, double high, double from, double to) {
        constexpr double room = 12;
        if (low - room < from) {
            bar->setValue(bar->value() + static_cast<int>(std::floor(low - room - from)));
        } else if (high + room > to) {
            const double by = std::min(high + room - to, low - room - from);
            bar->setValue(bar->value() + static_cast<int>(std::ceil(by)));
        }
    };
    const QRectF here = toViewport(rect);
    along(horizontalScrollBar(), here.left(), here.right(), area.left(), area.right());
    along(verticalScrollBar(), here.top(), here.bottom(), area.top(), area.bottom());
}

// ---- zoom -----------------------------------------------------------------------------------

void TimelineView::zoom(double factor, double anchorX) {
    const double at = std::max(anchorX, style_.headWidth);
    const Instant time = scene_.layout().scale.timeAt(at + offset().x());
    unitsPerMinute_ = std::clamp(unitsPerMinute_ * factor, leastZoom, mostZoom);
    fitting_ = false;
    layOutAgain();
    horizontalScrollBar()->setValue(qRound(scene_.layout().scale.xOf(time) - at));
}

void TimelineView::zoomIn() {
    zoom(zoomStep, plotArea().center().x());
}

void TimelineView::zoomOut() {
    zoom(1 / zoomStep, plotArea().center().x());
}

void TimelineView::zoomToFit() {
    constexpr Duration room = Duration::minutes(10);
    const Interval& span = scene_.model().span;
    const bool nothing = scene_.model().items.empty();
    const Interval shown = nothing ? scene_.window() : Interval{span.begin - room, span.end + room};
    const double minutes = std::max(30.0, shown.length().inMinutes());
    unitsPerMinute_ = std::clamp(plotArea().width() / minutes, leastZoom, mostZoom / 4);
    layOutAgain();
    horizontalScrollBar()->setValue(
        qRound(scene_.layout().scale.xOf(shown.begin) - style_.headWidth));
    fitting_ = true;
}

// ---- selection ------------------------------------------------------------------------------

void TimelineView::select(const std::vector<PlacementKey>& keys) {
    std::vector<PlacementKey> known = keys;
    std::erase_if(known, [&](const PlacementKey& key) { return scene_.itemOf(key) < 0; });
    if (known == selection_) {
        return;
    }
    selection_ = std::move(known);
    nudging_ = 0;
    overlay_.reset();
    viewport()->update();
    const int item = focusItem();
    announce(item < 0 ? QString() : describe(item));
    if (item >= 0) {
        Q_EMIT timeHovered(scene_.item(item).interval.begin);
        focusChanged(*this, item);
    }
    Q_EMIT selectionChanged();
}

int TimelineView::focusItem() const {
    return selection_.empty() ? -1 : scene_.itemOf(selection_.front());
}

QString TimelineView::describe(int item) const {
    return describeItem(document_, scene_, item, locale());
}

void TimelineView::reveal(const PlacementKey& key) {
    select({key});
    if (const int item = scene_.itemOf(key); item >= 0) {
        scrollTo(scene_.rectOf(scene_.mainBlockOf(item)));
    }
}

void TimelineView::reveal(const Interval& interval, const EquipmentRef& equipment) {
    const TimeScale& scale = scene_.layout().scale;
    QRectF rect(scale.xOf(interval.begin), plotArea().top() + offset().y() + 20,
                scale.widthOf(interval.length()), 1);
    for (const LaneBox& box : scene_.layout().lanes) {
        if (scene_.lane(box.lane).equipment == equipment) {
            rect.setTop(box.top);
            rect.setHeight(box.height);
            break;
        }
    }
    scrollTo(rect);
}

void TimelineView::showSpreads(std::vector<std::pair<PlacementKey, SpreadMark>> spreads) {
    spreads_ = std::move(spreads);
    overlay_.reset();
    viewport()->update();
}

const TimelineOverlay& TimelineView::overlay() const {
    if (!overlay_) {
        overlay_ = overlayOf(document_, scene_, selection_);
        overlay_->ghosts = look_.ghosts;
        overlay_->clashing = look_.clashing;
        for (const auto& [key, mark] : spreads_) {
            if (const int item = scene_.itemOf(key); item >= 0) {
                overlay_->spreads.push_back(mark);
                overlay_->spreads.back().item = item;
            }
        }
        if (proposal_) {
            overlay_->links.clear();  // they would be those of before
            overlay_->reachOf.reset();
        }
    }
    return *overlay_;
}

void TimelineView::announce(const QString& text) {
    Q_EMIT statusChanged(text);
}

}  // namespace rangeline
