#include "recipe/spoken_heat.h"

#include <optional>

#include "recipe/plain_words.h"

namespace rangeline {
namespace {

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// Two or three digits at the beginning.
std::optional<int> takeDegrees(std::string_view& text) {
    std::size_t count = 0;
    int value = 0;
    while (count < text.size() && isDigit(text[count])) {
        value = count < 4 ? value * 10 + (text[count] - '0') : value;
        ++count;
    }
    text.remove_prefix(count);
    return count == 2 || count == 3 ? std::optional(value) : std::nullopt;
}

/// "°F", " F", " degrees F", "°"; then 'F' or 'C', and no letter after it.
std::optional<char> takeScale(std::string_view text) {
    constexpr std::string_view degree = "°";
    dropSpace(text);
    if (text.starts_with(degree)) {
        text.remove_prefix(degree.size());
    } else if (isOneOf(firstWord(text), "degrees degree deg")) {
        dropWord(text);
    }
    dropSpace(text);
    std::size_t end = 0;
    while (end < text.size() && isLetter(text[end])) {
        ++end;
    }
    const std::string_view word = text.substr(0, end);
    if (isOneOf(word, "f fahrenheit")) {
        return 'F';
    }
    if (isOneOf(word, "c celsius centigrade")) {
        return 'C';
    }
    return std::nullopt;
}

}  // namespace

std::vector<Temperature> temperaturesNamed(std::string_view text) {
    std::vector<Temperature> found;
    char before = ' ';
    while (!text.empty()) {
        if (!isDigit(text.front()) || isDigit(before) || isLetter(before)) {
            before = text.front();
            text.remove_prefix(1);
            continue;
        }
        const auto degrees = takeDegrees(text);
        before = '0';
        const auto scale = degrees ? takeScale(text) : std::nullopt;
        if (scale) {
            found.push_back(*scale == 'F' ? Temperature::fahrenheit(*degrees)
                                          : Temperature::celsius(*degrees));
        }
    }
    return found;
}

std::string heatNamed(std::string_view text) {
    const std::string low = lowered(text);
    const auto words = wordsOf(low);
    for (std::size_t i = 1; i < words.size(); ++i) {
        const std::string_view level = words[i - 1];
        if (!words[i].starts_with("heat") ||
            !isOneOf(level, "low medium-low medium medium-high high gentle moderate")) {
            continue;
        }
        const bool compound = i > 1 && words[i - 2] == "medium" && isOneOf(level, "low high");
        return compound ? "medium-" + std::string(level) : std::string(level);
    }
    return {};
}

}  // namespace rangeline
