#include "recipe/plain_words.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

#include "model/characters.h"

namespace rangeline {
namespace {

using Replacement = std::pair<std::uint32_t, std::string_view>;

/// From the Unicode blocks Latin-1 Supplement, Number Forms, General Punctuation.
constexpr std::array replacements{
    Replacement{0xBC, " 1/4"},   Replacement{0xBD, " 1/2"},   Replacement{0xBE, " 3/4"},
    Replacement{0x2150, " 1/7"}, Replacement{0x2151, " 1/9"}, Replacement{0x2152, " 1/10"},
    Replacement{0x2153, " 1/3"}, Replacement{0x2154, " 2/3"}, Replacement{0x2155, " 1/5"},
    Replacement{0x2156, " 2/5"}, Replacement{0x2157, " 3/5"}, Replacement{0x2158, " 4/5"},
    Replacement{0x2159, " 1/6"}, Replacement{0x215A, " 5/6"}, Replacement{0x215B, " 1/8"},
    Replacement{0x215C, " 3/8"}, Replacement{0x215D, " 5/8"}, Replacement{0x215E, " 7/8"},
    Replacement{0x2044, "/"},    Replacement{0x2010, "-"},    Replacement{0x2011, "-"},
    Replacement{0x2012, "-"},    Replacement{0x2013, "-"},    Replacement{0x2014, " - "},
    Replacement{0x2212, "-"},    Replacement{0xD7, "x"},      Replacement{0xA0, " "},
    Replacement{0x202F, " "},    Replacement{0x2009, " "},    Replacement{0x200B, ""},
    Replacement{0xFEFF, ""},     Replacement{0xBA, "°"},  // often written for a degree
};

/// Marks that lists and tick boxes put in front of a line.
constexpr std::array<std::uint32_t, 7> listMarks{0x2022, 0x25AA, 0x25A2, 0x2610,
                                                 0x25CF, 0x2023, 0xB7};

std::string replaced(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        const std::string_view before = text;
        const std::uint32_t character = takeCharacter(text);
        if (character == noCharacter) {
            text = before.substr(1);  // the rest may be readable
        }
        const auto* row = std::ranges::find(replacements, character, &Replacement::first);
        if (row != replacements.end()) {
            plain += row->second;
        } else if (std::ranges::find(listMarks, character) != listMarks.end() ||
                   character == noCharacter || !mayStandInText(character)) {
            plain += ' ';
        } else {
            plain += before.substr(0, before.size() - text.size());
        }
    }
    return plain;
}

std::string spacedOnce(std::string_view text) {
    std::string once;
    for (const std::string_view word : wordsOf(text)) {
        once += once.empty() ? "" : " ";
        once += word;
    }
    return once;
}

}  // namespace

std::string plainLine(std::string_view text) {
    std::string line = spacedOnce(replaced(text));
    while (line.starts_with("- ") || line.starts_with("* ")) {
        line.erase(0, 2);
    }
    return line;
}

std::string lowered(std::string_view text) {
    std::string low(text);
    std::ranges::transform(low, low.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return low;
}

std::string_view trimmed(std::string_view text) {
    const std::size_t begin = text.find_first_not_of(' ');
    if (begin == std::string_view::npos) {
        return {};
    }
    return text.substr(begin, text.find_last_not_of(' ') - begin + 1);
}

std::vector<std::string_view> wordsOf(std::string_view text) {
    constexpr std::string_view spaces = " \t\r\n\f\v";
    std::vector<std::string_view> words;
    std::size_t at = text.find_first_not_of(spaces);
    while (at != std::string_view::npos) {
        const std::size_t end = std::min(text.find_first_of(spaces, at), text.size());
        words.push_back(text.substr(at, end - at));
        at = text.find_first_not_of(spaces, end);
    }
    return words;
}

std::string_view firstWord(std::string_view text) {
    return text.substr(0, std::min(text.find(' '), text.size()));
}

void dropWord(std::string_view& text) {
    text.remove_prefix(firstWord(text).size());
    dropSpace(text);
}

void dropSpace(std::string_view& text) {
    text = trimmed(text);
}

bool isOneOf(std::string_view word, std::string_view spacedList) {
    const std::string low = lowered(word);
    const auto words = wordsOf(spacedList);
    return std::ranges::find(words, low) != words.end();
}

}  // namespace rangeline
