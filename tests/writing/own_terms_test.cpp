// What a technique brings to a step, of the tables and of the cook's own.

#include "writing/own_terms.h"

#include <gmock/gmock.h>

#include "model/validate_alone.h"
#include "safety/techniques.h"
#include "writing/dish_changes.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr Units us = Units::UsCustomary;

Step plainStep() {
    Dish dish = newDish("Leeks");
    const StepId id = addStep(dish, {0, 0}, "Cook it");
    return *findStep(dish, id);
}

OwnTerms potRoast() {
    OwnTerms terms;
    terms.techniques = {{"Pot roast", Duration::minutes(60), Duration::minutes(180),
                         Duration::minutes(4), Attention::Away}};
    terms.cuts = {{"roll cut", "1 in, on the slant"}};
    return terms;
}

TEST(TermsOfTheCook, ATechniqueBringsItsUsualTimeAttentionHeatAndPanToANewStep) {
    Step step = plainStep();
    setTechnique(step, "sweat", {}, us);
    EXPECT_EQ(step.time.likely, Duration::minutes(6));
    EXPECT_EQ(step.segments, (std::vector<Segment>{{Attention::Hands, Duration::minutes(1), false},
                                                   {Attention::Watch, {}, true}}));
    EXPECT_EQ(std::get<BurnerHeat>(step.heat).level, "medium-low");
    EXPECT_EQ(step.wares.at(0).kind, "saute-pan");
}

TEST(TermsOfTheCook, AnotherTechniqueTakesBackWhatTheFirstBrought) {
    Step step = plainStep();
    setTechnique(step, "sweat", {}, us);
    setTechnique(step, "braise", {}, us);
    EXPECT_EQ(step.time.likely, Duration::minutes(90));
    EXPECT_TRUE(std::holds_alternative<OvenHeat>(step.heat));
    EXPECT_EQ(step.wares.at(0).kind, "pot");
}

TEST(TermsOfTheCook, WhatTheCookHasStatedStaysThoughItIsUnusual) {
    Step step = plainStep();
    step.time = {Duration::minutes(70), Duration::minutes(75), Duration::minutes(80)};
    step.wares = {WareNeed{"pot", {}, {}, 1, {}, false}};
    const Step stated = step;
    setTechnique(step, "saute", {}, us);
    EXPECT_EQ(step.time, stated.time);
    EXPECT_EQ(step.segments, stated.segments);
    EXPECT_EQ(step.wares, stated.wares);
    EXPECT_EQ(std::get<BurnerHeat>(step.heat).level, "medium-high");
}

TEST(TermsOfTheCook, ATechniqueBringsItsDangerOnce) {
    Step step = plainStep();
    setTechnique(step, "pan-fry", {}, us);
    setTechnique(step, "pan-fry", {}, us);
    EXPECT_THAT(step.hazards.dangers, ElementsAre("hot-fat"));
}

TEST(TermsOfTheCook, WhatIsChilledStandsOnAFridgeShelfFromThenOn) {
    Step step = plainStep();
    setTechnique(step, "chill", {}, us);
    EXPECT_THAT(step.pools, ElementsAre(PoolNeed{PoolId{"fridge-shelf"}, 1}));
    EXPECT_EQ(step.after.storage, Storage::Cold);
    EXPECT_EQ(step.after.place, (PoolNeed{PoolId{"fridge-shelf"}, 1}));
    setTechnique(step, "cool", {}, us);
    EXPECT_THAT(step.pools, IsEmpty());
    EXPECT_EQ(step.after, Keeping());
}

TEST(TermsOfTheCook, WhereFoodStandsStaysAsTheCookStatedIt) {
    Step step = plainStep();
    step.after.atRoom = Duration::minutes(20);
    step.pools = {{PoolId{"freezer"}, 1}};
    const Step stated = step;
    setTechnique(step, "chill", {}, us);
    EXPECT_EQ(step.after, stated.after);
    EXPECT_EQ(step.pools, stated.pools);
}

TEST(TermsOfTheCook, AnUnknownWordStaysAWord) {
    Step step = plainStep();
    const Step before = step;
    setTechnique(step, "hum-along", {}, us);
    EXPECT_EQ(step.technique, "hum-along");
    EXPECT_EQ(step.time, before.time);
}

