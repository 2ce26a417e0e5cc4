#include "inspect/equipment_choices.h"

#include <gmock/gmock.h>

#include "inspect/seen.h"

namespace rangeline::test {
namespace {

using ::testing::ElementsAre;

QStringList needs(const std::vector<EquipmentChoice>& choices) {
    QStringList names;
    for (const EquipmentChoice& choice : choices) {
        names << choice.need;
    }
    return names;
}

TEST(EquipmentChoices, NamesEachNeedOfAStep) {
    const Seen seen(smallKitchen().lesson);
    EXPECT_EQ(needs(equipmentChoices(seen.index, seen.text, key("sear"))),
              QStringList({"Burner", "Saute pan", "Hands"}));
    EXPECT_EQ(needs(equipmentChoices(seen.index, seen.text, key("roast"))),
              QStringList({"Oven slot", "Set to", "Sheet"}));
    EXPECT_EQ(needs(equipmentChoices(seen.index, seen.text, key("simmer"))),
              QStringList({"Burner", "Pot", "Watches"}));
}

TEST(EquipmentChoices, KnowsTheCurrentOneAndChangesOnlyThat) {
    const Seen seen(smallKitchen().lesson);
    const auto choices = equipmentChoices(seen.index, seen.text, key("sear"));
    EXPECT_EQ(choices[0].current, 0);
    ASSERT_EQ(choices[1].options.size(), 2U);
    Placement expected = seen.lesson.placements.at(key("sear"));
    expected.wares = {{WareId{"pan"}, 1}};
    EXPECT_EQ(choices[1].options[1].placement, expected);
}

TEST(EquipmentChoices, OffersTheDialsSettingsThatTheStepAccepts) {
    const Seen seen(smallKitchen().lesson);
    const auto choices = equipmentChoices(seen.index, seen.text, key("roast"));
    std::vector<QString> names;
    for (const EquipmentOption& option : choices[1].options) {
        names.push_back(option.name);
    }
    EXPECT_THAT(names, ElementsAre("375 °F", "400 °F", "425 °F"));
    EXPECT_EQ(choices[1].current, 1);
}

TEST(EquipmentChoices, AStepOnTheShelfHasNone) {
    const Seen seen(smallKitchen().lesson);
    EXPECT_TRUE(equipmentChoices(seen.index, seen.text, key("garnish")).empty());
}

}  // namespace
}  // namespace rangeline::test
