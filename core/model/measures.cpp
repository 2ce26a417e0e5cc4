#include "model/measures.h"

#include <algorithm>
#include <array>

namespace rangeline {
namespace {

using Family = MeasureFamily;

std::span<const Measure> table() {
    static const std::array rows{
        Measure{"tsp", Family::UsVolume, {1}, {0}, {1, 8}},
        Measure{"tbsp", Family::UsVolume, {3}, {1}, {1, 2}},
        Measure{"fl oz", Family::UsVolume, {6}, {0}, {1, 4}},
        Measure{"cup", Family::UsVolume, {48}, {1, 4}, {1, 8}, {1, 3}},
        Measure{"pt", Family::UsVolume, {96}, {0}, {1, 4}},
        Measure{"qt", Family::UsVolume, {192}, {1}, {1, 4}},
        Measure{"gal", Family::UsVolume, {768}, {1}, {1, 4}},
        Measure{"oz", Family::UsWeight, {1}, {0}, {1, 4}},
        Measure{"lb", Family::UsWeight, {16}, {1}, {1, 8}},
        Measure{"ml", Family::MetricVolume, {1}, {0}, {1}},
        Measure{"dl", Family::MetricVolume, {100}, {0}, {1, 4}},
        Measure{"l", Family::MetricVolume, {1000}, {1}, {1, 20}},
        Measure{"mg", Family::MetricWeight, {1}, {0}, {1}},
        Measure{"g", Family::MetricWeight, {1000}, {1}, {1}},
        Measure{"kg", Family::MetricWeight, {1'000'000}, {1}, {1, 20}},
    };
    return rows;
}

struct OtherWriting {
    std::string_view written;
    std::string_view key;
};

constexpr std::array otherWritings{
    OtherWriting{"cups", "cup"},
    OtherWriting{"teaspoon", "tsp"},
    OtherWriting{"tablespoon", "tbsp"},
    OtherWriting{"teaspoons", "tsp"},
    OtherWriting{"tablespoons", "tbsp"},
    OtherWriting{"pint", "pt"},
    OtherWriting{"pints", "pt"},
    OtherWriting{"quart", "qt"},
    OtherWriting{"quarts", "qt"},
    OtherWriting{"gallon", "gal"},
    OtherWriting{"gallons", "gal"},
    OtherWriting{"ounce", "oz"},
    OtherWriting{"ounces", "oz"},
    OtherWriting{"pound", "lb"},
    OtherWriting{"pounds", "lb"},
    OtherWriting{"lbs", "lb"},
    OtherWriting{"L", "l"},
    OtherWriting{"mL", "ml"},
    OtherWriting{"gram", "g"},
    OtherWriting{"grams", "g"},
};

Rational partOf(std::string_view unit) {
    const Measure* measure = findMeasure(unit);
    if (measure != nullptr) {
        return measure->part;
    }
    return unit.empty() ? Rational(1, 2) : Rational(1, 4);
}

/// The nearest number of such parts, at least one; halves upwards.
Rational nearestOf(const Rational& value, const Rational& part) {
    const Rational parts = value / part;
    const std::int64_t nearest = (2 * parts.num() + parts.den()) / (2 * parts.den());
    return part * Rational(std::max<std::int64_t>(1, nearest));
}

Rational distance(const Rational& a, const Rational& b) {
    return a < b ? b + a * Rational(-1) : a + b * Rational(-1);
}

/// The largest measure of the family of which there is at least its least; those that have none
/// are told only where the cook wrote them.
const Measure& suiting(Family family, const Rational& sum) {
    const Measure* best = &*std::ranges::find(table(), family, &Measure::family);
    for (const Measure& each : table()) {
        if (each.family == family && each.least > Rational(0) && sum >= each.size * each.least) {
            best = &each;
        }
    }
    return *best;
}

struct Sum {
    const Measure* measure = nullptr;  ///< of the first amount; null: by unit
    Amount amount;                     ///< in the family's smallest measure, or in the unit
    int parts = 1;
};

}  // namespace

std::span<const Measure> measures() {
    return table();
}

const Measure* findMeasure(std::string_view key) {
    const auto other = std::ranges::find(otherWritings, key, &OtherWriting::written);
    const std::string_view wanted = other == otherWritings.end() ? key : other->key;
    const auto found = std::ranges::find(table(), wanted, &Measure::key);
    return found == table().end() ? nullptr : &*found;
}

std::vector<Amount> addedUp(std::span<const Amount> amounts) {
    std::vector<Sum> sums;
    for (const Amount& amount : amounts) {
        const Measure* measure = findMeasure(amount.unit);
        const Rational size = measure == nullptr ? Rational(1) : measure->size;
        const auto same = std::ranges::find_if(sums, [&](const Sum& sum) {
            return measure == nullptr || sum.measure == nullptr
                       ? measure == sum.measure && sum.amount.unit == amount.unit
                       : sum.measure->family == measure->family;
        });
        if (same == sums.end()) {
            sums.push_back({measure, {amount.low * size, amount.high * size, amount.unit}, 1});
            continue;
        }
        same->amount.low = same->amount.low + amount.low * size;
        same->amount.high = same->amount.high + amount.high * size;
        ++same->parts;
    }
    std::vector<Amount> told;
    for (const Sum& sum : sums) {
        Amount amount = sum.amount;
        if (sum.measure != nullptr) {
            // What was written once stays as it was written.
            const Measure& in =
                sum.parts == 1 ? *sum.measure : suiting(sum.measure->family, amount.high);
            amount.low = amount.low / in.size;
            amount.high = amount.high / in.size;
            if (sum.parts > 1) {
                amount.unit = in.key;
            }
        }
        told.push_back(std::move(amount));
    }
    return told;
}

Rational roundedToMeasure(const Rational& value, std::string_view unit) {
    if (value <= Rational(0)) {
        return value;
    }
    const Rational rounded = nearestOf(value, partOf(unit));
    const Measure* measure = findMeasure(unit);
    if (measure == nullptr || measure->otherPart == Rational(0)) {
        return rounded;
    }
    const Rational other = nearestOf(value, measure->otherPart);
    return distance(other, value) < distance(rounded, value) ? other : rounded;
}

Rational roundedUpToMeasure(const Rational& value, std::string_view unit) {
    const Rational part = partOf(unit);
    return part * Rational((value / part).ceil());
}

}  // namespace rangeline
