#include "recipe/iso_duration.h"

#include <charconv>

namespace rangeline {
namespace {

constexpr std::int64_t week = 7 * 86'400;

struct Part {
    std::int64_t number = 0;
    std::int64_t thousandths = 0;  ///< of the unit, beside the number
    bool hasFraction = false;
    char unit = 0;
};

/// Takes digits off, of which the first three count: "5" is 500, "0625" is 62.
std::int64_t takeThousandths(std::string_view& text) {
    std::int64_t value = 0;
    std::int64_t place = 100;
    while (!text.empty() && text.front() >= '0' && text.front() <= '9') {
        value += place * (text.front() - '0');
        place /= 10;
        text.remove_prefix(1);
    }
    return value;
}

/// Takes "30M" or "1.5H" off. Empty where no number stands.
std::optional<Part> takePart(std::string_view& text) {
    Part part;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), part.number);
    if (fault != std::errc() || part.number < 0) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    if (text.starts_with('.') || text.starts_with(',')) {
        text.remove_prefix(1);
        part.hasFraction = true;
        part.thousandths = takeThousandths(text);
    }
    if (text.empty()) {
        return std::nullopt;
    }
    part.unit = text.front();
    text.remove_prefix(1);
    return part;
}

/// Seconds in a unit, in the order in which the units stand; 0: not here.
std::int64_t secondsOf(char unit, bool time) {
    if (!time) {
        return unit == 'W' ? week : unit == 'D' ? 86'400 : 0;
    }
    return unit == 'H' ? 3600 : unit == 'M' ? 60 : unit == 'S' ? 1 : 0;
}

}  // namespace

std::optional<Duration> readIsoDuration(std::string_view text) {
    if (!text.starts_with('P') || text.size() < 3) {
        return std::nullopt;
    }
    text.remove_prefix(1);
    bool time = false;
    std::int64_t sum = 0;
    std::int64_t before = 2 * week;
    bool ended = false;  // a fraction may only stand in the last part
    while (!text.empty()) {
        if (!time && text.front() == 'T') {
            time = true;
            text.remove_prefix(1);
            continue;
        }
        const auto part = takePart(text);
        const std::int64_t unit = part ? secondsOf(part->unit, time) : 0;
        if (unit == 0 || unit >= before || ended || part->number > week / unit) {
            return std::nullopt;
        }
        before = unit;
        ended = part->hasFraction;
        sum += part->number * unit + part->thousandths * unit / 1000;
    }
    return sum > week ? std::nullopt : std::optional(Duration::seconds(sum));
}

}  // namespace rangeline
