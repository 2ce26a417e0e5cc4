#pragma once
// Recipe texts as people write them, made plain enough to read word by word.

#include <string>
#include <string_view>
#include <vector>

namespace rangeline {

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// One line of plain text: signs of fractions as digits ("1½" gives "1 1/2"), long dashes as "-",
/// the multiplication sign as "x", runs of space as one, without marks of a list in front.
/// Characters that may not stand in a text become spaces.
std::string plainLine(std::string_view text);

/// ASCII letters made small; others stay.
std::string lowered(std::string_view text);

std::string_view trimmed(std::string_view text);

/// The words between spaces.
std::vector<std::string_view> wordsOf(std::string_view text);

/// The first word, up to the first space.
std::string_view firstWord(std::string_view text);

/// Takes the first word and the spaces after it off.
void dropWord(std::string_view& text);
/// Takes spaces off both ends.
void dropSpace(std::string_view& text);

/// Whether the word is one of the list; letter case does not matter.
bool isOneOf(std::string_view word, std::string_view spacedList);

}  // namespace rangeline