TEST(TermsOfTheCook, OvensAreSetToWhatADialOfTheUnitsHas) {
    Step step = plainStep();
    setTechnique(step, "bake", {}, us);
    EXPECT_EQ(std::get<OvenHeat>(step.heat).lowest, Temperature::fahrenheit(350));
    step = plainStep();
    setTechnique(step, "bake", {}, Units::Metric);
    EXPECT_EQ(std::get<OvenHeat>(step.heat).lowest, Temperature::celsius(180));
    EXPECT_EQ(std::get<OvenHeat>(step.heat).highest, Temperature::celsius(190));
}

TEST(TermsOfTheCook, EveryTechniqueOfTheTableStartsWithinItsOwnRangeAndCanBeKept) {
    for (const Technique& each : techniques()) {
        const std::string key(each.key);
        Dish dish = newDish("Any");
        addStep(dish, {0, 0}, "step");
        Step& step = dish.components[0].steps[0];
        setTechnique(step, key, {}, us);
        EXPECT_GE(step.time.likely, each.least) << key;
        EXPECT_LE(step.time.likely, each.most) << key;
        EXPECT_THAT(validateDish(dish), IsEmpty()) << key;
    }
}

TEST(TermsOfTheCook, OwnTechniquesGoBeforeTheTables) {
    const OwnTerms terms = potRoast();
    Step step = plainStep();
    setTechnique(step, techniqueKey("Pot roast"), terms, us);
    EXPECT_EQ(step.time.likely, Duration::minutes(90));
    EXPECT_EQ(step.segments, (std::vector<Segment>{{Attention::Hands, Duration::minutes(4), false},
                                                   {Attention::Away, {}, true}}));
    EXPECT_EQ(usualRange("pot-roast", terms)->most, Duration::minutes(180));
    EXPECT_FALSE(usualRange("pot-roast", {}));
}

TEST(TermsOfTheCook, AreReadBackAsTheyWereWritten) {
    EXPECT_EQ(readTerms(writeTerms(potRoast())), potRoast());
    EXPECT_EQ(readTerms(writeTerms({})), OwnTerms());
    EXPECT_EQ(readTerms("no json"), OwnTerms());
    EXPECT_EQ(readTerms(R"({"techniques":[{"least":60}],"cuts":[7]})"), OwnTerms());
}

TEST(TermsOfTheCook, ATypedLineKeepsItsTimeAndGetsTheUsualAttention) {
    Step step = plainStep();
    step.name = "Sweat the leeks 25 minutes";
    suggest(step, {}, us);
    EXPECT_EQ(step.technique, "sweat");
    EXPECT_EQ(step.time.likely, Duration::minutes(25));
    EXPECT_EQ(step.segments.size(), 2U);
    EXPECT_EQ(std::get<BurnerHeat>(step.heat).level, "medium-low");
}

TEST(TermsOfTheCook, ATypedLineLeavesTimeAndCueToTheirFields) {
    Step step = plainStep();
    step.name = "Fry the shallots over medium heat 8 to 10 minutes, until golden";
    suggest(step, {}, us);
    EXPECT_EQ(step.name, "Fry the shallots over medium heat");
    EXPECT_EQ(step.cue, "until golden");
    EXPECT_EQ(step.time.longest, Duration::minutes(10));
    for (const char* kept : {"Fry 5 minutes until golden", "Fry the shallots until golden"}) {
        Step other = plainStep();
        other.name = kept;
        suggest(other, {}, us);
        EXPECT_EQ(other.name.substr(0, 3), "Fry");
        EXPECT_EQ(other.cue, "until golden");
    }
}

TEST(TermsOfTheCook, ATypedLineMarinatesInTheFridgeUnlessItSaysRoomTemperature) {
    Step step = plainStep();
    step.name = "Marinate the fish 20 minutes at room temperature";
    suggest(step, {}, us);
    EXPECT_EQ(step.technique, "marinate");
    EXPECT_THAT(step.pools, IsEmpty());
    EXPECT_EQ(step.after.storage, Storage::Room);
    step.name = "Marinate the fish 20 minutes";
    suggest(step, {}, us);
    EXPECT_THAT(step.pools, ElementsAre(PoolNeed{PoolId{"fridge-shelf"}, 1}));
    EXPECT_EQ(step.after.storage, Storage::Cold);
}

}  // namespace
}  // namespace rangeline::test
