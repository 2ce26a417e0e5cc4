#include "text/gathered_findings.h"

#include <gmock/gmock.h>

namespace rangeline::test {
namespace {

using ::testing::ElementsAre;

PlacementKey step(const char* id) {
    StepKey key;
    key.step = StepId(id);
    return key;
}

Interval span(int from, int to) {
    return {Instant::atSeconds(60 * from), Instant::atSeconds(60 * to)};
}

Finding danger(const char* id, const char* what, int from) {
    return {FindingCode::Danger,  Severity::Caution,  {step(id)}, {},
            span(from, from + 5), {std::string(what)}};
}

Finding hands(const char* a, const char* b, int cook, Interval when) {
    return {FindingCode::HandsTwice,
            Severity::Collision,
            {step(a), step(b)},
            {EquipmentSort::Cook, cook},
            when,
            {}};
}

TEST(GatheredFindings, OneCautionForAllStepsWithTheSameDanger) {
    const auto rows = gathered(
        {danger("a", "blade", -30), danger("b", "hot-fat", -20), danger("c", "blade", -10)});
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_THAT(rows[0].shown.keys, ElementsAre(step("a"), step("c")));
    EXPECT_EQ(rows[0].parts.size(), 2U);
    EXPECT_THAT(rows[1].shown.keys, ElementsAre(step("b")));
}

TEST(GatheredFindings, HandsWantedInOneStretchAreOneCollision) {
    const auto rows =
        gathered({hands("a", "b", 0, span(-30, -20)), hands("a", "c", 0, span(-25, -22)),
                  hands("b", "c", 0, span(-22, -15))});
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_THAT(rows[0].shown.keys, ElementsAre(step("a"), step("b"), step("c")));
    EXPECT_EQ(rows[0].shown.interval, span(-30, -15));
}

TEST(GatheredFindings, TouchingStretchesAndOtherCooksStayApart) {
    EXPECT_EQ(gathered({hands("a", "b", 0, span(-30, -20)), hands("b", "c", 0, span(-20, -15)),
                        hands("a", "d", 1, span(-30, -20))})
                  .size(),
              3U);
}

TEST(GatheredFindings, ALaterOneCanJoinTwoThatWereApart) {
    const auto rows =
        gathered({hands("a", "b", 0, span(-30, -25)), hands("c", "d", 0, span(-20, -15)),
                  hands("a", "c", 0, span(-26, -19))});
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].parts.size(), 3U);
}

TEST(GatheredFindings, OtherCollisionsAreListedOneByOne) {
    Finding pan = hands("a", "b", 0, span(-30, -20));
    pan.code = FindingCode::WareTwice;
    EXPECT_EQ(gathered({pan, pan}).size(), 2U);
    EXPECT_TRUE(gathered({}).empty());
}

TEST(GatheredFindings, AStepTooEarlyForSeveralReasonsIsListedOnceByTheGreatest) {
    const auto early = [](Duration given, Duration wanted) {
        return Finding{FindingCode::TooEarlyAfter,
                       Severity::Collision,
                       {step("a"), step("b")},
                       {},
                       span(-30, -20),
                       {given, wanted}};
    };
    const auto rows = gathered({early(Duration::minutes(2), Duration::minutes(5)),
                                early(Duration::minutes(2), Duration::minutes(10))});
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].shown.figures.at(1), Figure(Duration::minutes(10)));
    EXPECT_EQ(rows[0].parts.size(), 2U);
}

TEST(GatheredFindings, StepsNotPlacedAreOneLine) {
    const auto open = [](const char* id) {
        return Finding{FindingCode::NotPlaced, Severity::Open, {step(id)}, {}, {}, {}};
    };
    const auto rows = gathered({open("a"), open("b"), open("c")});
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].shown.keys.size(), 3U);
    EXPECT_EQ(rows[0].parts.size(), 3U);
}

}  // namespace
}  // namespace rangeline::test
