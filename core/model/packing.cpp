#include "model/packing.h"

#include <algorithm>
#include <array>

namespace rangeline {
namespace {

/// How many times as wide as a piece the floor must be, for 1, 2, 3, ... pieces.
constexpr std::array leastFloors{1.0,    2.0,    2.1548, 2.4143, 2.7014, 3.0,    3.0,
                                 3.3048, 3.6132, 3.8131, 3.9239, 4.0297, 4.2361, 4.3285,
                                 4.5214, 4.6155, 4.7921, 4.8638, 4.8638, 5.1224};

Length longer(Length length, Length by) {
    return Length::nanometres(length.inNanometres() + by.inNanometres());
}

Length shorter(Length length, Length by) {
    return Length::nanometres(std::max<std::int64_t>(0, length.inNanometres() - by.inNanometres()));
}

int inARow(Length room, Length piece, Length gap) {
    return static_cast<int>(longer(room, gap).inNanometres() / longer(piece, gap).inNanometres());
}

constexpr Length roundRim = Length::inches(2);

}  // namespace

int piecesOnRoundFloor(Length floor, Length piece, Length gap) {
    // A gap between pieces is as if each were wider by it, and the floor too.
    const double wide = static_cast<double>(longer(floor, gap).inNanometres()) /
                        static_cast<double>(longer(piece, gap).inNanometres());
    return static_cast<int>(std::ranges::upper_bound(leastFloors, wide) - leastFloors.begin());
}

int piecesOnSheet(Length width, Length depth, Length piece, Length gap) {
    return inARow(width, piece, gap) * inARow(depth, piece, gap);
}

int piecesIn(const Ware& ware, Length piece, Length gap) {
    constexpr Length cornerRim = Length::nanometres(Length::inches(3).inNanometres() / 2);
    if (!ware.depth) {
        return piecesOnRoundFloor(shorter(ware.width, roundRim), piece, gap);
    }
    return piecesOnSheet(shorter(ware.width, cornerRim), shorter(*ware.depth, cornerRim), piece,
                         gap);
}

Length widthForOne(Length piece) {
    return longer(piece, roundRim);
}

}  // namespace rangeline
