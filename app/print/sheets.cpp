#include "print/sheets.h"

#include <algorithm>
#include <array>

#include "print/cautions_sheet.h"
#include "print/done_ahead_sheet.h"
#include "print/equipment_sheet.h"
#include "print/mise_en_place_sheet.h"
#include "print/order_of_work_sheet.h"
#include "print/overview_sheet.h"
#include "print/plating_sheet.h"
#include "print/range_sheet.h"
#include "print/shopping_sheet.h"
#include "print/station_timeline_sheet.h"

namespace rangeline {
namespace {

constexpr std::array rows = {
    Sheet{"timeline", stationTimelineTitle, Orientation::Landscape, makeStationTimeline},
    Sheet{"wall", wallTimelineTitle, Orientation::Landscape, makeWallTimeline},
    Sheet{"overview", overviewTitle, Orientation::Portrait, makeOverview},
    Sheet{"order", orderOfWorkTitle, Orientation::Portrait, makeOrderOfWork},
    Sheet{"order-to-fill", orderToFillTitle, Orientation::Landscape, makeOrderToFill},
    Sheet{"mise-en-place", miseEnPlaceTitle, Orientation::Portrait, makeMiseEnPlace},
    Sheet{"done-ahead", doneAheadTitle, Orientation::Portrait, makeDoneAhead},
    Sheet{"equipment", equipmentTitle, Orientation::Portrait, makeEquipment},
    Sheet{"cautions", cautionsTitle, Orientation::Portrait, makeCautions},
    Sheet{"plating", platingTitle, Orientation::Portrait, makePlating},
    Sheet{"range", rangeTitle, Orientation::Portrait, makeRange},
    Sheet{"shopping", shoppingTitle, Orientation::Portrait, makeShopping},
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
