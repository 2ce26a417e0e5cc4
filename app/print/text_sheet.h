#pragma once
// A sheet of headings, paragraphs and tables, with the head and foot that every page has.

#include <functional>

#include "print/sheets.h"
#include "print/text_flow.h"
#include "timeline/primitives_qt.h"

namespace rangeline {

class TextSheet {
  public:
    /// `name` is what the sheet is called. The input outlives the sheet.
    TextSheet(const TimelineInput& input, const PageLayout& layout, const QString& name);

    /// Pages of its own under that title; none if nothing is filled in.
    void section(const QString& title, const std::function<void(TextFlow& flow)>& fill);
    /// The fonts of its pages.
    const TextMeasure& measure() const { return fonts_; }
    /// With feet on all pages. A sheet without any page says so on one.
    SheetPages finish();

  private:
    const TimelineInput& input_;
    PageLayout layout_;
    QString name_;
    QString facts_;
    QtFonts fonts_;
    SheetPages sheet_;
};

}  // namespace rangeline
