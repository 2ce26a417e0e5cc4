#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Two pans on one burner, ten minutes each; the first from -40.
LessonBuilder twoPans(std::int64_t second, Duration secondTakes = 10_min) {
    LessonBuilder builder;
    builder.burner("front");
    builder.ware("pan", "saute-pan", 2);
    const auto onFront = [&](const char* id, int pan, std::int64_t at, Duration takes) {
        Step& step = builder.step(id, {away(takes)});
        step.heat = onBurner();
        step.wares = {fresh("saute-pan")};
        Placement& placement = builder.place(id, at);
        placement.burners = {BurnerId{"front"}};
        placement.wares = {{WareId{"pan"}, pan}};
    };
    onFront("leeks", 0, -40, 10_min);
    onFront("glaze", 1, second, secondTakes);
    return builder;
}

std::vector<Finding> twice(const LessonBuilder& builder) {
    return findingsOf(builder.lesson, FindingCode::BurnerTwice);
}

TEST(BurnerTwice, TouchingIsFine) {
    EXPECT_THAT(twice(twoPans(-30)), IsEmpty());
    EXPECT_THAT(twice(twoPans(-50)), IsEmpty());
}

TEST(BurnerTwice, Overlapping) {
    const auto found = twice(twoPans(-31));
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("leeks"), key("glaze")));
    EXPECT_EQ(found[0].equipment, (EquipmentRef{EquipmentSort::Burner, 0}));
    EXPECT_EQ(found[0].interval, minutes(-31, -30));
    EXPECT_EQ(found[0].severity, Severity::Collision);
}

TEST(BurnerTwice, Nested) {
    const auto found = twice(twoPans(-37, 3_min));
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-37, -34));
}

TEST(BurnerTwice, AnEventTakesNothing) {
    EXPECT_THAT(twice(twoPans(-35, 0_min)), IsEmpty());
}

TEST(BurnerTwice, StayingOnTheHeatTakesTheWaitToo) {
    auto builder = twoPans(-28, 4_min);
    Step& on = builder.step("reduce", {away(10_min)});
    BurnerHeat heat = onBurner();
    heat.staysOnHeat = true;
    on.heat = heat;
    on.wares = {carryOn("saute-pan", "leeks")};
    builder.place("reduce", -20);
    const auto found = twice(builder);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-28, -24));
}

TEST(BurnerTwice, FoodKeptHotTakesItUntilItIsUsed) {
    auto builder = twoPans(-28, 4_min);
    builder.get("leeks").after.storage = Storage::HotOnBurner;
    builder.step("plate", {away(5_min)});
    builder.uses("plate", "leeks");
    builder.place("plate", -26);
    builder.lesson.placements.at(key("leeks")).keptOn = {BurnerId{"front"}};
    const auto found = twice(builder);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-28, -26));
}

TEST(BurnerFit, PanWiderThanTheBurnerTakes) {
    auto builder = twoPans(-30);
    builder.lesson.kitchen.burners[0].widestVessel = Length::millimetres(279);
    const auto found = findingsOf(builder.lesson, FindingCode::WareTooWide);
    ASSERT_THAT(found, SizeIs(2));
    EXPECT_THAT(found[0].figures,
                ElementsAre(Figure(Length::millimetres(280)), Figure(Length::millimetres(279))));
    builder.lesson.kitchen.burners[0].widestVessel = Length::millimetres(280);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::WareTooWide), IsEmpty());
}

TEST(BurnerFit, PowerIsCheckedWhereBothStateIt) {
    auto builder = twoPans(-30);
    BurnerHeat heat = onBurner();
    heat.leastPower = Power{12'000, Power::Unit::BtuPerHour};
    builder.get("leeks").heat = heat;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::BurnerTooWeak), IsEmpty());
    builder.lesson.kitchen.burners[0].power = Power{3000, Power::Unit::Watt};
    const auto found = findingsOf(builder.lesson, FindingCode::BurnerTooWeak);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("leeks")));
    // 1 Btu/h = 0.29307 W (NIST SP 811)
    EXPECT_THAT(found[0].figures,
                ElementsAre(Figure(std::int64_t{3000}), Figure(std::int64_t{3517})));
    builder.lesson.kitchen.burners[0].power = Power{12'000, Power::Unit::BtuPerHour};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::BurnerTooWeak), IsEmpty());
}

}  // namespace
}  // namespace rangeline::test
