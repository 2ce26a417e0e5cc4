#include "cookalong/live_range.h"

#include <QPainter>
#include <algorithm>

namespace rangeline {
namespace {

/// As it is to be drawn: what should have begun and did not is not on the range.
Lesson drawnLesson(const live::Service& service, Instant now) {
    const Instant soon = now + Duration::seconds(1);
    Lesson lesson = service.standing(soon);
    for (auto& [key, placement] : lesson.placements) {
        const auto work = service.works().find(key);
        if (work != service.works().end() && work->second.stage == live::Stage::Waiting) {
            placement.start = std::max(placement.start, soon);
        }
    }
    return lesson;
}

}  // namespace

LiveRange::LiveRange(const live::Service& service, const QLocale& locale, QWidget* parent)
    : QWidget(parent), service_(service), locale_(locale) {
    setLayoutDirection(Qt::LeftToRight);  // the left burner is at the left
    setAccessibleName(tr("Range and oven now"));
}

LiveRange::~LiveRange() = default;

void LiveRange::show(Instant now) {
    const Lesson lesson = drawnLesson(service_, now);
    const UseIndex index(lesson, service_.index().expanded());
    const TextContext text{lesson, service_.index().expanded(), locale_};
    scene_ = rangeScene(index, text, now);
    scene_.clock.clear();  // the page has a clock of its own
    setAccessibleDescription(sceneLines(scene_).join(QStringLiteral(". ")));
    update();
}

void LiveRange::setEnlarged(double factor) {
    if (factor != factor_) {
        factor_ = factor;
        fonts_.reset();
        update();
    }
}

void LiveRange::paintEvent(QPaintEvent*) {
    const double scale = devicePixelRatioF() * factor_;
    if (!fonts_ || fonts_->scale() != scale) {
        fonts_ = std::make_unique<QtFonts>(TimelineStyle::screen(), scale);
    }
    constexpr int middle = 128;
    const bool dark = palette().color(QPalette::Window).lightness() < middle;
    const Palette& colours = dark ? Palette::darkScreen() : Palette::lightScreen();
    const QRectF frame(0, 0, width() / factor_, height() / factor_);
    const RangePicture picture = paintRange(scene_, frame, *fonts_);
    QPainter painter(this);
    painter.fillRect(rect(), QColor::fromRgba(colours[Colour::Paper]));
    painter.scale(1 / devicePixelRatioF(), 1 / devicePixelRatioF());
    play(picture.picture, painter, colours, *fonts_);
}

}  // namespace rangeline
