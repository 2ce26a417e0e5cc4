#pragma once
// Kitchen measures that convert into each other exactly, family by family, and the sums of amounts.
// Sizes: NIST Handbook 44, Appendix C (US customary volume and avoirdupois weight; 1 gal = 4 qt =
// 8 pt = 16 cups = 128 fl oz; 1 fl oz = 2 tbsp, 1 tbsp = 3 tsp; 1 lb = 16 oz), and the SI prefixes.

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "base/rational.h"
#include "model/dish.h"

namespace rangeline {

enum class MeasureFamily : std::uint8_t { UsVolume, UsWeight, MetricVolume, MetricWeight };

struct Measure {
    std::string_view key;  ///< as amounts write it: "tsp"
    MeasureFamily family;
    Rational size;          ///< in the family's smallest measure
    Rational least;         ///< fewer than this are told in a smaller measure
    Rational part;          ///< the finest part that is measured of it: common practice, no source
    Rational otherPart{0};  ///< another that there is a measure for, as thirds of a cup; 0: none
};

/// All measures, each family from the smallest to the largest.
std::span<const Measure> measures();
/// By a key or another way of writing it ("cups", "L"); null for counted things and the cook's own
/// units ("sprigs").
const Measure* findMeasure(std::string_view key);

/// The amounts of one thing added up: those of one family into one, told in the measure that suits
/// the sum; those of other units by unit. Volumes and weights stay apart. In order of appearance.
std::vector<Amount> addedUp(std::span<const Amount> amounts);

/// The nearest amount that can be measured of that unit, never nothing; halves upwards.
Rational roundedToMeasure(const Rational& value, std::string_view unit);
/// The least amount that can be measured of that unit and is not smaller: for buying.
Rational roundedUpToMeasure(const Rational& value, std::string_view unit);

}  // namespace rangeline
