#include "text/plating_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "text/supper.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;

/// The roast (0) is held as given; the leeks (1) have 12 min to spare.
PlatingAnalysis heldBy(const Hold& hold) {
    PlatingAnalysis analysis;
    analysis.spares.push_back({key("roast"), Duration(), false, {hold}});
    analysis.spares.push_back({key("char"), 12_min, false, {}});
    analysis.path = {0};
    return analysis;
}

QString holdOf(const Supper& supper, const Hold& hold) {
    const PlatingAnalysis analysis = heldBy(hold);
    return holdText(analysis.spares[0], analysis, supper.context);
}

Hold by(HeldBy reason, int next = -1) {
    Hold hold;
    hold.by = reason;
    hold.next = next;
    return hold;
}

TEST(PlatingText, MinutesToSpare) {
    EXPECT_EQ(spareText(Duration(), american), "no minutes to spare");
    EXPECT_EQ(spareText(12_min, american), "12 min to spare");
    EXPECT_EQ(spareText(-5_min, american), "starts 5 min too late");
}

TEST(PlatingText, HeldByAPanThatIsNeededNext) {
    const Supper supper;
    Hold hold = by(HeldBy::Equipment, 1);
    hold.equipment = {EquipmentSort::Ware, 1};
    EXPECT_EQ(holdOf(supper, hold), "held by sauté pan 2, which “Char the leeks” needs at 5:40 PM");
}

TEST(PlatingText, HeldByTheCook) {
    const Supper supper;
    Hold hold = by(HeldBy::Cook, 1);
    hold.equipment = {EquipmentSort::Cook, 0};
    EXPECT_EQ(holdOf(supper, hold), "held by Robin, who goes on to “Char the leeks” at 5:40 PM");
}

TEST(PlatingText, HeldByWhatStartsEarlierNamesNoTimeBefore) {
    auto builder = supperBuilder();
    builder.link("roast", "char", 5_min);
    const Supper supper(builder);
    PlatingAnalysis analysis = heldBy({});
    Hold hold = by(HeldBy::Cook, 0);
    hold.equipment = {EquipmentSort::Cook, 0};
    analysis.spares[1].holds = {hold};  // the leeks, by the roast that starts before them
    EXPECT_EQ(holdText(analysis.spares[1], analysis, supper.context),
              "held by Robin, who goes back to “Roast the thighs” after it");
}

TEST(PlatingText, HeldByItsPin) {
    EXPECT_EQ(holdOf(Supper(), by(HeldBy::Pin)), "pinned where it is");
}

TEST(PlatingText, HeldByServing) {
    const Supper supper;
    Hold hold = by(HeldBy::Deadline);
    for (std::size_t i = 0; i < supper.expanded.windows.size(); ++i) {
        if (supper.expanded.windows[i].origin == WindowOrigin::Serving) {
            hold.window = static_cast<int>(i);
        }
    }
    ASSERT_GE(hold.window, 0);
    EXPECT_EQ(holdOf(supper, hold), "held by serving at 6:30 PM");
}

TEST(PlatingText, TheEndOfTheLessonOnlyWhereNothingIsNearer) {
    const Supper supper;
    PlatingAnalysis analysis = heldBy(by(HeldBy::Deadline));
    EXPECT_EQ(holdText(analysis.spares[0], analysis, supper.context),
              "held by the end of the lesson");
    analysis.spares[0].holds.push_back(by(HeldBy::Pin));
    EXPECT_EQ(holdText(analysis.spares[0], analysis, supper.context), "pinned where it is");
}

/// The hold by the only wait of that origin.
Hold byWait(const Supper& supper, WaitOrigin origin) {
    Hold hold = by(HeldBy::Wait, 1);
    for (std::size_t i = 0; i < supper.expanded.waits.size(); ++i) {
        if (supper.expanded.waits[i].origin == origin) {
            hold.wait = static_cast<int>(i);
        }
    }
    EXPECT_GE(hold.wait, 0);
    return hold;
}

TEST(PlatingText, HeldByFoodThatIsWanted) {
    auto builder = supperBuilder();
    builder.uses("char", "roast");
    const Supper supper(builder);
    EXPECT_EQ(holdOf(supper, byWait(supper, WaitOrigin::Uses)),
              "held by “Char the leeks”, which its food goes into at 5:40 PM");
}

TEST(PlatingText, HeldByALink) {
    auto builder = supperBuilder();
    builder.link("roast", "char", 5_min);
    const Supper supper(builder);
    EXPECT_EQ(holdOf(supper, byWait(supper, WaitOrigin::Link)),
              "held by “Char the leeks” at 5:40 PM, which waits 5 min for it");
}

TEST(PlatingText, HeldByFoodThatKeepsOnlySoLong) {
    auto builder = supperBuilder();
    builder.uses("roast", "char");
    builder.get("char").after.atRoom = 20_min;
    const Supper supper(builder);
    EXPECT_EQ(holdOf(supper, byWait(supper, WaitOrigin::Keeping)),
              "held by the food of “Char the leeks”, which keeps 20 min");
}

TEST(PlatingText, Lines) {
    const Supper supper;
    const PlatingAnalysis analysis = heldBy(by(HeldBy::Pin));
    EXPECT_THAT(
        platingLines(analysis, supper.context),
        ElementsAre("4:50 PM  “Roast the thighs”: no minutes to spare, pinned where it is"));
    EXPECT_THAT(spareLines(analysis, supper.context),
                ElementsAre("4:50 PM  “Roast the thighs”: no minutes to spare, pinned where it is",
                            "5:40 PM  “Char the leeks”: 12 min to spare"));
}

}  // namespace
}  // namespace rangeline::test
