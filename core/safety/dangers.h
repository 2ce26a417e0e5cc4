#pragma once
// What can hurt the cook. Steps name rows of this table; app/text has the words for each.

#include <span>
#include <string_view>

namespace rangeline {

struct Danger {
    std::string_view key;  ///< as written in lesson files
    std::string_view source;
};

std::span<const Danger> dangers();
/// Null if there is no such danger.
const Danger* findDanger(std::string_view key);

}  // namespace rangeline
