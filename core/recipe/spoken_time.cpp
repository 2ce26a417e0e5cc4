#include "recipe/spoken_time.h"

#include <optional>

#include "recipe/plain_words.h"
#include "recipe/recipe_number.h"

namespace rangeline {
namespace {

constexpr Duration longestNamed = Duration::hours(7 * 24);

struct Span {
    Rational low;
    Rational high;
};

std::string_view letters(std::string_view text) {
    std::size_t end = 0;
    while (end < text.size() &&
           ((text[end] >= 'a' && text[end] <= 'z') || (text[end] >= 'A' && text[end] <= 'Z'))) {
        ++end;
    }
    return text.substr(0, end);
}

/// Seconds in the unit of time that the text begins with; it is taken off.
std::optional<int> takeUnitOfTime(std::string_view& text) {
    std::string_view rest = text;
    if (rest.starts_with('-')) {
        rest.remove_prefix(1);  // "30-second"
    }
    dropSpace(rest);
    const std::string_view word = letters(rest);
    const int seconds = isOneOf(word, "s sec secs second seconds")   ? 1
                        : isOneOf(word, "m min mins minute minutes") ? 60
                        : isOneOf(word, "h hr hrs hour hours")       ? 3600
                        : isOneOf(word, "d day days")                ? 86'400
                                                                     : 0;
    rest.remove_prefix(word.size());
    const bool goesOn = rest.starts_with('\'') || rest.starts_with("’");  // "3 d'Anjou pears"
    if (seconds == 0 || goesOn) {
        return std::nullopt;
    }
    text = rest;
    return seconds;
}

bool takeWord(std::string_view& text, std::string_view spacedList) {
    std::string_view rest = text;
    dropSpace(rest);
    if (!isOneOf(firstWord(rest), spacedList)) {
        return false;
    }
    dropWord(rest);
    text = rest;
    return true;
}

std::optional<Rational> takeUpper(std::string_view& text) {
    std::string_view rest = text;
    dropSpace(rest);
    if (rest.starts_with('-')) {
        rest.remove_prefix(1);
        dropSpace(rest);
    } else if (!takeWord(rest, "to or")) {
        return std::nullopt;
    }
    const auto number = takeNumber(rest);
    if (number) {
        text = rest;
    }
    return number;
}

/// "and a half", "and 1/4" before a unit: a part of one.
std::optional<Rational> takeAndPart(std::string_view& text) {
    std::string_view rest = text;
    if (!takeWord(rest, "and")) {
        return std::nullopt;
    }
    takeWord(rest, "a");
    dropSpace(rest);
    const std::string_view word = letters(rest);
    if (isOneOf(word, "half quarter")) {
        rest.remove_prefix(word.size());
        takeWord(rest, "a an");
        text = rest;
        return Rational(1, isOneOf(word, "half") ? 2 : 4);
    }
    const auto part = takeNumber(rest);
    if (!part || !(*part < Rational(1))) {
        return std::nullopt;
    }
    text = rest;
    return part;
}

/// "and a half" after a unit.
std::optional<Rational> takeAndAHalf(std::string_view& text) {
    std::string_view rest = text;
    return takeWord(rest, "and") && takeWord(rest, "a") ? takeAndPart(text) : std::nullopt;
}

/// "or two" after a unit: more of the same.
std::optional<Rational> takeOrMore(std::string_view& text) {
    std::string_view rest = text;
    if (!takeWord(rest, "or")) {
        return std::nullopt;
    }
    dropSpace(rest);
    const auto number = takeNumber(rest);
    std::string_view after = rest;
    if (!number || takeUnitOfTime(after)) {
        return std::nullopt;
    }
    text = rest;
    return number;
}

/// "In a second bowl" tells of no time.
bool isOrdinal(std::string_view number, std::string_view after) {
    return isOneOf(letters(number), "a one") && isOneOf(letters(trimmed(after)), "second");
}

/// "20 minutes", "20-25 minutes", "45 minutes to 1 hour": in seconds.
std::optional<Span> takeSpan(std::string_view& text) {
    std::string_view rest = text;
    auto low = takeNumber(rest);
    if (!low || isOrdinal(text, rest)) {
        return std::nullopt;
    }
    if (const auto part = takeAndPart(rest)) {
        low = *low + *part;
    }
    auto high = takeUpper(rest);
    if (const auto part = high ? takeAndPart(rest) : std::nullopt) {
        high = *high + *part;
    }
    const auto unit = takeUnitOfTime(rest);
    if (!unit) {
        return std::nullopt;
    }
    Span span{*low * Rational(*unit), high.value_or(*low) * Rational(*unit)};
    if (!high) {
        std::string_view further = rest;
        const auto upper = takeUpper(further);
        const auto upperUnit = upper ? takeUnitOfTime(further) : std::nullopt;
        if (upperUnit) {
            span.high = *upper * Rational(*upperUnit);
            rest = further;
        } else if (const auto more = takeOrMore(rest); more && *low < *more) {
            span.high = *more * Rational(*unit);
        } else if (const auto part = takeAndAHalf(rest)) {
            span.low = span.low + *part * Rational(*unit);
            span.high = span.low;
        }
    }
    text = rest;
    return span;
}

/// "and 20 minutes" after hours.
void takeRest(std::string_view& text, Span& span) {
    std::string_view rest = text;
    dropSpace(rest);
    takeWord(rest, "and");
    std::string_view number = rest;
    if (const auto more = takeSpan(number)) {
        span.low = span.low + more->low;
        span.high = span.high + more->high;
        text = number;
    }
}

bool isEachSide(std::string_view text) {
    dropSpace(text);
    const std::string low = lowered(text.substr(0, 20));
    return low.starts_with("per side") || low.starts_with("each side") ||
           low.starts_with("on each side") || low.starts_with("a side") ||
           low.starts_with("on both sides");
}

std::optional<DurationRange> rangeOf(const Span& span) {
    if (span.high < span.low || span.high > Rational(longestNamed.inSeconds()) ||
        span.high == Rational(0)) {
        return std::nullopt;
    }
    const auto seconds = [](const Rational& value) { return Duration::seconds(value.ceil()); };
    const DurationRange range{seconds(span.low), seconds((span.low + span.high) / Rational(2)),
                              seconds(span.high)};
    // Between whole minutes cooks think in whole minutes: 14 of 12 to 15.
    constexpr std::int64_t minute = 60;
    const bool inMinutes = range.shortest.inSeconds() % minute == 0 &&
                           range.longest.inSeconds() % minute == 0 &&
                           range.longest - range.shortest > Duration::minutes(1);
    const std::int64_t up = (range.likely.inSeconds() + minute - 1) / minute;
    return inMinutes ? DurationRange{range.shortest, Duration::minutes(up), range.longest} : range;
}

struct Named {
    DurationRange range;
    std::size_t begin = 0;  ///< where in the text
    std::size_t end = 0;
};

std::vector<Named> findNamed(std::string_view all) {
    std::vector<Named> times;
    std::string_view text = all;
    std::string_view before;
    bool keeps = false;  // "keeps warm 40 minutes" is no time of work
    while (!text.empty()) {
        if (text.front() == '(') {
            text.remove_prefix(1);
            continue;
        }
        const std::size_t begin = all.size() - text.size();
        if (auto span = takeSpan(text)) {
            takeRest(text, *span);
            if (isEachSide(text)) {
                span = Span{span->low * Rational(2), span->high * Rational(2)};
            }
            const auto range = rangeOf(*span);
            if (range && !keeps && !isOneOf(before, "every after within last first")) {
                times.push_back({*range, begin, all.size() - text.size()});
            }
            continue;
        }
        before = letters(firstWord(text));
        keeps = isOneOf(before, "keeps") || (keeps && !firstWord(text).ends_with(','));
        dropWord(text);
    }
    return times;
}

}  // namespace

std::vector<DurationRange> timesNamed(std::string_view text) {
    std::vector<DurationRange> times;
    for (const Named& each : findNamed(text)) {
        times.push_back(each.range);
    }
    return times;
}

std::string_view withoutClosingTime(std::string_view text) {
    const std::vector<Named> times = findNamed(text);
    if (times.size() != 1 || !trimmed(text.substr(times[0].end)).empty()) {
        return text;
    }
    std::string_view left = trimmed(text.substr(0, times[0].begin));
    for (const std::string_view word : {"about", "another", "for"}) {
        if (left.ends_with(word) && left.size() > word.size() &&
            left[left.size() - word.size() - 1] == ' ') {
            left = trimmed(left.substr(0, left.size() - word.size()));
        }
    }
    while (left.ends_with(',')) {
        left = trimmed(left.substr(0, left.size() - 1));
    }
    return left.empty() ? text : left;
}

}  // namespace rangeline
