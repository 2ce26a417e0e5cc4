#include "model/loads.h"

#include <gmock/gmock.h>

#include "support/lesson_builder.h"

namespace rangeline {
namespace {

using namespace test;

/// Discs of 3 in, one to a cover, in a pan of that width: its floor is 2 in narrower.
LessonBuilder discsIn(Length panWidth, int covers) {
    LessonBuilder builder;
    builder.ware("pan", "saute-pan").width = panWidth;
    Step& fry = builder.step("fry", {away(5_min)});
    fry.wares = {fresh("saute-pan")};
    fry.piecesPerCover = Rational(1);
    fry.pieceWidth = Length::inches(3);
    builder.lesson.servings.front().covers = covers;
    return builder;
}

std::int64_t loads(LessonBuilder& builder, const char* step) {
    return Loads(builder.lesson).of(builder.get(step), builder.lesson.servings.front().covers);
}

Length widthOfLoad(LessonBuilder& builder, int load) {
    const Expanded expanded = expand(builder.lesson);
    return expanded.chains[static_cast<std::size_t>(load)].leastWidth;
}

// Worked by hand with the published ratios of circles packed in a circle (2.4142 for four, 2.7013
// for five, 3 for six and seven). With 13 mm between discs of 76.2 mm, a floor of 254 mm is
// 267 / 89.2 = 2.99 discs wide, one of 203.2 mm 2.42, one of 152.4 mm 1.85.
TEST(Loads, DiscsInAPanAreAsManyAsLieInOneLayer) {
    auto wide = discsIn(Length::inches(12), 10);
    EXPECT_EQ(loads(wide, "fry"), 2) << "five lie in 12 in, by area there would be nine";
    auto usual = discsIn(Length::inches(10), 10);
    EXPECT_EQ(loads(usual, "fry"), 3);
    auto narrow = discsIn(Length::inches(8), 4);
    EXPECT_EQ(loads(narrow, "fry"), 4);
}

// A half sheet's floor of 419.1 x 292.1 mm takes 5 x 3 of them at 13 mm.
TEST(Loads, PiecesOnSheetsAreSharedByAllThatTheStepAsksFor) {
    LessonBuilder builder;
    Ware& sheet = builder.ware("sheet", "sheet-pan", 2);
    sheet.width = Length::inches(18);
    sheet.depth = Length::inches(13);
    Step& roast = builder.step("roast", {away(20_min)});
    roast.wares = {fresh("sheet-pan")};
    roast.piecesPerCover = Rational(5);
    roast.pieceWidth = Length::nanometres(66'040'000);
    builder.lesson.servings.front().covers = 4;
    EXPECT_EQ(loads(builder, "roast"), 2);
    builder.get("roast").wares.front().count = 2;
    EXPECT_EQ(loads(builder, "roast"), 1);
}

TEST(Loads, ThePansOfTheKitchenDecideWhichSizeALoadNeeds) {
    auto builder = discsIn(Length::inches(12), 4);
    builder.ware("small", "saute-pan").width = Length::inches(10);
    EXPECT_EQ(widthOfLoad(builder, 0), Length::inches(10)) << "four also lie in the smaller one";
    builder.lesson.servings.front().covers = 5;
    EXPECT_EQ(widthOfLoad(builder, 0), Length::inches(12));
}

// 8 covers of 300 ml are 2.4 l; three quarters of 2.8 l are 2.1 l.
TEST(Loads, OfAPotAreWhatItHoldsWithRoomToBoil) {
    LessonBuilder builder;
    builder.ware("pot", "pot").millilitres = 2800;
    Step& simmer = builder.step("simmer", {away(20_min)});
    simmer.wares = {fresh("pot")};
    simmer.millilitresPerCover = 300;
    builder.lesson.servings.front().covers = 8;
    EXPECT_EQ(loads(builder, "simmer"), 2);
    EXPECT_EQ(expand(builder.lesson).chains.front().leastMillilitres, 1600);
    builder.lesson.servings.front().covers = 7;
    EXPECT_EQ(loads(builder, "simmer"), 1) << "exactly full to three quarters";
    EXPECT_EQ(expand(builder.lesson).chains.front().leastMillilitres, 2800);
}

// Leeks sweated, then 500 ml of soup a cover from 2.1 l at a time: the leeks go in two pots too.
TEST(Loads, OfAPotAreDecidedByTheFullestStepThatGoesOnInIt) {
    LessonBuilder builder;
    builder.ware("pot", "pot", 2).millilitres = 2800;
    builder.step("sweat", {away(5_min)}).wares = {fresh("pot")};
    Step& simmer = builder.step("simmer", {away(20_min)});
    simmer.wares = {carryOn("pot", "sweat")};
    simmer.millilitresPerCover = 500;
    builder.step("season", {hands(1_min)}).wares = {carryOn("pot", "simmer")};
    builder.lesson.servings.front().covers = 8;
    EXPECT_EQ(loads(builder, "sweat"), 2);
    EXPECT_EQ(loads(builder, "simmer"), 2);
    EXPECT_EQ(loads(builder, "season"), 2);
    const Expanded expanded = expand(builder.lesson);
    ASSERT_EQ(expanded.chains.size(), 2U);
    EXPECT_EQ(expanded.chains.back().tasks.size(), 3U);
    EXPECT_EQ(expanded.chains.back().leastMillilitres, 2667);
}

// What is poured into a pot comes in another one, which never was as full as the pot.
TEST(Loads, OfWhatIsPouredIntoAPotAreItsOwn) {
    LessonBuilder builder;
    builder.ware("pot", "pot").millilitres = 8000;
    builder.ware("small", "saucepan").millilitres = 1500;
    builder.step("braise", {away(60_min)}).wares = {fresh("pot")};
    builder.get("braise").millilitresPerCover = 600;
    builder.step("glaze", {away(10_min)}).wares = {fresh("saucepan")};
    builder.get("glaze").millilitresPerCover = 30;
    builder.step("pour", {hands(1_min)}).wares = {carryOn("pot", "braise"),
                                                  carryOn("saucepan", "glaze")};
    builder.lesson.servings.front().covers = 8;
    EXPECT_EQ(loads(builder, "braise"), 1);
    EXPECT_EQ(loads(builder, "glaze"), 1);
    EXPECT_EQ(loads(builder, "pour"), 1);
}

TEST(Loads, StatedAreNoMoreThanThePieces) {
    auto builder = discsIn(Length::inches(12), 2);
    builder.lesson.choices.batches = {{StepId{"fry"}, 5}};
    EXPECT_EQ(loads(builder, "fry"), 2);
}

TEST(Loads, APieceThatLiesInNoPanIsOneLoadInAWiderOneThanThereIs) {
    auto builder = discsIn(Length::inches(12), 1);
    builder.get("fry").pieceWidth = Length::inches(14);
    EXPECT_EQ(loads(builder, "fry"), 1);
    EXPECT_EQ(widthOfLoad(builder, 0), Length::inches(16));
}

TEST(Loads, PiecesAtATimeAndOneLayerBothHold) {
    auto builder = discsIn(Length::inches(12), 10);
    builder.get("fry").piecesPerBatch = 2;
    EXPECT_EQ(loads(builder, "fry"), 5);
    builder.get("fry").piecesPerBatch = 8;
    EXPECT_EQ(loads(builder, "fry"), 2);
}

TEST(Loads, WhereTheCookStatesHowManyTheSizeIsHerBusiness) {
    auto builder = discsIn(Length::inches(12), 10);
    builder.lesson.choices.batches = {{StepId{"fry"}, 1}};
    EXPECT_EQ(loads(builder, "fry"), 1);
    EXPECT_EQ(widthOfLoad(builder, 0), Length());
}

}  // namespace
}  // namespace rangeline
