#include "model/measures.h"

#include <gmock/gmock.h>

#include <array>
#include <cstdlib>
#include <string>

#include "model/quantity_text.h"
#include "support/run_program.h"

namespace rangeline {
namespace {

using testing::ElementsAre;

Amount amount(const char* text) {
    return parseAmount(text).value();
}

std::vector<std::string> sum(std::initializer_list<const char*> texts) {
    std::vector<Amount> amounts;
    for (const char* text : texts) {
        amounts.push_back(amount(text));
    }
    std::vector<std::string> told;
    for (const Amount& each : addedUp(amounts)) {
        told.push_back(toText(each));
    }
    return told;
}

TEST(Measures, OfOneFamilyAddUpToWhatSuitsTheSum) {
    EXPECT_THAT(sum({"2 tsp", "1 tsp"}), ElementsAre("1 tbsp"));
    EXPECT_THAT(sum({"3 tbsp", "5 tbsp"}), ElementsAre("1/2 cup"));
    EXPECT_THAT(sum({"1/4 cup", "1 tbsp"}), ElementsAre("5/16 cup"));
    EXPECT_THAT(sum({"12 oz", "4 oz"}), ElementsAre("1 lb"));
    EXPECT_THAT(sum({"600 g", "0.5 kg"}), ElementsAre("1 1/10 kg"));
    EXPECT_THAT(sum({"1/2 tsp", "1/4 tsp"}), ElementsAre("3/4 tsp"));
}

TEST(Measures, OfOneAmountStayAsWritten) {
    EXPECT_THAT(sum({"3 tsp"}), ElementsAre("3 tsp"));
    EXPECT_THAT(sum({"2 cups"}), ElementsAre("2 cups"));
    EXPECT_THAT(sum({"10 fl oz"}), ElementsAre("10 fl oz"));
}

TEST(Measures, OfUnlikeFamiliesStayApart) {
    EXPECT_THAT(sum({"1 cup", "4 oz", "1 cup"}), ElementsAre("2 cup", "4 oz"));
    EXPECT_THAT(sum({"100 ml", "1 cup"}), ElementsAre("100 ml", "1 cup"));
    EXPECT_THAT(sum({"6 sprigs", "2 sprigs", "3", "1"}), ElementsAre("8 sprigs", "4"));
}

TEST(Measures, KeepTheirRanges) {
    EXPECT_THAT(sum({"1-2 tbsp", "1 tbsp"}), ElementsAre("2-3 tbsp"));
}

TEST(Measures, AreRoundedToWhatCanBeMeasured) {
    EXPECT_EQ(roundedToMeasure({5, 16}, "tsp"), Rational(3, 8));
    EXPECT_EQ(roundedToMeasure({1, 100}, "tsp"), Rational(1, 8)) << "never to nothing";
    EXPECT_EQ(roundedToMeasure({0}, "tsp"), Rational(0));
    EXPECT_EQ(roundedUpToMeasure({401, 100}, "lb"), Rational(33, 8));
    EXPECT_EQ(roundedUpToMeasure({4}, "lb"), Rational(4));
}

/// The sizes against an independent program: GNU Units (Debian's package units).
TEST(Measures, HaveTheSizesThatAnotherProgramKnows) {
    if (std::system("command -v units >/dev/null 2>&1") != 0) {
        GTEST_SKIP() << "missing program: units";
    }
    const std::array smallest{"teaspoon", "ounce", "ml", "mg"};
    const auto nameOf = [](std::string_view key) {
        return key == "tsp"     ? std::string("teaspoon")
               : key == "tbsp"  ? std::string("tablespoon")
               : key == "fl oz" ? std::string("usfloz")
               : key == "pt"    ? std::string("uspint")
               : key == "qt"    ? std::string("usquart")
               : key == "gal"   ? std::string("usgallon")
               : key == "cup"   ? std::string("uscup")
                                : std::string(key);
    };
    for (const Measure& measure : measures()) {
        const std::string command = "units -t '" + nameOf(measure.key) + "' '" +
                                    smallest[static_cast<std::size_t>(measure.family)] + "'";
        const double size = std::strtod(test::outputOf(command).c_str(), nullptr);
        ASSERT_GT(size, 0) << command;
        EXPECT_NEAR(size, measure.size.toDouble(), 1e-6 * size) << measure.key;
    }
}

}  // namespace
}  // namespace rangeline
