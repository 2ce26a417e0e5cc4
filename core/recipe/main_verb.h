#pragma once
// What a sentence of instructions is about.

#include <string>
#include <string_view>
#include <vector>

#include "recipe/cooking_verbs.h"

namespace rangeline {

/// The sentence's words in small letters and without marks, as the rest of this header takes them.
std::vector<std::string> bareWords(std::string_view sentence);

bool hasWord(const std::vector<std::string>& words, std::string_view word);

/// Whether an oven is spoken of; a Dutch oven is a pot.
bool namesOven(const std::vector<std::string>& words);

/// The first verb that cooks; else the first that chills, that brings to a boil, that only heats
/// ("heat the oil"), the first of all. Null where there is none. "Reduce the heat" and "heat the
/// oven" are no cooking.
const CookingVerb* mainVerb(const std::vector<std::string>& words);

/// Whether the sentence only turns the oven on ("Preheat the oven to 375 °F") and does nothing
/// else.
bool turnsOvenOn(const std::vector<std::string>& words, bool namesTemperature);

}  // namespace rangeline
