#pragma once
// What an ingredient of that name usually contains of the allergens that law asks to name. Only a
// suggestion for the cook to accept or not: a label says what is in a food, a name does not.
// The groups are those of allergens.h with their sources; which names belong to them is common
// practice, no source, and English.

#include <string_view>
#include <vector>

namespace rangeline {

/// Keys of the allergen table, each once, in its order; none for names that say nothing.
std::vector<std::string_view> usuallyContains(std::string_view ingredientName);

}  // namespace rangeline
