#include "support/lesson_builder.h"

#include <algorithm>
#include <cassert>

namespace rangeline::test {

WareNeed fresh(const std::string& kind) {
    WareNeed need;
    need.kind = kind;
    return need;
}

WareNeed carryOn(const std::string& kind, const std::string& step) {
    WareNeed need = fresh(kind);
    need.carriesOn = StepId{step};
    return need;
}

BurnerHeat onBurner() {
    BurnerHeat heat;
    heat.level = "medium";
    return heat;
}

OvenHeat inOven(Temperature lowest, Temperature highest) {
    OvenHeat heat;
    heat.lowest = lowest;
    heat.highest = highest;
    return heat;
}

OvenSpot spot(const std::string& oven, Temperature setTo, int firstSlot) {
    return {OvenId{oven}, firstSlot, setTo, OvenMode::Bake};
}

StepKey key(const std::string& step, int batch, int group) {
    return {StepId{step}, batch, group};
}
WashKey washAfter(const std::string& step, int spot) {
    return {key(step), spot};
}
TurnOnKey turningOn(const std::string& oven, int group) {
    return {OvenId{oven}, group};
}

LessonBuilder::LessonBuilder() {
    lesson.head.name = "A test";
    lesson.head.servingTime = "2027-10-09T18:30";
    lesson.head.zone = "UTC";
    lesson.kitchen.name = "Test kitchen";
    Serving serving;
    serving.dish.id = DishId{"dish"};
    serving.dish.name = "Dish";
    serving.dish.components.push_back({ComponentId{"component"}, "Component", {}, {}});
    lesson.servings.push_back(serving);
    cook("ann");
}

Burner& LessonBuilder::burner(const std::string& id) {
    Burner burner;
    burner.id = BurnerId{id};
    burner.name = id;
    burner.widestVessel = Length::millimetres(320);
    return lesson.kitchen.burners.emplace_back(burner);
}

Oven& LessonBuilder::oven(const std::string& id) {
    Oven oven;
    oven.id = OvenId{id};
    oven.name = id;
    oven.slots = 2;
    oven.lowest = 175_F;
    oven.highest = 550_F;
    oven.modes = {OvenMode::Bake, OvenMode::Convection};
    oven.warmUp = {{350_F, 10_min}};
    return lesson.kitchen.ovens.emplace_back(oven);
}

Ware& LessonBuilder::ware(const std::string& id, const std::string& kind, int count) {
    Ware ware;
    ware.id = WareId{id};
    ware.name = id;
    ware.kind = kind;
    ware.count = count;
    ware.width = Length::millimetres(280);
    return lesson.kitchen.wares.emplace_back(ware);
}

Pool& LessonBuilder::pool(const std::string& id, const std::string& kind, int capacity) {
    return lesson.kitchen.pools.emplace_back(Pool{PoolId{id}, id, kind, capacity});
}

Cook& LessonBuilder::cook(const std::string& id, int pacePercent) {
    lesson.head.crew.push_back(CookId{id});
    return lesson.kitchen.cooks.emplace_back(Cook{CookId{id}, id, pacePercent, {}});
}

Step& LessonBuilder::step(const std::string& id, const std::vector<Segment>& segments) {
    Step step;
    step.id = StepId{id};
    step.name = id;
    step.segments = segments;
    Duration sum;
    for (const Segment& segment : segments) {
        sum += segment.length;
    }
    step.time = {sum, sum, sum};
    return lesson.servings.front().dish.components.front().steps.emplace_back(step);
}

Step& LessonBuilder::get(const std::string& id) {
    auto& steps = lesson.servings.front().dish.components.front().steps;
    const auto found = std::ranges::find(steps, StepId{id}, &Step::id);
    assert(found != steps.end());
    return *found;
}

void LessonBuilder::uses(const std::string& user, const std::string& made) {
    get(user).uses.push_back({StepId{made}, false});
}

Link& LessonBuilder::link(const std::string& from, const std::string& to, Duration least) {
    Link link;
    link.from.step = StepId{from};
    link.to.step = StepId{to};
    link.least = least;
    return lesson.servings.front().dish.links.emplace_back(link);
}

Placement& LessonBuilder::place(const PlacementKey& key, Instant start) {
    Placement placement;
    placement.start = start;
    return lesson.placements.insert_or_assign(key, placement).first->second;
}

Placement& LessonBuilder::place(const std::string& step, std::int64_t minute) {
    return place(key(step), Instant::atMinutes(minute));
}

Placement& LessonBuilder::placeWash(const std::string& step, std::int64_t minute,
                                    const std::string& cook) {
    Placement& wash = place(washAfter(step), Instant::atMinutes(minute));
    assign(wash, cook);
    return wash;
}

Placement& LessonBuilder::placeTurnOn(const std::string& oven, Instant start, Temperature setTo,
                                      const std::string& cook) {
    Placement& turnOn = place(turningOn(oven), start);
    turnOn.oven = spot(oven, setTo);
    assign(turnOn, cook);
    return turnOn;
}

void assign(Placement& placement, const std::string& cook, int watches) {
    placement.hands = {{CookId{cook}, 0}};
    placement.watchers.assign(static_cast<std::size_t>(watches), CookId{cook});
}

LessonBuilder roastDinner() {
    LessonBuilder builder;
    builder.step("roast", {away(40_min)}).name = "Roast the roots";
    builder.step("carve", {hands(10_min)}).name = "Slice the roots";
    builder.step("salad", {hands(10_min)}).name = "Dress the salad";
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    builder.uses("carve", "roast");
    builder.uses("plate", "carve");
    builder.uses("plate", "salad");
    builder.place("roast", -70);
    assign(builder.place("carve", -30), "ann");
    assign(builder.place("salad", -20), "ann");
    assign(builder.place("plate", -5), "ann");
    return builder;
}

}  // namespace rangeline::test
