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
}

TEST(Instruction, OfADutchOvenStaysOnTheBurner) {
    const Instruction read = readInstruction("Brown the lamb in a Dutch oven", usualOven);
    EXPECT_TRUE(std::holds_alternative<BurnerHeat>(read.step.heat));
    EXPECT_EQ(read.step.wares.at(0).kind, "pot");
}

TEST(Instruction, WithoutAVerbThatIsKnownNeedsHands) {
    const Instruction read = readInstruction("Season with salt", usualOven);
    EXPECT_TRUE(std::holds_alternative<std::monostate>(read.step.heat));
    EXPECT_EQ(read.step.segments.at(0).attention, Attention::Hands);
    EXPECT_EQ(read.step.time.likely, assumedTime);
    EXPECT_EQ(readInstruction("Spread it on the roast until brown", usualOven).step.technique, "");
}

}  // namespace
}  // namespace rangeline
