#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "check/findings_of.h"
#include "model/handwork.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

Figure text(const char* word) {
    return std::string(word);
}

/// Onions caramelized in one pot, written for four covers.
LessonBuilder onionsFor(int covers) {
    LessonBuilder builder;
    builder.burner("left");
    builder.ware("pot", "pot").millilitres = 4000;
    Step& step = builder.step("brown", {watch(50_min)});
    step.technique = "caramelize";
    step.heat = onBurner();
    step.wares = {fresh("pot")};
    builder.lesson.servings.front().dish.writtenFor = 4;
    builder.lesson.servings.front().covers = covers;
    return builder;
}

TEST(CautionDepth, TwiceTheFoodInThePotLiesTwiceAsDeep) {
    const auto found = findingsOf(onionsFor(8).lesson, FindingCode::DepthChanged);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(std::int64_t{200})));
    EXPECT_THAT(findingsOf(onionsFor(2).lesson, FindingCode::DepthChanged), SizeIs(1));
    EXPECT_THAT(findingsOf(onionsFor(4).lesson, FindingCode::DepthChanged), IsEmpty());
}

// 8 covers of 600 ml are 4.8 l and go into a 4 l pot in two loads of 2.4 l, as before.
TEST(CautionDepth, TwoLoadsLieAsDeepAsOne) {
    auto builder = onionsFor(8);
    builder.get("brown").millilitresPerCover = 600;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::DepthChanged), IsEmpty());
}

TEST(CautionDepth, PiecesInOneLayerAndOtherTechniquesDoNotGoByDepth) {
    auto builder = onionsFor(8);
    builder.get("brown").technique = "sear";
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::DepthChanged), IsEmpty());
    builder = onionsFor(8);
    builder.get("brown").piecesPerCover = Rational(1);
    builder.get("brown").pieceWidth = Length::inches(2);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::DepthChanged), IsEmpty());
}

/// Leeks sliced, dough kneaded and plates laid, written for four covers.
LessonBuilder handworkFor(int covers) {
    LessonBuilder builder;
    builder.step("slice", {hands(6_min)}).technique = "slice";
    builder.step("knead", {hands(8_min)}).technique = "knead";
    builder.step("plate", {hands(4_min)}).plates = true;
    builder.lesson.servings.front().dish.writtenFor = 4;
    builder.lesson.servings.front().covers = covers;
    return builder;
}

TEST(CautionHandwork, NamesWhatTakesLongerForMoreCovers) {
    const auto found = findingsOf(handworkFor(6).lesson, FindingCode::HandworkUnchanged);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("slice"), key("plate")));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(std::int64_t{4}), Figure(std::int64_t{6})));
    EXPECT_THAT(findingsOf(handworkFor(5).lesson, FindingCode::HandworkUnchanged), IsEmpty());
    EXPECT_THAT(findingsOf(handworkFor(2).lesson, FindingCode::HandworkUnchanged), IsEmpty());
}

TEST(CautionHandwork, IsGoneOnceItIsTimedByThePiece) {
    auto builder = handworkFor(8);
    for (const char* id : {"slice", "plate"}) {
        timeByPiece(builder.get(id), 4);
    }
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::HandworkUnchanged), IsEmpty());
    EXPECT_EQ(builder.get("slice").time.likely, Duration::seconds(90));
    EXPECT_EQ(builder.get("slice").piecesPerCover, Rational(1));
    const Expanded expanded = expand(builder.lesson);
    EXPECT_EQ(expanded.tasks[0].time.likely, 12_min);
}

TEST(CautionHandwork, CountedPiecesKeepTheirNumber) {
    auto builder = handworkFor(8);
    builder.get("slice").piecesPerCover = Rational(3);
    timeByPiece(builder.get("slice"), 4);
    EXPECT_EQ(builder.get("slice").time.likely, Duration::seconds(30));
    EXPECT_EQ(builder.get("slice").piecesPerCover, Rational(3));
}

TEST(CautionDanger, OneForEachDangerOfAStep) {
    LessonBuilder builder;
    builder.step("fry", {hands(5_min)}).hazards.dangers = {"hot-fat", "steam"};
    builder.place("fry", -20);
    const auto found = findingsOf(builder.lesson, FindingCode::Danger);
    ASSERT_THAT(found, SizeIs(2));
    EXPECT_EQ(found[0].interval, minutes(-20, -15));
    EXPECT_THAT(found[0].keys, ElementsAre(key("fry")));
}

TEST(CautionDanger, OneForAStepInBatches) {
    LessonBuilder builder;
    Step& fry = builder.step("fry", {hands(5_min)});
    fry.hazards.dangers = {"hot-fat"};
    builder.lesson.choices.batches = {{StepId{"fry"}, 3}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::Danger), SizeIs(1));
}

TEST(CautionDanger, SomeTechniquesAndFoodsAlwaysBringTheirs) {
    LessonBuilder builder;
    Step& fry = builder.step("fry", {hands(5_min)});
    fry.technique = "deep-fry";
    fry.hazards.food = "garlic-in-oil";
    fry.hazards.dangers = {"hot-fat"};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::Danger), SizeIs(2));
}

TEST(CautionDanger, NoneWithoutAny) {
    LessonBuilder builder;
    builder.step("stir", {hands(5_min)});
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::Danger), IsEmpty());
}

