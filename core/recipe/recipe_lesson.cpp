#include "recipe/recipe_lesson.h"

#include "model/dish_copy.h"

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

Oven oven() {
    Oven made;
    made.id = {"oven"};
    made.name = "Oven";
    made.slots = 2;
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

Pool pool(const char* id, const char* name, int capacity) {
    return {{id}, name, id, capacity};
}

}  // namespace

Kitchen homeKitchen() {
    Kitchen kitchen;
    kitchen.name = "Home kitchen";
    kitchen.rangeWidth = Length::inches(30);
    kitchen.burners = {burner("front-left", "Front left burner", 15'000, 12, 8, 7),
                       burner("front-right", "Front right burner", 9'000, 11, 22, 7),
                       burner("back-left", "Back left burner", 9'000, 11, 8, 17),
                       burner("back-right", "Back right burner", 5'000, 10, 22, 17)};
    kitchen.ovens = {oven()};
    kitchen.wares = {ware("wide-pan", "Wide sauté pan", "saute-pan", 1, 12, 3),
                     ware("small-pan", "Small sauté pan", "saute-pan", 1, 10, 3),
                     ware("saucepan", "Saucepan", "saucepan", 2, 8, 2),
                     ware("pot", "Tall pot", "pot", 1, 10, 3),
                     ware("half-sheet", "Half sheet", "sheet", 2, 18, 3),
                     ware("baking-dish", "Baking dish", "baking-dish", 1, 13, 4),
                     ware("roasting-pan", "Roasting pan", "roasting-pan", 1, 16, 4),
                     ware("bowl", "Mixing bowl", "bowl", 4, 10, 1),
                     ware("board", "Cutting board", "board", 2, 18, 2)};
    kitchen.pools = {pool("sink", "Sink", 1), pool("fridge-shelf", "Fridge shelf", 2)};
    kitchen.cooks = {{{"cook"}, "Cook", 100, {}}};
    return kitchen;
}

Lesson lessonOf(std::span<const Dish> dishes, Kitchen kitchen, std::string servingTime,
                std::string zone, Units units) {
    Lesson lesson;
    lesson.head.name = dishes.front().name;
    lesson.head.servingTime = std::move(servingTime);
    lesson.head.zone = std::move(zone);
    lesson.head.units = units;
    for (const Cook& cook : kitchen.cooks) {
        lesson.head.crew.push_back(cook.id);
    }
    lesson.kitchen = std::move(kitchen);
    for (const Dish& dish : dishes) {
        Serving serving;
        serving.dish = besideOthers(dish, lesson.servings);
        serving.covers = dish.writtenFor;
        lesson.servings.push_back(std::move(serving));
    }
    return lesson;
}

}  // namespace rangeline
