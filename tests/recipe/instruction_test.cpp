#include "recipe/instruction.h"

#include <gmock/gmock.h>

#include "model/quantity_text.h"
#include "recipe/spoken_heat.h"
#include "recipe/spoken_time.h"

namespace rangeline {
namespace {

using testing::ElementsAre;

constexpr Temperature usualOven = Temperature::fahrenheit(350);

std::string timesIn(std::string_view text) {
    std::string all;
    for (const DurationRange& each : timesNamed(text)) {
        all += all.empty() ? "" : "; ";
        all += toText(each.shortest);
        all += each.longest == each.shortest ? "" : " to " + toText(each.longest);
    }
    return all;
}

TEST(SpokenTime, IsFoundHoweverItIsWritten) {
    EXPECT_EQ(timesIn("Bake for 20 minutes"), "20 min");
    EXPECT_EQ(timesIn("Simmer 20-25 min., stirring"), "20 min to 25 min");
    EXPECT_EQ(timesIn("roast 45 minutes to 1 hour"), "45 min to 1 h");
    EXPECT_EQ(timesIn("braise 1 to 1 1/2 hours"), "1 h to 1 h 30 min");
    EXPECT_EQ(timesIn("for 1 hour and 20 minutes"), "1 h 20 min");
    EXPECT_EQ(timesIn("for half an hour"), "30 min");
    EXPECT_EQ(timesIn("leave it an hour"), "1 h");
    EXPECT_EQ(timesIn("a 30-second rest"), "30 s");
    EXPECT_EQ(timesIn("sear 4 minutes per side"), "8 min");
    EXPECT_EQ(timesIn("cook 5 minutes, then bake 30 minutes"), "5 min; 30 min");
    EXPECT_EQ(timesIn("toss (2 min)"), "2 min");
    EXPECT_EQ(timesIn("for an hour and a half"), "1 h 30 min");
    EXPECT_EQ(timesIn("two and a half hours"), "2 h 30 min");
    EXPECT_EQ(timesIn("1 and 1/2 hours"), "1 h 30 min");
    EXPECT_EQ(timesIn("1 hour and half an hour"), "1 h 30 min");
    EXPECT_EQ(timesIn("fry a minute or two"), "1 min to 2 min");
    EXPECT_EQ(timesIn("two to two and a half hours"), "2 h to 2 h 30 min");
    EXPECT_EQ(timesIn("Cook 20 minutes and half an hour"), "50 min");
    EXPECT_EQ(timesIn("Simmer 10 minutes and half the butter"), "10 min");
    EXPECT_EQ(timesIn("Cook 5 minutes or one side is brown"), "5 min");
    EXPECT_EQ(timesIn("In a second bowl, whisk the eggs"), "");
    EXPECT_EQ(timesIn("Peel 3 d'Anjou pears"), "");
    EXPECT_EQ(timesIn("blend 4 minutes, keeps warm 40 minutes"), "4 min");
    EXPECT_EQ(timesIn("keep stirring for 5 minutes"), "5 min");
    EXPECT_EQ(timesIn("baste every 10 minutes"), "");
    EXPECT_EQ(timesIn("2 minted lambs and 5 horses"), "");
    EXPECT_EQ(timesIn("for 99999 hours"), "");
}

TEST(SpokenTime, AtTheEndCanBeLeftOff) {
    EXPECT_EQ(withoutClosingTime("Halve the tomatoes, 6 minutes"), "Halve the tomatoes");
    EXPECT_EQ(withoutClosingTime("Sweat the leeks for about 8 to 10 minutes"), "Sweat the leeks");
    EXPECT_EQ(withoutClosingTime("Rest 1 hour and 20 min"), "Rest");
    for (const std::string_view kept :
         {"Sear 4 minutes per side", "Fry 5 minutes, until brown", "Fry 2 minutes, then 3 minutes",
          "Turn every 10 minutes", "10 minutes", "Cut in 12", "Whisk"}) {
        EXPECT_EQ(withoutClosingTime(kept), kept);
    }
}

TEST(SpokenHeat, NamesItsScale) {
    const auto in = [](std::string_view text) {
        std::string all;
        for (const Temperature& each : temperaturesNamed(text)) {
            all += toText(each, Units::UsCustomary) + ";";
        }
        return all;
    };
    EXPECT_EQ(in("Bake at 375°F"), "375 °F;");
    EXPECT_EQ(in("at 350 degrees F, or 180C"), "350 °F;356 °F;");
    EXPECT_EQ(in("at 400 degrees"), "");
    EXPECT_EQ(in("cut 350 carrots"), "");
    EXPECT_EQ(heatNamed("Fry over medium-high heat"), "medium-high");
    EXPECT_EQ(heatNamed("Warm it over low heat."), "low");
    EXPECT_EQ(heatNamed("Reduce the heat"), "");
}

TEST(Instruction, ThatBeginsWithPlatingEndsOnThePlate) {
    const auto plates = [](std::string_view sentence) {
        const Step step = readInstruction(sentence, usualOven).step;
        EXPECT_TRUE(!step.plates || std::holds_alternative<std::monostate>(step.heat)) << sentence;
        return step.plates;
    };
    EXPECT_TRUE(plates("Plate the roast beans, 4 minutes"));
    EXPECT_TRUE(plates("Serve at once"));
    EXPECT_FALSE(plates("Warm the plates"));
    EXPECT_FALSE(plates("Simmer and serve"));
}

TEST(Sentences, EndAtFullStopsThatAreNoAbbreviations) {
    EXPECT_THAT(sentencesOf("Add 2 tbsp. of oil. Fry the leeks! Rest"),
                ElementsAre("Add 2 tbsp. of oil", "Fry the leeks", "Rest"));
    EXPECT_THAT(sentencesOf("Cook 1.5 hours."), ElementsAre("Cook 1.5 hours"));
    EXPECT_THAT(sentencesOf(" "), ElementsAre());
    EXPECT_THAT(sentencesOf("Boil 20 min. Stir the cream in. Rest 5 min. or so"),
                ElementsAre("Boil 20 min", "Stir the cream in", "Rest 5 min. or so"));
}

TEST(Sentences, EndAfterAFigureWhereACapitalFollows) {
    EXPECT_THAT(sentencesOf("Heat the oven to 200C/180C fan/gas 6. Season the leeks."),
                ElementsAre("Heat the oven to 200C/180C fan/gas 6", "Season the leeks"));
}

TEST(SpokenTime, IsInWholeMinutesBetweenWholeMinutes) {
    EXPECT_EQ(timesNamed("boil 12-15 minutes").front().likely, Duration::minutes(14));
    EXPECT_EQ(timesNamed("boil 1 to 2 minutes").front().likely, Duration::seconds(90));
}

TEST(Sentences, EndWithTheirLineUnlessTheNextGoesOn) {
    EXPECT_THAT(sentencesOf("Chop the leeks\nFry them in\nbutter\n\nRest"),
                ElementsAre("Chop the leeks", "Fry them in butter", "Rest"));
    EXPECT_THAT(sentencesOf("Fry for\n10 minutes\n(or 12)\n20 leeks\n2. Rest."),
                ElementsAre("Fry for 10 minutes (or 12) 20 leeks", "Rest"));
    EXPECT_THAT(sentencesOf("Rest.\n10 minutes later, plate"),
                ElementsAre("Rest", "10 minutes later, plate"));
}

TEST(Sentences, HaveNoNumbersOfAListInFront) {
    EXPECT_THAT(sentencesOf("1. Chop the leeks. 2. Fry them.\n10. Rest\n2) Plate\nStep 3: Eat"),
                ElementsAre("Chop the leeks", "Fry them", "Rest", "Plate", "Eat"));
    EXPECT_THAT(sentencesOf("2 leeks go along. 1.5 cups too"),
                ElementsAre("2 leeks go along", "1.5 cups too"));
}

TEST(Instruction, OfASimmerTakesABurnerAndASaucepan) {
    const Instruction read = readInstruction(
        "Simmer the stock over low heat for 20 to 30 minutes, until it coats a "
        "spoon, skimming",
        usualOven);
    EXPECT_EQ(read.step.technique, "simmer");
    EXPECT_EQ(std::get<BurnerHeat>(read.step.heat).level, "low");
    EXPECT_EQ(read.step.wares.at(0).kind, "saucepan");
    EXPECT_EQ(read.step.cue, "until it coats a spoon");
    EXPECT_EQ(read.step.time.likely, Duration::minutes(25));
    EXPECT_EQ(read.timesNamed, 1);
}

TEST(Instruction, OfTheOvenTakesItsTemperatureOrTheUsualOne) {
    const Instruction said = readInstruction("Bake at 400 °F on a sheet", usualOven);
    EXPECT_EQ(std::get<OvenHeat>(said.step.heat).lowest, Temperature::fahrenheit(400));
    EXPECT_EQ(said.step.wares.at(0).kind, "sheet");
    EXPECT_FALSE(said.ovenAssumed);
    EXPECT_EQ(said.timesNamed, 0);
    const Instruction unsaid =
        readInstruction("Roast until the core reads 165 °F, 35 minutes", usualOven);
    EXPECT_EQ(std::get<OvenHeat>(unsaid.step.heat).lowest, usualOven);
    EXPECT_TRUE(unsaid.ovenAssumed);
    EXPECT_TRUE(readInstruction("Preheat the oven to 375°F", usualOven).heatsOven);
    EXPECT_TRUE(readInstruction("Heat the oven to 190C", usualOven).heatsOven);
    EXPECT_TRUE(readInstruction("Set your oven to 400°F", usualOven).heatsOven);
    EXPECT_TRUE(readInstruction("Preheat to 180C", usualOven).heatsOven);
    EXPECT_TRUE(readInstruction("Preheat the broiler", usualOven).heatsOven);
}

TEST(Instruction, ThatDoesMoreThanHeatTheOvenIsAStep) {
    const Instruction roast = readInstruction(
        "Heat the oil in a skillet, add the roots, then roast in the oven for 20 minutes",
        usualOven);
    EXPECT_FALSE(roast.heatsOven);
    EXPECT_EQ(roast.step.technique, "roast");
    EXPECT_TRUE(std::holds_alternative<OvenHeat>(roast.step.heat));
    const Instruction toss =
        readInstruction("Preheat the oven to 400°F and toss the roots with oil", usualOven);
    EXPECT_FALSE(toss.heatsOven);
    EXPECT_TRUE(std::holds_alternative<std::monostate>(toss.step.heat));
    const Instruction sear =
        readInstruction("Preheat a skillet, then sear the lamb 3 minutes per side", usualOven);
    EXPECT_FALSE(sear.heatsOven);
    EXPECT_EQ(sear.step.technique, "sear");
    for (const std::string_view kept : {"Set the dish in a 375 °F oven for 40 minutes",
                                        "Turn the roots over in the 400 °F oven"}) {
        EXPECT_FALSE(readInstruction(kept, usualOven).heatsOven) << kept;
    }
}

TEST(Instruction, IsAboutTheVerbThatCooks) {
    const auto techniqueOf = [](std::string_view sentence) {
        return readInstruction(sentence, usualOven).step.technique;
    };
    EXPECT_EQ(techniqueOf("Reduce the heat to low and simmer 20 minutes"), "simmer");
    EXPECT_EQ(techniqueOf("Reduce the sauce by half"), "reduce");
    EXPECT_EQ(techniqueOf("Heat the butter and saute the leeks"), "saute");
    EXPECT_EQ(techniqueOf("Bring a large pot of water to a boil"), "boil");
    EXPECT_EQ(techniqueOf("Mix the dressing and chill for an hour"), "chill");
    EXPECT_EQ(techniqueOf("Turn the oven up to 425°F and bake 10 minutes more"), "bake");
}

TEST(Instruction, SaysItsHeatWhereverThatStands) {
    const auto levelOf = [](std::string_view sentence) {
        return std::get<BurnerHeat>(readInstruction(sentence, usualOven).step.heat).level;
    };
    EXPECT_EQ(levelOf("Season and heat the oil over medium heat"), "medium");
    EXPECT_EQ(levelOf("Increase heat, then fry over medium high heat."), "medium-high");
    EXPECT_EQ(levelOf("Saute the leeks"), "");
}

TEST(Instruction, OfADutchOvenStaysOnTheBurner) {
    const Instruction read = readInstruction("Brown the lamb in a Dutch oven", usualOven);
    EXPECT_TRUE(std::holds_alternative<BurnerHeat>(read.step.heat));
    EXPECT_EQ(read.step.wares.at(0).kind, "pot");
}

TEST(Instruction, ChillsOnAFridgeShelf) {
    const Step chilled = readInstruction("Refrigerate for 2 hours", usualOven).step;
    EXPECT_EQ(chilled.technique, "chill");
    EXPECT_THAT(chilled.pools, ElementsAre(PoolNeed{PoolId{"fridge-shelf"}, 1}));
    EXPECT_EQ(chilled.after.storage, Storage::Cold);
    const Step atRoom = readInstruction("Marinate at room temperature, 20 min", usualOven).step;
    EXPECT_TRUE(atRoom.pools.empty());
    EXPECT_EQ(atRoom.after, Keeping());
}

TEST(Instruction, TakesPanAndHeatThatAreNamedWhateverItsVerb) {
    const Step glaze =
        readInstruction("glaze the carrots in the saute pan over medium heat", usualOven).step;
    EXPECT_EQ(std::get<BurnerHeat>(glaze.heat).level, "medium");
    EXPECT_EQ(glaze.wares.at(0).kind, "saute-pan");
    const Step stir = readInstruction("Stir in a saucepan over low heat", usualOven).step;
    EXPECT_EQ(std::get<BurnerHeat>(stir.heat).level, "low");
    EXPECT_EQ(stir.wares.at(0).kind, "saucepan");
    const Step swirl = readInstruction("Swirl in the pot", usualOven).step;
    EXPECT_TRUE(std::holds_alternative<std::monostate>(swirl.heat));
    EXPECT_EQ(swirl.wares.at(0).kind, "pot");
}

TEST(Instruction, WithoutAVerbThatIsKnownNeedsHands) {
    const Instruction read = readInstruction("Season with salt", usualOven);
    EXPECT_TRUE(std::holds_alternative<std::monostate>(read.step.heat));
    EXPECT_EQ(read.step.segments.at(0).attention, Attention::Hands);
    EXPECT_EQ(read.step.time.likely, assumedTime);
    EXPECT_EQ(readInstruction("Spread it on the roast until brown", usualOven).step.technique, "");
}

TEST(InstructionSameVessel, IsNamedByWhatFollowsTheWordSame) {
    Step before = readInstruction("Sear the leeks", Temperature::fahrenheit(375)).step;
    EXPECT_TRUE(goesOnInVesselOf(before, "Deglaze with wine in the same pan"));
    EXPECT_TRUE(goesOnInVesselOf(before, "Return it to the same pot."));
    EXPECT_TRUE(goesOnInVesselOf(before, "Cut to the same size, then fry in the same pan"));
    EXPECT_FALSE(goesOnInVesselOf(before, "Cut all to the same size in a pan"));
    EXPECT_FALSE(goesOnInVesselOf(before, "Do the same"));
    before = readInstruction("Chop the leeks", Temperature::fahrenheit(375)).step;
    EXPECT_FALSE(goesOnInVesselOf(before, "Fry them in the same pan")) << "a board is no pan";
}

}  // namespace
}  // namespace rangeline
