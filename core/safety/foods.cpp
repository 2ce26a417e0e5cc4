#include "safety/foods.h"

#include <algorithm>

namespace rangeline {

namespace {

using std::string_view;

constexpr string_view animal = "food-code-tcs";

constexpr CoreLimit usda(int fahrenheit, Duration rest = Duration()) {
    return {Temperature::fahrenheit(fahrenheit), rest, "usda-temperatures"};
}
constexpr CoreLimit code(int fahrenheit, Duration held, string_view source) {
    return {Temperature::fahrenheit(fahrenheit), held, source};
}

constexpr auto none = std::nullopt;
constexpr Duration atOnce;
constexpr Duration rest3 = Duration::minutes(3);
constexpr CoreLimit intact = code(145, Duration::seconds(15), "food-code-cook-1");
constexpr CoreLimit mixed = code(155, Duration::seconds(17), "food-code-cook-2");
constexpr CoreLimit fowl = code(165, atOnce, "food-code-cook-3");
constexpr CoreLimit roasts = code(145, Duration::minutes(4), "food-code-roasts");
constexpr CoreLimit reheated = code(165, Duration::seconds(15), "food-code-reheating");
constexpr CoreLimit hotPlants{Temperature::fahrenheit(135), atOnce, "food-code-plants", true};

}  // namespace

std::span<const Food> foods() {
    static constexpr Food rows[] = {
        {"poultry", true, animal, usda(165), fowl, ""},
        {"stuffed", true, animal, usda(165), fowl, ""},
        {"ground-poultry", true, animal, usda(165), fowl, ""},
        {"ground-meat", true, animal, usda(160), mixed, ""},
        {"whole-meat", true, animal, usda(145, rest3), intact, ""},
        {"roast", true, animal, usda(145, rest3), roasts, ""},
        {"bacon", true, animal, none, none, ""},
        {"fish", true, animal, usda(145), intact, ""},
        {"shellfish", true, animal, none, intact, ""},
        {"eggs", true, animal, none, intact, ""},
        {"egg-dish", true, animal, usda(160), mixed, ""},
        {"leftovers", true, animal, usda(165), reheated, ""},
        {"dairy", true, animal, none, none, ""},
        {"cooked-plant", true, "food-code-tcs", none, hotPlants, ""},
        {"cut-tomatoes", true, "food-code-tcs", none, none, ""},
        {"cut-melon", true, "food-code-tcs", none, none, ""},
        {"cut-leafy-greens", true, "food-code-tcs", none, none, ""},
        {"raw-sprouts", true, "food-code-tcs", none, none, ""},
        {"garlic-in-oil", true, "food-code-tcs", none, none, "garlic-in-oil"},
        {"raw-produce", false, "", none, none, ""},
        {"bread", false, "", none, none, ""},
        {"nuts", false, "", none, none, ""},
        {"dry", false, "", none, none, ""},
    };
    return rows;
}

const Food* findFood(string_view key) {
    const auto all = foods();
    const auto it = std::ranges::find(all, key, &Food::key);
    return it == all.end() ? nullptr : &*it;
}

}  // namespace rangeline
