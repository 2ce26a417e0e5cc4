#include "recipe/iso_duration.h"

#include <algorithm>
#include <charconv>

namespace rangeline {
namespace {

constexpr std::int64_t week = 7 * 86'400;

struct Part {
    std::int64_t number = 0;
    char unit = 0;
};

/// Takes "30M" off; the fraction of a number is cut off. Empty where no number stands.
std::optional<Part> takePart(std::string_view& text) {
    Part part;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), part.number);
    if (fault != std::errc() || part.number < 0) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    if (text.starts_with('.') || text.starts_with(',')) {
        text.remove_prefix(1);
        text.remove_prefix(std::min(text.find_first_not_of("0123456789"), text.size()));
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
    while (!text.empty()) {
        if (!time && text.front() == 'T') {
            time = true;
            text.remove_prefix(1);
            continue;
        }
        const auto part = takePart(text);
        const std::int64_t unit = part ? secondsOf(part->unit, time) : 0;
        if (unit == 0 || unit >= before || part->number > week / unit) {
            return std::nullopt;
        }
        before = unit;
        sum += part->number * unit;
    }
    return sum > week ? std::nullopt : std::optional(Duration::seconds(sum));
}

}  // namespace rangeline
