#include "print/sheets.h"

#include <algorithm>
#include <array>

#include "print/station_timeline_sheet.h"

namespace rangeline {
namespace {

constexpr std::array rows = {
    Sheet{"timeline", stationTimelineTitle, Orientation::Landscape, makeStationTimeline},
};

}  // namespace

std::span<const Sheet> sheets() {
    return rows;
}

const Sheet* findSheet(std::string_view key) {
    const auto* found = std::ranges::find(rows, key, &Sheet::key);
    return found == rows.end() ? nullptr : found;
}

Paper usualPaper(Units units) {
    return units == Units::UsCustomary ? Paper::Letter : Paper::A4;
}

}  // namespace rangeline
