#pragma once
// What a spoon, a cup or one piece of a food weighs: for showing a weight beside an amount, never
// in its place.

#include <optional>
#include <span>
#include <string_view>

#include "model/dish.h"

namespace rangeline {

struct FoodWeight {
    std::string_view names;  ///< what it is called, one a comma; nothing else is meant by the row
    std::string_view cuts;   ///< the cut must have one of these words; empty: whole, or no matter
    std::string_view unit;   ///< a measure of volume, another unit ("clove"), or empty: pieces
    double grams = 0;        ///< what one of it weighs
    std::string_view source;
    std::string_view size{};  ///< of pieces; the ingredient names this size or none
};

std::span<const FoodWeight> foodWeights();

/// From low to high, in grams.
struct KnownWeight {
    double low = 0;
    double high = 0;
    std::string_view source;
};

/// What that amount of the ingredient weighs, where the table knows the very food and cut. Nothing
/// for amounts that are weights already.
std::optional<KnownWeight> weightOf(const Ingredient& ingredient, const Amount& amount);

}  // namespace rangeline
