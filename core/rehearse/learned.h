#pragma once
// What the cooking log teaches of a step's time. Nothing here changes a dish: it is offered.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "model/dish.h"

namespace rangeline {

/// How long a step took once, in the terms of its card: for a load, or for a piece.
struct Logging {
    std::string night;  ///< loads of one night count once, by their median
    std::string cook;   ///< empty: nobody's hands
    Duration took;      ///< > 0
};

struct Learned {
    DurationRange time;
    int nights = 0;  ///< it was logged in so many
    int odd = 0;     ///< and so many of them were left out

    friend bool operator==(const Learned&, const Learned&) = default;
};

/// Fewer nights say nothing.
inline constexpr int fewestNights = 3;

/// The likely time is the median of the nights, the shortest and the longest are those of the
/// nights that are not odd. Odd is what lies further from the median than three times 1.4826 times
/// the median distance from it (the rule of Hampel 1974; from memory), and further than a quarter
/// of it, so that equal nights do not make the next one odd (common practice, no source). Rounded
/// outwards to what a card says: whole minutes from ten on, quarters below, 5 s below two minutes.
std::optional<Learned> learnedFrom(std::span<const Logging> loggings);

struct LearnedOfCook {
    std::string cook;
    Learned learned;

    friend bool operator==(const LearnedOfCook&, const LearnedOfCook&) = default;
};
/// Cooks who are logged often enough, by name; none unless the likely times of two of them differ
/// by more than a fifth of the longer one (common practice, no source).
std::vector<LearnedOfCook> cooksWhoDiffer(std::span<const Logging> loggings);

}  // namespace rangeline
