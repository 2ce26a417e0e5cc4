#include "inspect/range_view.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "inspect/screen_palette.h"
#include "timeline/primitives_qt.h"

namespace rangeline {
namespace {

constexpr double margin = 8;

int heatedAt(const UseIndex& index, Instant at) {
    int heated = 0;
    for (int unit = 0; unit < index.count(Subject::Burner); ++unit) {
        heated += static_cast<int>(std::ranges::count_if(
            index.burnerUses(unit),
            [at](const BurnerUse& use) { return use.interval.contains(at); }));
    }
    for (int unit = 0; unit < index.count(Subject::Oven); ++unit) {
        heated += static_cast<int>(std::ranges::count_if(
            index.ovenUses(unit), [at](const OvenUse& use) { return use.interval.contains(at); }));
    }
    return heated;
}

/// When most is on the range and in the ovens, so that the picture has something to show at once.
Instant busiest(const UseIndex& index) {
    Instant found = Instant::serving();
    int most = 0;
    for (int task = 0; task < index.tasks(); ++task) {
        const Instant at = index.placed(task).interval.begin;
        if (const int heated = index.placed(task) ? heatedAt(index, at) : 0; heated > most) {
            most = heated;
            found = at;
        }
    }
    return found;
}

}  // namespace

RangeView::RangeView(const LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QWidget(parent), document_(document), locale_(locale) {
    setFocusPolicy(Qt::StrongFocus);
    setLayoutDirection(Qt::LeftToRight);  // the left burner is at the left
    setAccessibleName(tr("Range and oven"));
    connect(&document, &LessonDocument::changed, this, [this](const LessonChange& change) {
        if (change.all) {
            at_ = busiest(document_.index());
            group_ = 0;
        }
        renew();
    });
    renew();
}

RangeView::~RangeView() = default;

void RangeView::show(Instant at, int group) {
    if (at != at_ || group != group_) {
        at_ = at;
        group_ = std::clamp(group, 0, document_.lesson().head.groups.count - 1);
        renew();
    }
}

void RangeView::renew() {
    const TextContext text = document_.text(locale_);
    scene_ = rangeScene(document_.index(), text, at_, group_);
    setAccessibleDescription(scene_.clock + QStringLiteral(". ") +
                             sceneLines(scene_).join(QStringLiteral(". ")));
    update();
}

void RangeView::paintEvent(QPaintEvent*) {
    if (!fonts_ || fonts_->scale() != devicePixelRatioF()) {
        fonts_ = std::make_unique<QtFonts>(TimelineStyle::screen(), devicePixelRatioF());
    }
    const QRectF frame = QRectF(rect()).adjusted(margin, margin, -margin, -margin);
    picture_ = paintRange(scene_, frame, *fonts_);
    const Palette& colours = screenPalette(*this);
    QPainter painter(this);
    painter.fillRect(rect(), QColor::fromRgba(colours[Colour::Paper]));
    if (hasFocus()) {
        painter.setPen(QPen(QColor::fromRgba(colours[Colour::Selection]), 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
    painter.scale(1 / fonts_->scale(), 1 / fonts_->scale());
    play(picture_.picture, painter, colours, *fonts_);
}

const std::pair<QRectF, PlacementKey>* RangeView::targetAt(const QPointF& point) const {
    for (const auto& target : picture_.targets) {
        if (target.first.contains(point)) {
            return &target;
        }
    }
    return nullptr;
}

void RangeView::mousePressEvent(QMouseEvent* event) {
    if (const auto* target = targetAt(event->position())) {
        Q_EMIT stepChosen(target->second);
    }
}

void RangeView::step(int grains) {
    show(at_ + document_.lesson().head.grain * grains, group_);
    Q_EMIT timeChosen(at_);
}

void RangeView::keyPressEvent(QKeyEvent* event) {
    constexpr int big = 10;
    const int grains = event->modifiers() & Qt::ShiftModifier ? big : 1;
    if (event->key() == Qt::Key_Left) {
        step(-grains);
    } else if (event->key() == Qt::Key_Right) {
        step(grains);
    } else {
        QWidget::keyPressEvent(event);
    }
}

bool RangeView::event(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange) {
        fonts_.reset();
    }
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        QToolTip::showText(help->globalPos(), sceneLines(scene_).join(u'\n'), this);
        return true;
    }
    return QWidget::event(event);
}

}  // namespace rangeline
