#pragma once
// The amount that a line of ingredients begins with.

#include <optional>
#include <string>
#include <string_view>

#include "model/dish.h"

namespace rangeline {

/// Words for how large a thing is: "2 large eggs".
inline constexpr std::string_view sizesOfThings = "small medium large extra-large big";

/// What was taken from the beginning of a line.
struct TakenAmount {
    Amount amount;
    std::string note;  ///< what was said of it: "about", "400 g each", the same in other measures
};

/// Takes an amount off a plain line (plainLine): "2", "1 1/2 cups", "2-3 cloves", "1 cup plus 2
/// tbsp", "2 x 400 g cans", "200 g/7 oz". Units of the table of measures get their key there;
/// others ("cloves") stay as written; a size ("8-ounce" of "2 8-ounce steaks", "1-inch" of "1-inch
/// piece") is a note. Empty, and the line as it was, where it begins otherwise.
std::optional<TakenAmount> takeAmount(std::string_view& line);

}  // namespace rangeline
