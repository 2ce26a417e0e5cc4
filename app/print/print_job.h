#pragma once
// Several sheets of one lesson, made one after the other.

#include <functional>
#include <span>
#include <vector>

#include "print/sheets.h"

namespace rangeline {

/// A sheet and the paper that it was made for.
struct PrintedSheet {
    SheetPages pages;
    PageLayout layout;
};

/// Each sheet lies as it is best read; the rest of the setup is common to all. `progress` is told
/// how many are done and says whether to go on; after a no what is there so far is returned.
std::vector<PrintedSheet> makeSheets(const TimelineInput& input,
                                     std::span<const Sheet* const> chosen, const SheetSetup& common,
                                     const std::function<bool(int done)>& progress = {});

/// How many pages they have.
int pageCount(std::span<const PrintedSheet> sheets);

}  // namespace rangeline
