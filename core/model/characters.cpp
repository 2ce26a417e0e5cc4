#include "model/characters.h"

namespace rangeline {

std::uint32_t takeCharacter(std::string_view& rest) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(rest[i]); };
    const unsigned char first = byte(0);
    const std::size_t size = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    if ((first >= 0x80 && first < 0xC2) || first > 0xF4 || rest.size() < size) {
        rest = {};
        return noCharacter;
    }
    std::uint32_t character = size == 1 ? first : first & (0xFFU >> (size + 1));
    for (std::size_t i = 1; i < size; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U) {
            rest = {};
            return noCharacter;
        }
        character = character << 6U | (byte(i) & 0x3FU);
    }
    rest.remove_prefix(size);
    const bool tooLong = (size == 3 && character < 0x800) || (size == 4 && character < 0x10000);
    const bool surrogate = character >= 0xD800 && character < 0xE000;
    return tooLong || surrogate || character > 0x10FFFF ? noCharacter : character;
}

bool mayStandInText(std::uint32_t c) {
    const bool control = c < 0x20 || (c >= 0x7F && c < 0xA0);
    const bool turns = c == 0x061C || c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) ||
                       (c >= 0x2066 && c <= 0x2069);
    return !control && !turns && c != noCharacter;
}

std::string excerpt(std::string_view text, std::size_t longest) {
    std::string shown;
    for (std::string_view rest = text; !rest.empty();) {
        const std::string_view before = rest;
        const bool plain = mayStandInText(takeCharacter(rest));
        const std::string_view character = before.substr(0, before.size() - rest.size());
        if (shown.size() + character.size() > longest) {
            return shown + "...";
        }
        shown += plain ? character : std::string_view("?");
    }
    return shown;
}

std::vector<std::string> presentable(std::vector<std::string> figures) {
    constexpr std::size_t longestFigure = 500;
    for (std::string& figure : figures) {
        figure = excerpt(figure, longestFigure);
    }
    return figures;
}

}  // namespace rangeline
