// Who may do the hands work of a step, and how its pieces are shared.

#include "arrange/rules/staffing.h"

#include <gmock/gmock.h>

#include <numeric>
#include <set>

#include "arrange/verified.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

using rules::Sharing;
using rules::Sharings;

std::size_t different(const Sharings& sharings) {
    std::set<std::pair<std::vector<int>, std::vector<int>>> all;
    for (const Sharing& way : sharings.ways) {
        all.insert({way.cooks, way.pieces});
    }
    return all.size();
}

/// Each cook alone, or some of them with at least a piece each and all pieces together.
void expectWhole(const Sharings& sharings, int pieces) {
    for (const Sharing& way : sharings.ways) {
        ASSERT_EQ(way.cooks.size(), way.pieces.size());
        if (way.cooks.size() > 1) {
            EXPECT_EQ(std::accumulate(way.pieces.begin(), way.pieces.end(), 0), pieces);
            EXPECT_THAT(way.pieces, testing::Each(testing::Gt(0)));
        }
    }
}

// So many ways are there to give n pieces to c cooks: (n + c - 1 over n).
TEST(Staffing, OfFewPiecesIsEverySplit) {
    struct Case {
        std::vector<int> cooks;
        int pieces;
        std::size_t ways;
    };
    for (const Case& one : {Case{{7}, 5, 1}, Case{{1, 2}, 1, 2}, Case{{1, 2}, 4, 5},
                            Case{{1, 2, 3}, 3, 10}, Case{{0, 1, 2, 3}, 6, 84}}) {
        const Sharings sharings = rules::splitsOfPieces(one.cooks, one.pieces);
        EXPECT_TRUE(sharings.all);
        EXPECT_EQ(sharings.ways.size(), one.ways);
        EXPECT_EQ(different(sharings), one.ways);
        expectWhole(sharings, one.pieces);
    }
}

TEST(Staffing, OfManyPiecesIsSpreadOverTheSplits) {
    for (const int pieces : {200, 1200, 999'983}) {
        const Sharings sharings = rules::splitsOfPieces({0, 1, 2, 3}, pieces);
        EXPECT_FALSE(sharings.all);
        EXPECT_GT(sharings.ways.size(), 60U);
        EXPECT_LE(sharings.ways.size(), 128U);
        EXPECT_EQ(different(sharings), sharings.ways.size());
        expectWhole(sharings, pieces);
    }
}

TEST(Staffing, OfVeryManyCooksTogetherIsNotEverySet) {
    std::vector<int> cooks(40);
    std::iota(cooks.begin(), cooks.end(), 0);
    const Sharings sharings = rules::setsOfCooks(cooks, 20);
    EXPECT_FALSE(sharings.all);
    EXPECT_EQ(different(sharings), 128U);
    EXPECT_TRUE(rules::setsOfCooks({1, 2, 3}, 2).all);
    EXPECT_EQ(rules::setsOfCooks({1, 2, 3}, 2).ways.size(), 3U);
    EXPECT_TRUE(rules::setsOfCooks({1}, 2).ways.empty());
}

/// Pieces of a minute each, shared by three, in a kitchen that opens so long before serving.
LessonBuilder shaping(int pieces, std::int64_t minutes) {
    LessonBuilder builder;
    builder.cook("ben");
    builder.cook("cleo");
    Step& shape = builder.step("shape", {hands(1_min)});
    shape.segments[0].stretches = true;
    shape.timePer = TimePer::Piece;
    shape.piecesPerCover = Rational(pieces);
    shape.mayBeShared = true;
    builder.lesson.head.kitchenOpens = minute(-minutes);
    return builder;
}

TEST(Staffing, ThreeCooksShareWhatTwoCannotDoInTime) {
    const ArrangeResult done = arrangeVerified(shaping(12, 4).lesson);
    EXPECT_EQ(done.status, ArrangeStatus::Proved);
    EXPECT_EQ(done.placements.at(key("shape")).hands.size(), 3U);
    EXPECT_EQ(arrangeVerified(shaping(9, 3).lesson).status, ArrangeStatus::Proved);
    EXPECT_EQ(arrangeVerified(shaping(9, 2).lesson).status, ArrangeStatus::NotPossible);
}

TEST(Staffing, WhereNotAllWaysAreTriedNothingIsProved) {
    const ArrangeResult done = arrangeVerified(shaping(600, 400).lesson);
    EXPECT_EQ(done.status, ArrangeStatus::Found);
    EXPECT_EQ(done.last.bound, Instant::serving());
    EXPECT_EQ(arrangeVerified(shaping(600, 100).lesson).status, ArrangeStatus::Stopped);
}

}  // namespace
}  // namespace rangeline::test
