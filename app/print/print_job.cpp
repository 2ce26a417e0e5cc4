#include "print/print_job.h"

#include <numeric>

namespace rangeline {

std::vector<PrintedSheet> makeSheets(const TimelineInput& input,
                                     std::span<const Sheet* const> chosen, const SheetSetup& common,
                                     const std::function<bool(int done)>& progress) {
    std::vector<PrintedSheet> made;
    for (const Sheet* sheet : chosen) {
        if (progress && !progress(static_cast<int>(made.size()))) {
            break;
        }
        SheetSetup setup = common;
        setup.layout.orientation = sheet->orientation;
        made.push_back({sheet->make(input, setup), setup.layout});
    }
    return made;
}

int pageCount(std::span<const PrintedSheet> sheets) {
    return std::accumulate(sheets.begin(), sheets.end(), 0, [](int sum, const PrintedSheet& each) {
        return sum + static_cast<int>(each.pages.pages.size());
    });
}

}  // namespace rangeline