// The usual times are common practice, no source; see tests/safety.
TEST(CautionDuration, OutsideTheUsualRange) {
    LessonBuilder builder;
    builder.step("sweat", {hands(3_min)}).technique = "sweat";
    const auto found = findingsOf(builder.lesson, FindingCode::UnusualDuration);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures,
                ElementsAre(Figure(3_min), Figure(4_min), Figure(10_min), text("sweat")));
}

TEST(CautionDuration, TheEndsOfTheRangeAreUsual) {
    for (const auto usual : {4_min, 10_min}) {
        LessonBuilder builder;
        builder.step("sweat", {hands(usual)}).technique = "sweat";
        EXPECT_THAT(findingsOf(builder.lesson, FindingCode::UnusualDuration), IsEmpty());
    }
}

TEST(CautionDuration, OtherWordsAndEventsHaveNoRange) {
    LessonBuilder builder;
    builder.step("whittle", {hands(600_min)}).technique = "whittle";
    builder.step("event", {}).technique = "sweat";
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::UnusualDuration), IsEmpty());
}

LessonBuilder crumb() {
    LessonBuilder builder;
    builder.step("toast", {hands(5_min)}).hazards.allergens = {"tree-nuts"};
    Ingredient nuts;
    nuts.name = "hazelnuts";
    nuts.allergens = {"tree-nuts"};
    Ingredient flour;
    flour.name = "flour";
    flour.allergens = {"wheat"};
    auto& component = builder.lesson.servings[0].dish.components[0];
    component.name = "crumb";
    component.ingredients = {nuts, flour};
    return builder;
}

TEST(CautionGuestAllergen, NamesEachAllergenThatGuestsAvoid) {
    for (const bool swapped : {false, true}) {
        LessonBuilder builder;
        builder.lesson.head.guestAllergens = {"milk", "peanuts"};
        Component& component = builder.lesson.servings[0].dish.components[0];
        component.ingredients.emplace_back().name = "butter";
        component.ingredients[0].allergens = {"milk"};
        builder.step("toss", {hands(5_min)}).hazards.allergens = {"milk", "peanuts"};
        if (swapped) {
            std::ranges::reverse(builder.get("toss").hazards.allergens);
        }
        std::vector<std::string> told;
        for (const Finding& finding : findingsOf(builder.lesson, FindingCode::GuestAllergen)) {
            told.push_back(std::get<std::string>(finding.figures[0]));
        }
        EXPECT_THAT(told, testing::UnorderedElementsAre("milk", "peanuts"));
    }
}

TEST(CautionGuestAllergen, NamesTheIngredientAndNotAlsoTheStep) {
    auto builder = crumb();
    builder.lesson.head.guestAllergens = {"tree-nuts"};
    const auto found = findingsOf(builder.lesson, FindingCode::GuestAllergen);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, IsEmpty());
    EXPECT_THAT(found[0].figures, ElementsAre(text("tree-nuts"), text("hazelnuts"), text("crumb")));
}

TEST(CautionGuestAllergen, NamesTheStepWhereNoIngredientSaysIt) {
    auto builder = crumb();
    builder.lesson.head.guestAllergens = {"tree-nuts"};
    builder.lesson.servings[0].dish.components[0].ingredients.clear();
    const auto found = findingsOf(builder.lesson, FindingCode::GuestAllergen);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("toast")));
}

TEST(CautionGuestAllergen, WheatIsNothingForAGuestWithoutGluten) {
    auto builder = crumb();
    builder.lesson.head.guestAllergens = {"gluten"};
    const auto found = findingsOf(builder.lesson, FindingCode::GuestAllergen);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].figures[0], text("wheat"));
}

TEST(CautionGuestAllergen, NoneWhenTheGuestsEatEverything) {
    EXPECT_THAT(findingsOf(crumb().lesson, FindingCode::GuestAllergen), IsEmpty());
}

LessonBuilder inTheOven(Temperature setTo) {
    LessonBuilder builder;
    builder.oven("oven").highest = 550_F;
    builder.ware("sheet", "sheet");
    for (const char* id : {"first", "second"}) {
        Step& step = builder.step(id, {away(20_min)});
        step.heat = inOven(325_F, 550_F);
        step.wares = {fresh("sheet")};
        Placement& placement = builder.place(id, id == std::string("first") ? -60 : -30);
        placement.oven = spot("oven", setTo);
        placement.wares = {{WareId{"sheet"}, 0}};
    }
    return builder;
}

TEST(CautionOvenLimit, ToldOnceForAnOvenAtItsHighest) {
    const auto found = findingsOf(inTheOven(550_F).lesson, FindingCode::AtItsLimit);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("first")));
    EXPECT_EQ(found[0].equipment, (EquipmentRef{EquipmentSort::Oven, 0}));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(550_F), Figure(550_F)));
}

TEST(CautionOvenLimit, OneDialStepBelowIsNotTheLimit) {
    EXPECT_THAT(findingsOf(inTheOven(525_F).lesson, FindingCode::AtItsLimit), IsEmpty());
}

TEST(CautionOvenLimit, ABroilerAlwaysRunsFlatOut) {
    auto builder = inTheOven(550_F);
    for (auto& [placed, placement] : builder.lesson.placements) {
        placement.oven->mode = OvenMode::Broil;
    }
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AtItsLimit), IsEmpty());
}

}  // namespace
}  // namespace rangeline::test
