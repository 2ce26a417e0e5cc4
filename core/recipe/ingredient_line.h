#pragma once
// Lines of ingredients as people write them: "2 medium carrots, peeled, in 1/4-inch dice (about 8
// oz)".

#include <string>
#include <string_view>
#include <vector>

#include "model/dish.h"

namespace rangeline {

struct IngredientLine {
    Ingredient ingredient;
    /// Pieces of the line that were not understood, as they were written; they stand in the
    /// ingredient's name or note as well, so that nothing is lost.
    std::vector<std::string> unread;
};

/// Reads one line of UTF-8, in US or metric measures. The amount, unit, thing, cut and note go into
/// the ingredient; size words ("large") and what is said beside go into the note. Nothing is worked
/// out or guessed: allergens, kind and usable part stay empty.
IngredientLine readIngredientLine(std::string_view line);

}  // namespace rangeline
