#pragma once
// When uses of a counted thing add up to more than there is.

#include <algorithm>
#include <cstdint>
#include <span>
#include <vector>

#include "base/units.h"

namespace rangeline {

/// One unbroken time over capacity, with everything that takes part in it.
struct Overload {
    Interval interval;
    std::int64_t most = 0;
    std::vector<int> uses;  ///< indexes into the uses given, ascending
};

/// The uses are sorted by begin; amountOf(use) says how much one takes.
template <class Use, class Amount>
std::vector<Overload> overloads(std::span<const Use> uses, std::int64_t capacity, Amount amountOf) {
    struct Event {
        Instant at;
        std::int64_t change;
    };
    std::vector<Event> events;
    events.reserve(uses.size() * 2);
    for (const Use& use : uses) {
        events.push_back({use.interval.begin, amountOf(use)});
        events.push_back({use.interval.end, -amountOf(use)});
    }
    std::ranges::sort(events, std::less<>(),
                      [](const Event& e) { return std::pair(e.at, e.change); });
    std::vector<Overload> found;
    std::int64_t taken = 0;
    bool over = false;
    for (std::size_t i = 0; i < events.size(); ++i) {
        taken += events[i].change;
        if (i + 1 < events.size() && events[i + 1].at == events[i].at) {
            continue;
        }
        if (taken > capacity && !over) {
            found.push_back({{events[i].at, events[i].at}, 0, {}});
        }
        if (over || taken > capacity) {
            found.back().interval.end = events[i].at;
            found.back().most = std::max(found.back().most, taken);
        }
        over = taken > capacity;
    }
    for (Overload& overload : found) {
        for (std::size_t i = 0; i < uses.size(); ++i) {
            if (uses[i].interval.overlaps(overload.interval)) {
                overload.uses.push_back(static_cast<int>(i));
            }
        }
    }
    return found;
}

}  // namespace rangeline
