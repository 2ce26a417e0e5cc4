#include "text/finding_text.h"

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <algorithm>
#include <set>

#include "check/check.h"
#include "safety/dangers.h"
#include "text/finding_words.h"
#include "text/supper.h"
#include "text/words.h"

namespace rangeline::test {
namespace {

constexpr int lastCode = static_cast<int>(FindingCode::AtItsLimit);

Figure word(const char* text) {
    return std::string(text);
}

/// A finding with that code about the roast and the gratin, and figures of no particular kind.
Finding anyFinding(int code) {
    return {static_cast<FindingCode>(code),
            Severity::Collision,
            {key("roast"), key("bake")},
            {EquipmentSort::Oven, 0},
            minutes(-80, -40),
            {3_min, 7_min, word("room"), word("usda-temperatures")}};
}

/// Codes whose sentence names no step of the finding: the figures say it.
bool isWithoutSteps(FindingCode code) {
    return code == FindingCode::AheadWithoutStorage || code == FindingCode::AheadBeforeParts ||
           code == FindingCode::GuestAllergen;
}

bool isAboutTwo(FindingCode code) {
    static const std::set<FindingCode> two{
        FindingCode::BurnerTwice,      FindingCode::WareTwice,
        FindingCode::OvenSlotTwice,    FindingCode::OvenTwoTemperatures,
        FindingCode::OvenTwoModes,     FindingCode::OvenChangedTooFast,
        FindingCode::DoorOpened,       FindingCode::NotYetWashed,
        FindingCode::PoolOver,         FindingCode::HandsTwice,
        FindingCode::WatchesTooMuch,   FindingCode::WorksDuringTalk,
        FindingCode::TooEarlyAfter,    FindingCode::TooLateAfter,
        FindingCode::KeptTooLong,      FindingCode::OutOfTemperatureTooLong,
        FindingCode::CrossContact,     FindingCode::AllergenContact,
        FindingCode::Danger,           FindingCode::NotPlaced,
        FindingCode::HandworkUnchanged};  // gathered from several steps
    return two.contains(code);
}

TEST(FindingText, EveryCodeHasItsSentence) {
    const Supper supper;
    for (int code = 0; code <= lastCode; ++code) {
        const Finding finding = anyFinding(code);
        const QString text = sentence(finding, supper.context);
        EXPECT_TRUE(text.endsWith('.') || finding.code == FindingCode::Danger)
            << text.toStdString();
        EXPECT_FALSE(text.contains(QRegularExpression("[{}%]"))) << text.toStdString();
        EXPECT_EQ(text.contains("Roast the thighs"), !isWithoutSteps(finding.code))
            << text.toStdString();
        EXPECT_EQ(text.contains("Bake the gratin"), isAboutTwo(finding.code)) << text.toStdString();
    }
}

TEST(FindingText, HandsWantedByManyNameThemAll) {
    const Supper supper;
    Finding finding = anyFinding(static_cast<int>(FindingCode::HandsTwice));
    finding.keys.push_back(key("char"));
    const QString text = sentence(finding, supper.context);
    for (const PlacementKey& each : finding.keys) {
        EXPECT_TRUE(text.contains(Names(supper.context).step(each))) << text.toStdString();
    }
}

TEST(FindingText, EveryCodeHasATitleAHintAndAKeyOfItsOwn) {
    const Supper supper;
    std::set<std::string> keys;
    for (int code = 0; code <= lastCode; ++code) {
        const Finding finding = anyFinding(code);
        EXPECT_FALSE(title(finding.code).isEmpty()) << code;
        EXPECT_FALSE(hint(finding, supper.context).contains(QRegularExpression("[{}%]"))) << code;
        EXPECT_EQ(hint(finding, supper.context).endsWith('.'), finding.code != FindingCode::Danger);
        EXPECT_TRUE(keys.insert(wordsOf(finding.code).key).second) << code;
    }
}

TEST(FindingText, NoVerdictAndNoTechnicalWords) {
    const Supper supper;
    const QRegularExpression unwanted("\\bsafe\\b|critical path|slack|makespan|resource",
                                      QRegularExpression::CaseInsensitiveOption);
    for (int code = 0; code <= lastCode; ++code) {
        const Finding finding = anyFinding(code);
        const QString all =
            title(finding.code) + sentence(finding, supper.context) + hint(finding, supper.context);
        EXPECT_FALSE(all.contains(unwanted)) << all.toStdString();
    }
    for (const Danger& danger : dangers()) {
        EXPECT_FALSE(dangerText(danger.key).contains(unwanted)) << danger.key;
    }
}

TEST(FindingText, TheOvenAskedForTwoTemperatures) {
    const Supper supper;
    const auto found = checkLesson(supper.lesson, supper.expanded);
    const auto two = std::ranges::find(found, FindingCode::OvenTwoTemperatures, &Finding::code);
    ASSERT_NE(two, found.end());
    EXPECT_EQ(sentence(*two, supper.context),
              "Oven: “Bake the gratin” wants 375 °F from 5:10 to 5:50 PM while “Roast the thighs” "
              "holds it at 425 °F.");
}

TEST(FindingText, InMetricUnits) {
    auto builder = supperBuilder();
    builder.lesson.head.units = Units::Metric;
    Finding finding = anyFinding(static_cast<int>(FindingCode::OvenTwoTemperatures));
    finding.figures = {220_C, 190_C};
    EXPECT_EQ(sentence(finding, Supper(builder, german).context),
              "Oven: “Bake the gratin” wants 190 °C from 17:10 to 17:50 while “Roast the thighs” "
              "holds it at 220 °C.");
    finding = anyFinding(static_cast<int>(FindingCode::BurnerTooWeak));
    finding.keys = {key("char")};
    finding.equipment = {EquipmentSort::Burner, 0};
    finding.figures = {std::int64_t{1500}, std::int64_t{2500}};
    EXPECT_EQ(sentence(finding, Supper(builder, german).context),
              "Front left burner gives 1.500 W, but “Char the leeks” needs 2.500 W.");
}

TEST(FindingText, APanNotWashed) {
    const Supper supper;
    const Finding finding{FindingCode::NotYetWashed,  Severity::Collision,
                          {key("char"), key("bake")}, {EquipmentSort::Ware, 1},
                          minutes(-40, -20),          {2_min}};
    EXPECT_EQ(
        sentence(finding, supper.context),
        "Sauté pan 2 is not washed between “Char the leeks” and “Bake the gratin” at 6:10 PM; "
        "washing takes 2 min.");
}

TEST(FindingText, CasesThatReadOtherwise) {
    const Supper supper;
    Finding finding = anyFinding(static_cast<int>(FindingCode::TooEarlyAfter));
    finding.figures = {-10_min, 5_min};
    EXPECT_EQ(sentence(finding, supper.context),
              "“Bake the gratin” comes 15 min too early: it has to wait for “Roast the thighs”.");
    finding = anyFinding(static_cast<int>(FindingCode::OvenTwoTemperatures));
    finding.keys = {turningOn("oven"), key("roast")};
    finding.figures = {375_F, 425_F};
    EXPECT_EQ(sentence(finding, supper.context),
              "Oven is turned on to 375 °F, but “Roast the thighs” wants 425 °F.");
    finding = anyFinding(static_cast<int>(FindingCode::WareTwice));
    finding.equipment = {EquipmentSort::Ware, 1};
    finding.keys = {washAfter("char"), key("bake")};
    EXPECT_EQ(sentence(finding, supper.context),
              "Sauté pan 2: “Bake the gratin” needs it from 5:10 to 5:50 PM while it is being "
              "washed.");
}

TEST(FindingText, ManyStepsNotPlacedAreCounted) {
    const Supper supper;
    Finding finding{FindingCode::NotPlaced, Severity::Open, {}, {}, {}, {}};
    finding.keys.assign(4, key("char"));
    EXPECT_EQ(sentence(finding, supper.context), "4 steps are not placed yet.");
    finding.keys.resize(1);
    EXPECT_EQ(sentence(finding, supper.context), "“Char the leeks” has no time yet.");
}

TEST(FindingText, AStepAgainstItself) {
    const Supper supper;
    const Finding finding{FindingCode::WareTwice,
                          Severity::Collision,
                          {key("char"), key("char")},
                          {EquipmentSort::Ware, 1},
                          {},
                          {}};
    EXPECT_EQ(sentence(finding, supper.context),
              "Sauté pan 2 is chosen twice for “Char the leeks”.");
}

TEST(FindingText, CoreTemperatureNamesFoodLimitAndSource) {
    const Supper supper;
    const Finding finding{FindingCode::CoreBelowLimit,
                          Severity::Caution,
                          {key("roast")},
                          {},
                          {},
                          {140_F, 145_F, word("whole-meat"), word("usda-temperatures")}};
    EXPECT_EQ(sentence(finding, supper.context),
              "“Roast the thighs” cooks steaks and chops to 140 °F, below the limit chosen: 145 °F "
              "inside (USDA FSIS, minimum internal temperatures).");
    EXPECT_EQ(hint(finding, supper.context),
              "Cook it to 145 °F and let it rest 3 min; measure in the thickest part.");
}

TEST(FindingText, ACookWhoIsNotThereIsCalledByName) {
    Supper supper;
    Finding finding{FindingCode::UnknownEquipment, Severity::Collision, {key("char")}, {}, {}, {}};
    finding.figures = {supper.lesson.kitchen.cooks.front().id.text};
    EXPECT_TRUE(sentence(finding, supper.context)
                    .contains(QString::fromStdString(supper.lesson.kitchen.cooks.front().name)));
    EXPECT_TRUE(sentence(finding, supper.context).contains("not there today"));
    finding.figures = {std::string("griddle-9")};
    EXPECT_TRUE(sentence(finding, supper.context).contains("does not have"));
}

TEST(FindingText, ADangerIsTitledByWhatItIs) {
    const Finding knife{FindingCode::Danger, Severity::Caution, {key("char")}, {}, {},
                        {word("knife")}};
    EXPECT_EQ(title(knife), "Sharp knife");
    for (const Danger& danger : dangers()) {
        const Finding it{FindingCode::Danger,      Severity::Caution, {key("char")}, {}, {},
                         {std::string(danger.key)}};
        EXPECT_NE(title(it), title(FindingCode::Danger)) << danger.key;
    }
}

TEST(FindingText, ADangerSaysWhenAndWhatToMind) {
    const Supper supper;
    Finding finding{FindingCode::Danger, Severity::Caution, {key("char")}, {}, {}, {word("steam")}};
    EXPECT_EQ(sentence(finding, supper.context),
              "“Char the leeks”: steam burns: lift the lid away from you.");
    finding.interval = minutes(-50, -40);
    EXPECT_EQ(sentence(finding, supper.context),
              "“Char the leeks” at 5:40 PM: steam burns: lift the lid away from you.");
}

TEST(FindingText, AGuestsAllergenNamesIngredientAndComponent) {
    const Supper supper;
    const Finding finding{FindingCode::GuestAllergen,
                          Severity::Caution,
                          {},
                          {},
                          {},
                          {word("tree-nuts"), word("hazelnuts"), word("crumb")}};
    EXPECT_EQ(sentence(finding, supper.context),
              "“Hazelnuts” (crumb) has tree nuts, which a guest must not eat.");
}

TEST(FindingText, TheNoteDefersToTheLocalCode) {
    const QString home = safetyNote(SafetyProfile::Household, {}, Units::UsCustomary, american);
    EXPECT_TRUE(home.contains("at or below 40 °F, hot food at or above 140 °F, no more than 2 h"));
    EXPECT_TRUE(home.contains("above 90 °F no more than 1 h"));
    EXPECT_FALSE(home.contains("This kitchen"));
    EXPECT_TRUE(safetyNote(SafetyProfile::Household, Temperature::fahrenheit(95),
                           Units::UsCustomary, american)
                    .contains("This kitchen is written down with 95 °F."));
    const QString code = safetyNote(SafetyProfile::FoodCode, {}, Units::Metric, american);
    EXPECT_TRUE(code.contains("Cool from 57.2 °C to 21.1 °C within 2 h."));
    for (const QString& note : {home, code}) {
        EXPECT_TRUE(note.endsWith("follow your local food code and health department."));
    }
}

TEST(FindingText, TheNoteGoesWithFoodSafetyOnly) {
    EXPECT_FALSE(needsSafetyNote({}));
    EXPECT_FALSE(needsSafetyNote({anyFinding(static_cast<int>(FindingCode::Danger))}));
    EXPECT_TRUE(needsSafetyNote({anyFinding(static_cast<int>(FindingCode::CoreNotStated))}));
}

TEST(FindingText, Severities) {
    EXPECT_EQ(severityText(Severity::Collision), "Collision");
    EXPECT_EQ(severityText(Severity::Late), "Late");
    EXPECT_EQ(severityText(Severity::Open), "To do");
    EXPECT_EQ(severityText(Severity::Caution), "Caution");
}

}  // namespace
}  // namespace rangeline::test
