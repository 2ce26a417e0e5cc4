#include "model/starting_kitchens.h"

#include <array>

namespace rangeline {
namespace {

Burner burner(const char* id, const char* name, int btu, int widest, int left, int front) {
    Burner made;
    made.id = {id};
    made.name = name;
    made.widestVessel = Length::inches(widest);
    made.power = Power{btu, Power::Unit::BtuPerHour};
    made.fromLeft = Length::inches(left);
    made.fromFront = Length::inches(front);
    return made;
}

Oven oven(const char* id, const char* name, int slots) {
    Oven made;
    made.id = {id};
    made.name = name;
    made.slots = slots;
    made.lowest = Temperature::fahrenheit(175);
    made.highest = Temperature::fahrenheit(550);
    made.modes = {OvenMode::Bake, OvenMode::Broil};
    made.warmUp = {{Temperature::fahrenheit(350), Duration::minutes(15)},
                   {Temperature::fahrenheit(400), Duration::minutes(20)},
                   {Temperature::fahrenheit(450), Duration::minutes(25)}};
    return made;
}

Ware ware(const char* id, const char* name, const char* kind, int count, int width, int cleaning) {
    Ware made;
    made.id = {id};
    made.name = name;
    made.kind = kind;
    made.count = count;
    made.width = Length::inches(width);
    made.cleaning = {Duration::minutes(cleaning), PoolId{"sink"}};
    return made;
}

/// With corners: its shorter side.
Ware deep(Ware ware, int depth) {
    ware.depth = Length::inches(depth);
    return ware;
}

Pool pool(const char* id, const char* name, int capacity) {
    return {{id}, name, id, capacity};
}

/// What every kitchen has, so often.
void addUsual(Kitchen& kitchen, int times) {
    kitchen.wares = {ware("wide-pan", "Wide sauté pan", "saute-pan", times, 12, 3),
                     ware("small-pan", "Small sauté pan", "saute-pan", times, 10, 3),
                     ware("saucepan", "Saucepan", "saucepan", 2 * times, 8, 2),
                     ware("pot", "Tall pot", "pot", times, 10, 3),
                     deep(ware("half-sheet", "Half sheet", "sheet", 2 * times, 18, 3), 13),
                     deep(ware("baking-dish", "Baking dish", "baking-dish", times, 13, 4), 9),
                     deep(ware("roasting-pan", "Roasting pan", "roasting-pan", times, 16, 4), 13),
                     ware("bowl", "Mixing bowl", "bowl", 4 * times, 10, 1),
                     deep(ware("board", "Cutting board", "board", 2 * times, 18, 2), 12)};
    kitchen.pools = {pool("sink", "Sink", times), pool("fridge-shelf", "Fridge shelf", 2 * times),
                     pool("counter", "Counter", 2 * times)};
}

Kitchen gasRange() {
    Kitchen kitchen;
    kitchen.name = "Kitchen with a 30-inch gas range";
    kitchen.rangeWidth = Length::inches(30);
    kitchen.burners = {burner("front-left", "Front left burner", 15'000, 12, 8, 7),
                       burner("front-right", "Front right burner", 9'000, 11, 22, 7),
                       burner("back-left", "Back left burner", 9'000, 11, 8, 17),
                       burner("back-right", "Back right burner", 5'000, 10, 22, 17)};
    kitchen.ovens = {oven("oven", "Oven", 2)};
    addUsual(kitchen, 1);
    kitchen.cooks = {{{"cook"}, "Cook", 100, {}}};
    return kitchen;
}

Burner field(const char* id, const char* name, int watts, int widest, int left, int front) {
    Burner made = burner(id, name, 1, widest, left, front);
    made.power = Power{watts, Power::Unit::Watt};
    return made;
}

Kitchen smoothTop() {
    Kitchen kitchen = gasRange();
    kitchen.name = "Kitchen with a 30-inch smooth top";
    kitchen.burners = {field("front-left", "Front left field", 2'500, 11, 8, 7),
                       field("front-right", "Front right field", 1'800, 9, 22, 7),
                       field("back-left", "Back left field", 1'200, 7, 8, 17),
                       field("back-right", "Back right field", 1'800, 9, 22, 17)};
    return kitchen;
}

Kitchen smallFlat() {
    Kitchen kitchen;
    kitchen.name = "Small flat with two burners and a tabletop oven";
    kitchen.rangeWidth = Length::inches(20);
    kitchen.burners = {field("left", "Left burner", 1'500, 9, 5, 6),
                       field("right", "Right burner", 1'000, 7, 15, 6)};
    kitchen.ovens = {oven("oven", "Tabletop oven", 1)};
    kitchen.ovens.front().highest = Temperature::fahrenheit(450);
    kitchen.wares = {ware("pan", "Sauté pan", "saute-pan", 1, 9, 3),
                     ware("saucepan", "Saucepan", "saucepan", 1, 7, 2),
                     ware("pot", "Pot", "pot", 1, 9, 3),
                     deep(ware("quarter-sheet", "Quarter sheet", "sheet", 1, 13, 3), 9),
                     deep(ware("baking-dish", "Baking dish", "baking-dish", 1, 11, 4), 7),
                     ware("bowl", "Mixing bowl", "bowl", 3, 9, 1),
                     deep(ware("board", "Cutting board", "board", 1, 14, 2), 10)};
    kitchen.pools = {pool("sink", "Sink", 1), pool("fridge-shelf", "Fridge shelf", 1),
                     pool("counter", "Counter", 1)};
    kitchen.cooks = {{{"cook"}, "Cook", 100, {}}};
    return kitchen;
}

Kitchen teachingKitchen() {
    Kitchen kitchen = gasRange();
    kitchen.name = "Teaching kitchen with two ranges";
    kitchen.rangeWidth = Length::inches(62);
    const std::vector<Burner> first = kitchen.burners;
    kitchen.burners.clear();
    for (const int range : {1, 2}) {
        const std::string number = std::to_string(range);
        for (Burner each : first) {
            each.id.text += "-" + number;
            each.name += ", range " + number;
            each.fromLeft = Length::nanometres(each.fromLeft.inNanometres() +
                                               (range - 1) * Length::inches(32).inNanometres());
            kitchen.burners.push_back(std::move(each));
        }
    }
    kitchen.ovens = {oven("oven-1", "Oven of range 1", 2), oven("oven-2", "Oven of range 2", 2)};
    addUsual(kitchen, 2);
    kitchen.cooks = {{{"teacher"}, "Teacher", 100, {"teacher"}},
                     {{"student-1"}, "First student", 150, {}},
                     {{"student-2"}, "Second student", 150, {}}};
    return kitchen;
}

constexpr std::array kitchens{
    StartingKitchen{"gas-range", gasRange}, StartingKitchen{"smooth-top", smoothTop},
    StartingKitchen{"small-flat", smallFlat}, StartingKitchen{"teaching", teachingKitchen}};

}  // namespace

std::span<const StartingKitchen> startingKitchens() {
    return kitchens;
}

}  // namespace rangeline
