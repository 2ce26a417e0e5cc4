#include "model/packing.h"

#include <gtest/gtest.h>

namespace rangeline {
namespace {

constexpr Length tenths(int tenthsOfAnInch) {
    return Length::nanometres(Length::inches(tenthsOfAnInch).inNanometres() / 10);
}
constexpr Length quarter = Length::nanometres(6'350'000);
constexpr Length half = Length::nanometres(12'700'000);

// The best packings of equal circles in a circle are published for these counts; ratios 1, 2,
// 2.1547, 2.4142, 2.7013, 3, 3, 3.3048, 3.6131, 3.8130, 3.9238, 4.0296 (standard table).
TEST(Packing, OfDiscsOnARoundFloorFollowsTheTableOfBestPackings) {
    const Length none;
    EXPECT_EQ(piecesOnRoundFloor(Length::inches(10), tenths(26), none), 10);
    EXPECT_EQ(piecesOnRoundFloor(Length::inches(10), Length::inches(3), none), 8);
    EXPECT_EQ(piecesOnRoundFloor(Length::inches(8), tenths(26), none), 7);
    EXPECT_EQ(piecesOnRoundFloor(Length::inches(8), Length::inches(3), none), 4);
    EXPECT_EQ(piecesOnRoundFloor(Length::inches(12), tenths(26), none), 15);
    EXPECT_EQ(piecesOnRoundFloor(Length::inches(12), Length::inches(3), none), 11);
    EXPECT_EQ(piecesOnRoundFloor(Length::inches(2), Length::inches(3), none), 0);
    EXPECT_EQ(piecesOnRoundFloor(Length::inches(3), Length::inches(3), none), 1);
}

// Worked by hand: rows times columns on the floor of a half sheet (16 1/2 by 11 1/2 in) and of a
// quarter sheet (11 1/2 by 8 1/2 in).
TEST(Packing, OfPiecesOnASheetIsRowsTimesColumns) {
    const auto halfSheet = [](Length piece, Length gap) {
        return piecesOnSheet(tenths(165), tenths(115), piece, gap);
    };
    const auto quarterSheet = [](Length piece, Length gap) {
        return piecesOnSheet(tenths(115), tenths(85), piece, gap);
    };
    EXPECT_EQ(halfSheet(tenths(26), quarter), 20);
    EXPECT_EQ(halfSheet(tenths(24), quarter), 24);
    EXPECT_EQ(halfSheet(Length::inches(3), half), 12);
    EXPECT_EQ(quarterSheet(tenths(26), quarter), 12);
    EXPECT_EQ(quarterSheet(tenths(24), quarter), 12);
    EXPECT_EQ(quarterSheet(Length::inches(3), half), 6);
}

TEST(Packing, InAWareCountsOnItsFloorOnly) {
    Ware sheet;
    sheet.width = Length::inches(18);
    sheet.depth = Length::inches(13);
    EXPECT_EQ(piecesIn(sheet, tenths(26), quarter), 20);
    Ware pan;
    pan.width = Length::inches(12);
    EXPECT_EQ(piecesIn(pan, Length::inches(3), Length()), 8);
}

TEST(Packing, NeverSaysThatMoreFitThanTheirAreasAllow) {
    for (int floor = 10; floor <= 200; ++floor) {
        for (int piece = 10; piece <= 60; piece += 5) {
            const int count = piecesOnRoundFloor(tenths(floor), tenths(piece), Length());
            EXPECT_LE(count * piece * piece, floor * floor);
        }
    }
}

}  // namespace
}  // namespace rangeline
