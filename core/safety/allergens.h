#pragma once
// The allergens that law asks to name: the nine of the United States and the fourteen of the
// European Union, in one table.

#include <span>
#include <string_view>

namespace rangeline {

struct Allergen {
    std::string_view key;     ///< as written in lesson files
    bool us;                  ///< one of the US nine (source faster-act)
    bool eu;                  ///< one of the EU fourteen (source eu-1169-2011)
    std::string_view partOf;  ///< the wider allergen that this one always is, or empty
};

std::span<const Allergen> allergens();
/// Null if there is no such allergen.
const Allergen* findAllergen(std::string_view key);

/// Whether a guest who must not eat `avoided` must not eat what contains `contained`, or should
/// ask: cereals with gluten may be wheat. Keys outside the table only equal themselves.
bool allergenCovers(std::string_view avoided, std::string_view contained);

}  // namespace rangeline
