#pragma once
// Plays primitives onto a QPainter and measures texts with real fonts. Needs a QGuiApplication.

#include <QFont>
#include <QPainter>
#include <array>

#include "timeline/palette.h"
#include "timeline/primitives.h"
#include "timeline/text_measure.h"
#include "timeline/timeline_style.h"

namespace rangeline {

/// Fonts for the roles: the application's family, sized for a device with `scale` pixels in a unit.
class QtFonts : public TextMeasure {
  public:
    QtFonts(const TimelineStyle& style, double scale);

    double lineHeight(FontRole font) const override;
    const QFont& font(FontRole role) const { return fonts_[static_cast<std::size_t>(role)]; }
    double ascent(FontRole role) const { return ascents_[static_cast<std::size_t>(role)]; }
    double scale() const { return scale_; }

  protected:
    double measure(FontRole font, const QString& text) const override;

  private:
    double scale_;
    std::array<QFont, fontRoleCount> fonts_;
    std::array<double, fontRoleCount> heights_{};
    std::array<double, fontRoleCount> ascents_{};
};

/// `painter` counts in device pixels; units are multiplied by the fonts' scale.
void play(const Picture& picture, QPainter& painter, const Palette& palette, const QtFonts& fonts);

}  // namespace rangeline
