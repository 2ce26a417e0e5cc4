#pragma once
// The sheets that a lesson can be printed as. Adding one is a file with its function and a row in
// sheets.cpp.

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "print/page_layout.h"
#include "timeline/build_timeline.h"
#include "timeline/primitives.h"
#include "timeline/timeline_style.h"

namespace rangeline {

/// Pages in points, from the top left corner of the paper.
struct SheetPages {
    QString title;        ///< of the document
    TimelineStyle style;  ///< whose font sizes the pages were measured with
    std::vector<Picture> pages;
};

/// How a lesson is to be printed.
struct SheetSetup {
    PageLayout layout;
    std::optional<CookId> cook{};  ///< only this cook's work, where a sheet lists work
    int classes = 1;               ///< how often the lesson is given; for what is bought
};

struct Sheet {
    std::string_view key;  ///< as given on the command line
    QString (*title)();
    Orientation orientation;  ///< unless the cook wants another
    /// Needs a QGuiApplication, for the fonts. The same input gives the same pages.
    SheetPages (*make)(const TimelineInput& input, const SheetSetup& setup);
};

std::span<const Sheet> sheets();
/// Null if there is no such sheet.
const Sheet* findSheet(std::string_view key);

/// The paper that is used where the lesson's units are.
Paper usualPaper(Units units);

}  // namespace rangeline
