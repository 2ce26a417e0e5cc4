#include "safety/allergens.h"

#include <algorithm>

namespace rangeline {

std::span<const Allergen> allergens() {
    static constexpr Allergen rows[] = {
        {"milk", true, true, ""},         {"eggs", true, true, ""},
        {"fish", true, true, ""},         {"crustaceans", true, true, ""},
        {"tree-nuts", true, true, ""},    {"peanuts", true, true, ""},
        {"wheat", true, false, "gluten"}, {"soybeans", true, true, ""},
        {"sesame", true, true, ""},       {"gluten", false, true, ""},
        {"celery", false, true, ""},      {"mustard", false, true, ""},
        {"sulphites", false, true, ""},   {"lupin", false, true, ""},
        {"molluscs", false, true, ""},
    };
    return rows;
}

const Allergen* findAllergen(std::string_view key) {
    const auto all = allergens();
    const auto it = std::ranges::find(all, key, &Allergen::key);
    return it == all.end() ? nullptr : &*it;
}

bool allergenCovers(std::string_view avoided, std::string_view contained) {
    if (avoided == contained) {
        return true;
    }
    const auto isPartOf = [](std::string_view part, std::string_view whole) {
        const Allergen* row = findAllergen(part);
        return row != nullptr && !row->partOf.empty() && row->partOf == whole;
    };
    return isPartOf(contained, avoided) || isPartOf(avoided, contained);
}

}  // namespace rangeline
