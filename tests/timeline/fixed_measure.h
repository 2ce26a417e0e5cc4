#pragma once
// Text widths that tests can work out: every letter is half as wide as the font is high.

#include "timeline/text_measure.h"
#include "timeline/timeline_style.h"

namespace rangeline::test {

class FixedMeasure : public TextMeasure {
  public:
    explicit FixedMeasure(const TimelineStyle& style) : style_(style) {}

    double lineHeight(FontRole font) const override { return style_.fontSize(font) * 1.2; }

  protected:
    double measure(FontRole font, const QString& text) const override {
        return style_.fontSize(font) * 0.5 * static_cast<double>(text.size());
    }

  private:
    const TimelineStyle& style_;
};

}  // namespace rangeline::test
