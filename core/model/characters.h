#pragma once
// The characters of texts that come from outside.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace rangeline {

/// What takeCharacter gives for bytes that are no UTF-8.
inline constexpr std::uint32_t noCharacter = 0xFFFFFFFF;

/// Takes the first character off; after noCharacter nothing is left. Requires a text that is not
/// empty.
std::uint32_t takeCharacter(std::string_view& rest);

/// Not control characters, nor those that turn the direction of writing (Unicode's Bidi_Control).
bool mayStandInText(std::uint32_t character);

/// The text as it may stand in a message: at most so many bytes, and "?" for what may not stand in
/// a text.
std::string excerpt(std::string_view text, std::size_t longest = 60);

/// The figures of a fault as they may stand in a message, whatever the file they come from holds.
std::vector<std::string> presentable(std::vector<std::string> figures);

}  // namespace rangeline
