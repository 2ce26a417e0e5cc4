#include "model/validate.h"

#include <gtest/gtest.h>

#include <functional>

#include "model/expand.h"
#include "support/random_lesson.h"
#include "support/rich_lesson.h"

namespace rangeline {
namespace {

/// One change that makes the rich lesson unusable, and the fault it must give.
struct Spoiled {
    std::function<void(Lesson&)> spoil;
    Fault fault;
};

void expectFaults(std::initializer_list<Spoiled> rows) {
    for (const Spoiled& row : rows) {
        Lesson lesson = test::richLesson();
        row.spoil(lesson);
        const std::vector<Fault> faults = validate(lesson);
        ASSERT_FALSE(faults.empty()) << row.fault.place;
        EXPECT_EQ(faults.front().place, row.fault.place);
        EXPECT_EQ(faults.front().code, row.fault.code) << row.fault.place;
        EXPECT_EQ(faults.front().figures, row.fault.figures) << row.fault.place;
    }
}

Dish& dishOf(Lesson& lesson) {
    return lesson.servings[0].dish;
}
Step& stepOf(Lesson& lesson, std::size_t index) {
    return dishOf(lesson).components[0].steps[index];
}
std::string stepPlace(std::size_t index) {
    return "servings[0].dish.components[0].steps[" + std::to_string(index) + "]";
}

TEST(Validate, SoundLessonsHaveNoFaults) {
    EXPECT_EQ(validate(test::richLesson()), std::vector<Fault>());
    const std::uint64_t seed = test::seedOr(1);
    for (std::uint64_t i = 0; i < 200; ++i) {
        Random random(seed + i);
        test::RandomLessonSize size;
        size.groups = static_cast<int>(random.between(1, 3));
        size.choices = 0.5;
        const Lesson lesson = test::randomLesson(random, size);
        EXPECT_EQ(validate(lesson), std::vector<Fault>()) << "RANGELINE_SEED=" << seed + i;
        EXPECT_FALSE(expand(lesson).tasks.empty()) << "RANGELINE_SEED=" << seed + i;
    }
}

TEST(Validate, AKitchenMayBeEmpty) {
    Lesson lesson = test::richLesson();
    lesson.servings.clear();
    lesson.choices = {};
    lesson.head.groups = {};
    lesson.head.crew = {CookId{"teacher"}};
    lesson.kitchen.burners.clear();
    lesson.kitchen.ovens.clear();
    lesson.kitchen.wares.clear();
    lesson.kitchen.pools.clear();
    EXPECT_EQ(validate(lesson), std::vector<Fault>());
}

TEST(Validate, TheHeadIsChecked) {
    using enum FaultCode;
    expectFaults({
        {[](Lesson& l) { l.head.name = "a\nb"; },
         {BadText, "lesson.name", {"bad-character", "a?b"}}},
        {[](Lesson& l) { l.head.name = "gla\u202Ezed"; },
         {BadText, "lesson.name", {"bad-character", "gla?zed"}}},
        {[](Lesson& l) { l.head.servingTime = "2027-02-29T18:30"; },
         {BadText, "lesson.servingTime", {"not-a-date-and-time", "2027-02-29T18:30"}}},
        {[](Lesson& l) { l.head.servingTime = "2027-02-28 18:30"; },
         {BadText, "lesson.servingTime", {"not-a-date-and-time", "2027-02-28 18:30"}}},
        {[](Lesson& l) { l.head.zone = ""; }, {BadText, "lesson.zone", {"not-a-time-zone", ""}}},
        {[](Lesson& l) { l.head.grain = Duration(); },
         {OutOfRange, "lesson.grain", {"0 min", "1 s", "24 h"}}},
        {[](Lesson& l) { l.head.grain = Duration::minutes(7); },
         {BadNumber, "lesson.grain", {"7 min", "a part of a day"}}},
        {[](Lesson& l) { l.head.tasting = Instant::atMinutes(20'000); },
         {OutOfRange, "lesson.tasting", {"333 h 20 min", "-168 h", "168 h"}}},
        {[](Lesson& l) { l.head.everyoneOut = l.head.kitchenOpens; },
         {Contradiction, "lesson.everyoneOut", {"everyoneOut", "kitchenOpens"}}},
        {[](Lesson& l) { l.head.crew.clear(); }, {OutOfRange, "lesson.crew", {"0", "1", "2"}}},
        {[](Lesson& l) { l.head.crew[1] = CookId{"nobody"}; },
         {UnknownReference, "lesson.crew[1]", {"nobody", "cook"}}},
        {[](Lesson& l) { l.head.crew[1] = l.head.crew[0]; },
         {DuplicateId, "lesson.crew[1]", {"teacher"}}},
        {[](Lesson& l) { l.head.groups.count = 0; },
         {OutOfRange, "lesson.groups.count", {"0", "1", "50"}}},
        {[](Lesson& l) { l.head.groups.shared[0] = "kiln"; },
         {UnknownReference, "lesson.groups.shared[0]", {"kiln", "thing or cook of the kitchen"}}},
        {[](Lesson& l) { l.head.groups.stagger = Duration::minutes(-1); },
         {OutOfRange, "lesson.groups.stagger", {"-1 min", "0 min", "168 h"}}},
    });
}

TEST(Validate, TheKitchenIsChecked) {
    using enum FaultCode;
    expectFaults({
        {[](Lesson& l) { l.kitchen.burners[1].id = l.kitchen.burners[0].id; },
         {DuplicateId, "kitchen.burners[1].id", {"front-left"}}},
        {[](Lesson& l) { l.kitchen.cooks[1].id.text = "oven"; },
         {UnknownReference, "lesson.crew[1]", {"helper", "cook"}}},
        {[](Lesson& l) { l.kitchen.pools[1].id.text = "oven"; },
         {DuplicateId, "kitchen.pools[1].id", {"oven"}}},
        {[](Lesson& l) { l.kitchen.burners[0].id.text = "front left"; },
         {BadText, "kitchen.burners[0].id", {"not-an-id", "front left"}}},
        {[](Lesson& l) { l.kitchen.burners[0].power->amount = 0; },
         {OutOfRange, "kitchen.burners[0].power", {"0", "1", "1000000"}}},
        {[](Lesson& l) { l.kitchen.ovens[0].slots = 0; },
         {OutOfRange, "kitchen.ovens[0].slots", {"0", "1", "50"}}},
        {[](Lesson& l) { l.kitchen.ovens[0].highest = Temperature::celsius(2000); },
         {OutOfRange, "kitchen.ovens[0].highest", {"2000 °C", "-60 °C", "1000 °C"}}},
        {[](Lesson& l) { l.kitchen.ovens[0].highest = Temperature::celsius(20); },
         {Contradiction, "kitchen.ovens[0].highest", {"highest", "lowest"}}},
        {[](Lesson& l) { l.kitchen.ovens[0].dialStep = {}; },
         {OutOfRange, "kitchen.ovens[0].dialStep", {"0 °C", "1 °F", "1000 °C"}}},
        {[](Lesson& l) { l.kitchen.ovens[0].modes.clear(); },
         {OutOfRange, "kitchen.ovens[0].modes", {"0", "1", "3"}}},
        {[](Lesson& l) { l.kitchen.ovens[0].warmUp.clear(); },
         {OutOfRange, "kitchen.ovens[0].warmUp", {"0", "1", "1000"}}},
        {[](Lesson& l) { l.kitchen.ovens[0].warmUp[1].to = l.kitchen.ovens[0].warmUp[0].to; },
         {Contradiction, "kitchen.ovens[0].warmUp[1].to", {"to", "to"}}},
        {[](Lesson& l) { l.kitchen.ovens[0].coolsPerMinute = TemperatureDelta::ofUnits(-90); },
         {OutOfRange, "kitchen.ovens[0].coolsPerMinute", {"-1 °C", "1 °F", "1000 °C"}}},
        {[](Lesson& l) { l.kitchen.wares[0].count = 0; },
         {OutOfRange, "kitchen.wares[0].count", {"0", "1", "1000"}}},
        {[](Lesson& l) { l.kitchen.wares[0].width = Length::millimetres(-1); },
         {OutOfRange, "kitchen.wares[0].width", {"-1 mm", "0 cm", "1000 cm"}}},
        {[](Lesson& l) { l.kitchen.wares[0].cleaning.sink = PoolId{"pond"}; },
         {UnknownReference, "kitchen.wares[0].cleaning.sink", {"pond", "pool"}}},
        {[](Lesson& l) { l.kitchen.pools[0].kind = "board"; },
         {BadChoice,
          "kitchen.pools[0].kind",
          {"board", "counter, sink, fridge-shelf, freezer, socket"}}},
        {[](Lesson& l) { l.kitchen.cooks[1].pacePercent = 5; },
         {OutOfRange, "kitchen.cooks[1].pace", {"5 %", "10 %", "1000 %"}}},
        {[](Lesson& l) { l.kitchen.watchLimit = -1; },
         {OutOfRange, "kitchen.watchLimit", {"-1", "0", "100"}}},
        {[](Lesson& l) { l.kitchen.room = Temperature::celsius(61); },
         {OutOfRange, "kitchen.room", {"61 °C", "-10 °C", "60 °C"}}},
    });
}

TEST(Validate, DishesAreChecked) {
    using enum FaultCode;
    expectFaults({
        {[](Lesson& l) { l.servings[0].covers = 0; },
         {OutOfRange, "servings[0].covers", {"0", "1", "1000"}}},
        {[](Lesson& l) { l.servings.push_back(l.servings[0]); },
         {DuplicateId, "servings[1].dish.id", {"thighs"}}},
        {[](Lesson& l) { dishOf(l).writtenFor = 0; },
         {OutOfRange, "servings[0].dish.writtenFor", {"0", "1", "1000"}}},
        {[](Lesson& l) {
             dishOf(l).components.push_back({ComponentId{"meat"}, "", {}, {}});
         },
         {DuplicateId, "servings[0].dish.components[1].id", {"meat"}}},
        {[](Lesson& l) { dishOf(l).components[0].ingredients[0].amount->high = Rational(2); },
         {Contradiction,
          "servings[0].dish.components[0].ingredients[0].amount",
          {"amount", "amount"}}},
        {[](Lesson& l) { dishOf(l).components[0].ingredients[1].amount->unit = "2nd"; },
         {BadText, "servings[0].dish.components[0].ingredients[1].amount", {"not-a-unit", "2nd"}}},
        {[](Lesson& l) { dishOf(l).links[0].most = Duration::minutes(-3); },
         {LinkOrder, "servings[0].dish.links[0]", {"-2 min", "-3 min"}}},
        {[](Lesson& l) { dishOf(l).links[1].to.step = StepId{"nowhere"}; },
         {UnknownReference, "servings[0].dish.links[1].to", {"nowhere", "step"}}},
    });
}

TEST(Validate, SimplerFormsAreChecked) {
    using enum FaultCode;
    const auto without = [](std::vector<StepId> steps) {
        return [steps](Lesson& l) { dishOf(l).components[0].simpler->without = steps; };
    };
    const std::string place = "servings[0].dish.components[0].simpler.without";
    expectFaults({
        {[](Lesson& l) { dishOf(l).components[0].simpler->how = ""; },
         {MissingKey, "servings[0].dish.components[0].simpler.how", {"how"}}},
        {without({}), {OutOfRange, place, {"0", "1", "2000"}}},
        {without({StepId{"nowhere"}}), {UnknownReference, place + "[0]", {"nowhere", "step"}}},
        {without({StepId{"sear"}}), {Contradiction, place + "[0]", {"without", "target"}}},
        {without({StepId{"plate"}}), {Contradiction, place + "[0]", {"without", "plates"}}},
        {without({StepId{"wash-up"}}), {Contradiction, place + "[0]", {"without", "afterServing"}}},
        {without({StepId{"roast"}, StepId{"roast"}}), {DuplicateId, place + "[1]", {"roast"}}},
    });
}

TEST(Validate, ChoicesAreChecked) {
    using enum FaultCode;
    expectFaults({
        {[](Lesson& l) { l.choices.doneAhead[0].step = StepId{"gone"}; },
         {UnknownReference, "choices.doneAhead[0].step", {"gone", "step"}}},
        {[](Lesson& l) { stepOf(l, 0).after.mayBeDoneAhead = false; },
         {Contradiction, "choices.doneAhead[0].step", {"doneAhead", "mayBeDoneAhead"}}},
        {[](Lesson& l) { l.choices.doneAhead.push_back(l.choices.doneAhead[0]); },
         {DuplicateId, "choices.doneAhead[1].step", {"sear"}}},
        {[](Lesson& l) { l.choices.doneAhead[0].before = Duration::minutes(-1); },
         {OutOfRange, "choices.doneAhead[0].before", {"-1 min", "0 min", "168 h"}}},
        {[](Lesson& l) { l.choices.doneAhead[0].storage = Storage::HotInOven; },
         {BadChoice, "choices.doneAhead[0].storage", {"hot", "room, cold"}}},
        {[](Lesson& l) { l.choices.doneAhead[0].wares[0].number = 2; },
         {OutOfRange, "choices.doneAhead[0].wares[0]", {"3", "1", "2"}}},
        {[](Lesson& l) { l.choices.swapIns[0].wares[0].ware = WareId{"urn"}; },
         {UnknownReference, "choices.swapIns[0].wares[0]", {"urn", "ware"}}},
        {[](Lesson& l) { l.choices.swapIns[0].step = StepId{"sear"}; },
         {DuplicateId, "choices.swapIns[0].step", {"sear"}}},
        {[](Lesson& l) { l.choices.batches[0].batches = 0; },
         {OutOfRange, "choices.batches[0].batches", {"0", "1", "1000"}}},
    });
}

TEST(Validate, PlacementsMayNameWhatIsGoneButHoldNoNonsense) {
    Lesson lesson = test::richLesson();
    lesson.placements.clear();
    Placement& placement = lesson.placements[StepKey{StepId{"gone"}, 7, 3}];
    placement.burners = {BurnerId{"gone-too"}};
    EXPECT_EQ(validate(lesson), std::vector<Fault>());
    placement.oven = OvenSpot{OvenId{"oven"}, -1, Temperature::celsius(5000), OvenMode::Bake};
    placement.start = Instant::atMinutes(-20'000);
    placement.lasts = Duration::seconds(-1);
    using enum FaultCode;
    EXPECT_EQ(validate(lesson),
              (std::vector<Fault>{
                  {OutOfRange, "placements[0].start", {"-333 h 20 min", "-168 h", "168 h"}},
                  {OutOfRange, "placements[0].oven.slot", {"0", "1", "10000"}},
                  {OutOfRange, "placements[0].oven.setTo", {"5000 °C", "-60 °C", "1000 °C"}},
                  {OutOfRange, "placements[0].lasts", {"-1 s", "0 min", "168 h"}},
              }));
}

TEST(Validate, GivesNoMoreFaultsThanAsked) {
    Lesson lesson = test::richLesson();
    for (Step& step : dishOf(lesson).components[0].steps) {
        step.cooks = 0;
    }
    EXPECT_EQ(validate(lesson, 1).size(), 1U);
    EXPECT_EQ(validate(lesson, 1).front().place, stepPlace(0) + ".cooks");
    EXPECT_EQ(validate(lesson).size(), 4U);
}

TEST(Validate, MoreThanCanBeHandledIsRefused) {
    Lesson many = test::richLesson();
    Step extra;
    for (int i = 0; i < 2000; ++i) {
        extra.id.text = "extra-" + std::to_string(i);
        dishOf(many).components[0].steps.push_back(extra);
    }
    EXPECT_EQ(validate(many, 1).front(), (Fault{FaultCode::TooMany, "servings", {"2004", "2000"}}));

    Lesson batches = test::richLesson();
    batches.head.groups.count = 50;
    batches.choices.batches[0].batches = 1000;
    EXPECT_EQ(validate(batches, 1).front().code, FaultCode::TooMany);
    EXPECT_EQ(validate(batches, 1).front().place, "servings");

    Lesson kitchen = test::richLesson();
    kitchen.head.groups.count = 50;
    for (int i = 0; i < 3; ++i) {
        Ware& ware = kitchen.kitchen.wares.emplace_back(kitchen.kitchen.wares.front());
        ware.id.text += std::to_string(i);
        ware.count = 1000;
    }
    EXPECT_EQ(validate(kitchen, 1).front().code, FaultCode::TooMany);
    EXPECT_EQ(validate(kitchen, 1).front().place, "kitchen");

    Lesson pieces = test::richLesson();
    stepOf(pieces, 0).piecesPerCover = Rational(1000);
    EXPECT_EQ(validate(pieces, 1).front().place, stepPlace(0) + ".time");
}

}  // namespace
}  // namespace rangeline
