#pragma once
// What the verbs of instructions usually mean at the stove. A verb is one row in cooking_verbs.cpp.

#include <cstdint>
#include <span>
#include <string_view>

#include "model/dish.h"

namespace rangeline {

enum class DoneOn : std::uint8_t { Nothing, Burner, Oven, FridgeShelf };

struct CookingVerb {
    std::string_view word;
    std::string_view technique;  ///< key of the technique table, or empty
    DoneOn on;
    Attention attention;    ///< of a cook
    std::string_view ware;  ///< kind of equipment, or empty
    OvenMode mode = OvenMode::Bake;
};

/// Every row is common practice, no source.
std::span<const CookingVerb> cookingVerbs();
/// By the word in small letters; null if it is none of them.
const CookingVerb* findCookingVerb(std::string_view word);

/// Whether a sentence that begins with this word tells of plating: "plate", "serve". In small
/// letters; common practice, no source.
bool beginsPlating(std::string_view word);

/// A word for a vessel and the kind of equipment it is: "skillet", "stockpot".
std::string_view wareNamed(std::string_view word);

}  // namespace rangeline
