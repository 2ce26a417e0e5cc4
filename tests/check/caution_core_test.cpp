// The limits: USDA FSIS and FDA Food Code; see tests/safety.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

LessonBuilder roastThighs(std::optional<Temperature> target) {
    LessonBuilder builder;
    builder.oven("oven");
    builder.ware("sheet", "sheet");
    Step& roast = builder.step("roast", {away(40_min)});
    roast.heat = inOven(400_F, 450_F);
    roast.hazards.food = "poultry";
    roast.hazards.target = target;
    return builder;
}

TEST(CautionCore, BelowTheLimit) {
    const auto found = findingsOf(roastThighs(164_F).lesson, FindingCode::CoreBelowLimit);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("roast")));
    EXPECT_THAT(found[0].figures,
                ElementsAre(Figure(164_F), Figure(165_F), Figure(std::string("poultry")),
                            Figure(std::string("usda-temperatures"))));
}

TEST(CautionCore, AtTheLimitIsWithinIt) {
    const auto lesson = roastThighs(165_F).lesson;
    EXPECT_THAT(findingsOf(lesson, FindingCode::CoreBelowLimit), IsEmpty());
    EXPECT_THAT(findingsOf(lesson, FindingCode::CoreNotStated), IsEmpty());
}

TEST(CautionCore, TheProfilesDiffer) {
    auto builder = roastThighs(155_F);
    builder.get("roast").hazards.food = "ground-meat";
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CoreBelowLimit), SizeIs(1));
    builder.lesson.head.profile = SafetyProfile::FoodCode;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CoreBelowLimit), IsEmpty());
}

TEST(CautionCore, NotStated) {
    const auto found = findingsOf(roastThighs({}).lesson, FindingCode::CoreNotStated);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(165_F), Figure(std::string("poultry")),
                                              Figure(std::string("usda-temperatures"))));
}

TEST(CautionCore, OnlyTheStepThatFinishesTheFoodMustSayIt) {
    auto builder = roastThighs(165_F);
    builder.step("trim", {hands(10_min)}).hazards.food = "poultry";
    Step& sear = builder.step("sear", {hands(10_min)});
    sear.heat = onBurner();
    sear.hazards.food = "poultry";
    builder.uses("sear", "trim");
    builder.uses("roast", "sear");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CoreNotStated), IsEmpty());
    builder.get("roast").hazards.target.reset();
    const auto found = findingsOf(builder.lesson, FindingCode::CoreNotStated);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("roast")));
}

TEST(CautionCore, AParCookedStepMayStayBelowWhatALaterOneReaches) {
    auto builder = roastThighs(165_F);
    Step& poach = builder.step("poach", {away(10_min)});
    poach.heat = onBurner();
    poach.hazards.food = "poultry";
    poach.hazards.target = 140_F;
    builder.uses("roast", "poach");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CoreBelowLimit), IsEmpty());
    builder.get("roast").hazards.target = 150_F;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CoreBelowLimit), SizeIs(2));
}

TEST(CautionCore, FoodWithoutALimitIsNotAsked) {
    auto builder = roastThighs({});
    for (const char* food : {"", "nuts", "bacon", "cooked-plant"}) {
        builder.get("roast").hazards.food = food;
        EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CoreNotStated), IsEmpty());
    }
}

TEST(CautionCore, PlantFoodIsAskedForUnderTheFoodCodeWhenKeptHot) {
    auto builder = roastThighs({});
    builder.lesson.head.profile = SafetyProfile::FoodCode;
    builder.get("roast").hazards.food = "cooked-plant";
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CoreNotStated), IsEmpty());
    builder.get("roast").after.storage = Storage::HotInOven;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CoreNotStated), SizeIs(1));
}

}  // namespace
}  // namespace rangeline::test
