#include "rehearse/learned.h"

#include <algorithm>
#include <cstdlib>
#include <map>

namespace rangeline {
namespace {

/// Of an even number the middle between the two.
std::int64_t medianOf(std::vector<std::int64_t> values) {
    std::ranges::sort(values);
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half] + 1) / 2;
}

std::vector<std::int64_t> secondsByNight(std::span<const Logging> loggings) {
    std::map<std::string, std::vector<std::int64_t>> nights;
    for (const Logging& logging : loggings) {
        nights[logging.night].push_back(logging.took.inSeconds());
    }
    std::vector<std::int64_t> found;
    for (auto& [night, seconds] : nights) {
        found.push_back(medianOf(std::move(seconds)));
    }
    return found;
}

/// How far a night may lie from the median.
double reach(const std::vector<std::int64_t>& seconds, std::int64_t median) {
    std::vector<std::int64_t> distances;
    for (const std::int64_t each : seconds) {
        distances.push_back(std::abs(each - median));
    }
    constexpr double toDeviation = 1.4826;  // of a normal distribution
    constexpr double deviations = 3;
    constexpr double always = 0.25;
    return std::max(deviations * toDeviation * static_cast<double>(medianOf(std::move(distances))),
                    always * static_cast<double>(median));
}

std::int64_t grainOf(std::int64_t seconds) {
    constexpr std::int64_t twoMinutes = 120;
    constexpr std::int64_t tenMinutes = 600;
    return seconds < twoMinutes ? 5 : seconds < tenMinutes ? 15 : 60;
}

DurationRange asOnACard(std::int64_t shortest, std::int64_t likely, std::int64_t longest) {
    const std::int64_t grain = grainOf(likely);
    const auto nearest = std::max(grain, (likely + grain / 2) / grain * grain);
    const auto down = std::max(grain, shortest / grain * grain);
    const auto up = (longest + grain - 1) / grain * grain;
    return {Duration::seconds(std::min(down, nearest)), Duration::seconds(nearest),
            Duration::seconds(std::max(up, nearest))};
}

}  // namespace

std::optional<Learned> learnedFrom(std::span<const Logging> loggings) {
    std::vector<std::int64_t> seconds = secondsByNight(loggings);
    const auto nights = static_cast<int>(seconds.size());
    if (nights < fewestNights) {
        return std::nullopt;
    }
    const std::int64_t median = medianOf(seconds);
    const double far = reach(seconds, median);
    const auto odd = std::erase_if(seconds, [&](std::int64_t each) {
        return static_cast<double>(std::abs(each - median)) > far;
    });
    const auto [shortest, longest] = std::ranges::minmax(seconds);
    return Learned{asOnACard(shortest, median, longest), nights, static_cast<int>(odd)};
}

std::vector<LearnedOfCook> cooksWhoDiffer(std::span<const Logging> loggings) {
    std::map<std::string, std::vector<Logging>> byCook;
    for (const Logging& logging : loggings) {
        if (!logging.cook.empty()) {
            byCook[logging.cook].push_back(logging);
        }
    }
    std::vector<LearnedOfCook> found;
    for (const auto& [cook, own] : byCook) {
        if (auto learned = learnedFrom(own)) {
            found.push_back({cook, *learned});
        }
    }
    constexpr std::int64_t fifth = 5;
    const auto [quick, slow] = std::ranges::minmax_element(
        found, {}, [](const LearnedOfCook& each) { return each.learned.time.likely; });
    const bool differ =
        found.size() > 1 && (slow->learned.time.likely - quick->learned.time.likely) * fifth >
                                slow->learned.time.likely;
    return differ ? found : std::vector<LearnedOfCook>();
}

}  // namespace rangeline
