#include "recipe/recipe_number.h"

#include <algorithm>
#include <array>

#include "recipe/plain_words.h"

namespace rangeline {
namespace {

constexpr std::array<std::string_view, 13> numberWords{"",     "one",    "two",   "three", "four",
                                                       "five", "six",    "seven", "eight", "nine",
                                                       "ten",  "eleven", "twelve"};

/// At most six digits; else the line stays.
std::optional<std::int64_t> takeDigits(std::string_view& line) {
    constexpr std::size_t most = 6;
    const auto* end = std::ranges::find_if_not(line, isDigit);
    const auto count = static_cast<std::size_t>(end - line.begin());
    if (count == 0 || count > most) {
        return std::nullopt;
    }
    std::int64_t value = 0;
    for (const char c : line.substr(0, count)) {
        value = value * 10 + (c - '0');
    }
    line.remove_prefix(count);
    return value;
}

/// "/4" after the upper number; the line stays where there is none.
std::optional<std::int64_t> takeLower(std::string_view& line) {
    constexpr std::int64_t finest = 1000;
    std::string_view rest = line;
    if (!rest.starts_with('/')) {
        return std::nullopt;
    }
    rest.remove_prefix(1);
    const auto lower = takeDigits(rest);
    if (!lower || *lower == 0 || *lower > finest) {
        return std::nullopt;
    }
    line = rest;
    return lower;
}

/// The fraction of a mixed number: " 1/2" or "-1/2", less than one.
std::optional<Rational> takeMixedPart(std::string_view& line) {
    std::string_view rest = line;
    if (!rest.starts_with(' ') && !rest.starts_with('-')) {
        return std::nullopt;
    }
    rest.remove_prefix(1);
    const auto upper = takeDigits(rest);
    const auto lower = upper ? takeLower(rest) : std::nullopt;
    if (!lower || *upper >= *lower || *upper == 0) {
        return std::nullopt;
    }
    line = rest;
    return Rational(*upper, *lower);
}

/// ".25" after a whole number; at most three places.
std::optional<Rational> takeDecimals(std::string_view& line) {
    std::string_view rest = line;
    if (rest.size() < 2 || rest[0] != '.' || !isDigit(rest[1])) {
        return std::nullopt;
    }
    rest.remove_prefix(1);
    const std::size_t before = rest.size();
    const auto places = takeDigits(rest);
    if (!places || before - rest.size() > 3) {
        return std::nullopt;
    }
    std::int64_t scale = 1;
    for (std::size_t i = rest.size(); i < before; ++i) {
        scale *= 10;
    }
    line = rest;
    return Rational(*places, scale);
}

std::optional<Rational> takeDigitNumber(std::string_view& line) {
    std::string_view rest = line;
    const auto whole = takeDigits(rest);
    if (!whole) {
        return std::nullopt;
    }
    Rational value(*whole);
    if (const auto lower = takeLower(rest)) {
        value = Rational(*whole, *lower);
    } else if (const auto decimals = takeDecimals(rest)) {
        value = value + *decimals;
    } else if (const auto part = takeMixedPart(rest)) {
        value = value + *part;
    }
    // "1,5", "1/2/3" and "1.2.3" are none of ours.
    if (rest.size() > 1 && (rest[0] == '.' || rest[0] == ',' || rest[0] == '/') &&
        isDigit(rest[1])) {
        return std::nullopt;
    }
    line = rest;
    return value;
}

std::optional<Rational> takeWordNumber(std::string_view& line) {
    const std::string word = lowered(firstWord(line));
    std::string_view rest = line;
    dropWord(rest);
    if (word == "half") {
        if (isOneOf(firstWord(rest), "a an")) {
            dropWord(rest);
        }
        line = rest;
        return Rational(1, 2);
    }
    const auto* found = std::ranges::find(numberWords, word);
    const bool one = word == "a" || word == "an";
    if (word.empty() || (!one && found == numberWords.end())) {
        return std::nullopt;
    }
    if (one && isOneOf(firstWord(rest), "few little couple")) {
        return std::nullopt;
    }
    if (one && isOneOf(firstWord(rest), "dozen")) {
        dropWord(rest);
        line = rest;
        return Rational(12);
    }
    line = rest;
    return Rational(one ? 1 : found - numberWords.begin());
}

}  // namespace

std::optional<Rational> takeNumber(std::string_view& line) {
    if (auto number = takeDigitNumber(line)) {
        return number;
    }
    return takeWordNumber(line);
}

}  // namespace rangeline
