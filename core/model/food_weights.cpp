#include "model/food_weights.h"

#include <algorithm>
#include <array>
#include <string>

#include "model/measures.h"

namespace rangeline {
namespace {

constexpr std::string_view usda = "USDA National Nutrient Database, SR26";
constexpr std::string_view gnuUnits = "GNU Units 2.22, densities of cooking ingredients";
constexpr double ounce = 28.349523125;

/// Words that say nothing about the weight.
constexpr std::string_view idleWords =
    "fresh,yellow,white,red,unsalted,salted,whole,firm,ripe,cold,fine,table,sweet,granulated,"
    "all-purpose,plain,peeled,extra-virgin";
constexpr std::string_view sizeWords = "small,medium,large,extra-large,big,jumbo";

std::string_view trimmedPart(std::string_view text) {
    const std::size_t begin = std::min(text.find_first_not_of(' '), text.size());
    const std::size_t end = text.find_last_not_of(' ');
    return end == std::string_view::npos ? std::string_view() : text.substr(begin, end - begin + 1);
}

/// The parts between separators; stops where `f` returns true and then does so.
template <class F>
bool anyPart(std::string_view text, std::string_view separators, F f) {
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(separators), text.size());
        if (f(trimmedPart(text.substr(0, end)))) {
            return true;
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return false;
}

std::string small(std::string_view text) {
    std::string made(text);
    std::ranges::transform(made, made.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
    });
    return made;
}

/// "Fresh yellow onions" as "onions".
std::string bareName(std::string_view name) {
    std::string bare;
    const std::string all = small(name);
    anyPart(all, " ", [&](std::string_view word) {
        const auto same = [&](std::string_view each) { return each == word; };
        if (!word.empty() && !anyPart(idleWords, ",", same) && !anyPart(sizeWords, ",", same)) {
            bare += (bare.empty() ? "" : " ") + std::string(word);
        }
        return false;
    });
    return bare;
}

bool hasWordOf(std::string_view text, std::string_view wanted) {
    const std::string all = small(text);
    return anyPart(all, " ,;", [&](std::string_view word) {
        return !word.empty() &&
               anyPart(wanted, ",", [&](std::string_view each) { return each == word; });
    });
}

bool isMeant(const FoodWeight& row, const Ingredient& ingredient, const std::string& name) {
    const bool named = anyPart(row.names, ",", [&](std::string_view each) { return each == name; });
    if (!named || !(row.cuts.empty() || hasWordOf(ingredient.cut, row.cuts))) {
        return false;
    }
    const std::string said = ingredient.name + ' ' + ingredient.note;
    return row.size.empty() || !hasWordOf(said, sizeWords) || hasWordOf(said, row.size);
}

/// Grams of one of that unit by the row; nothing where the two do not go together.
std::optional<double> gramsOfOne(const FoodWeight& row, std::string_view unit) {
    const Measure* of = findMeasure(row.unit);
    const Measure* wanted = findMeasure(unit);
    if (of == nullptr || wanted == nullptr) {
        const bool same =
            anyPart(row.unit, ",", [&](std::string_view each) { return each == unit; });
        return same || (row.unit.empty() && unit.empty()) ? std::optional(row.grams) : std::nullopt;
    }
    const bool us = wanted->family == MeasureFamily::UsVolume;
    if (!us && wanted->family != MeasureFamily::MetricVolume) {
        return std::nullopt;
    }
    // Every row of a volume is in US measures, whose smallest is the teaspoon.
    constexpr double millilitresInTeaspoon = 4.92892159375;  // 231 in³ / 768, NIST Handbook 44
    const double teaspoons = wanted->size.toDouble() / (us ? 1 : millilitresInTeaspoon);
    return row.grams * teaspoons / of->size.toDouble();
}

}  // namespace

std::span<const FoodWeight> foodWeights() {
    static constexpr std::array rows{
        FoodWeight{"onion,onions", "chopped,diced,dice", "cup", 160, usda},
        FoodWeight{"onion,onions", "sliced,slices", "cup", 115, usda},
        FoodWeight{"onion,onions", "", "", 110, usda, "medium"},
        FoodWeight{"apple,apples", "chopped,diced,dice", "cup", 125, usda},
        FoodWeight{"apple,apples", "", "", 182, usda, "medium"},
        FoodWeight{"celery", "chopped,diced,dice", "cup", 101, usda},
        FoodWeight{"celery", "", "stalk,stalks", 40, usda},
        FoodWeight{"celery stalk,celery stalks", "", "", 40, usda},
        FoodWeight{"carrot,carrots", "chopped,diced,dice", "cup", 128, usda},
        FoodWeight{"carrot,carrots", "", "", 61, usda, "medium"},
        FoodWeight{"shallot,shallots", "chopped,diced,dice,minced", "tbsp", 10, usda},
        FoodWeight{"garlic", "", "clove,cloves", 3, usda},
        FoodWeight{"garlic clove,garlic cloves", "", "", 3, usda},
        FoodWeight{"tomato,tomatoes", "", "", 123, usda, "medium"},
        FoodWeight{"plum tomato,plum tomatoes", "", "", 62, usda, "medium"},
        FoodWeight{"bell pepper,bell peppers", "", "", 119, usda, "medium"},
        FoodWeight{"egg,eggs", "", "", 50, usda, "large"},
        FoodWeight{"olive oil", "", "tbsp", 13.5, usda},
        FoodWeight{"butter", "", "tbsp", 14.2, usda},
        FoodWeight{"salt", "", "tsp", 6, usda},
        FoodWeight{"flour", "", "cup", 4.25 * ounce, gnuUnits},
        FoodWeight{"bread flour", "", "cup", 4.5 * ounce, gnuUnits},
        FoodWeight{"cornstarch", "", "cup", 120, gnuUnits},
        FoodWeight{"sugar", "", "cup", 200, gnuUnits},
        FoodWeight{"powdered sugar", "", "cup", 4 * ounce, gnuUnits},
        FoodWeight{"light brown sugar", "", "cup", 217, gnuUnits},
        FoodWeight{"dark brown sugar", "", "cup", 239, gnuUnits},
        FoodWeight{"honey", "", "cup", 11.75 * ounce, gnuUnits},
        FoodWeight{"molasses", "", "cup", 11.25 * ounce, gnuUnits},
        FoodWeight{"milk", "", "cup", 242, gnuUnits},
        FoodWeight{"heavy cream", "", "cup", 232, gnuUnits},
        FoodWeight{"sour cream", "", "cup", 242, gnuUnits},
        FoodWeight{"baking powder", "", "tsp", 4.6, gnuUnits},
    };
    return rows;
}

std::optional<KnownWeight> weightOf(const Ingredient& ingredient, const Amount& amount) {
    const std::string name = bareName(ingredient.name);
    for (const FoodWeight& row : foodWeights()) {
        if (!isMeant(row, ingredient, name)) {
            continue;
        }
        if (const auto one = gramsOfOne(row, amount.unit)) {
            return KnownWeight{amount.low.toDouble() * *one, amount.high.toDouble() * *one,
                               row.source};
        }
    }
    return std::nullopt;
}

}  // namespace rangeline
