#include "model/scaled_amount.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace rangeline {
namespace {

/// The finest part that is measured of a unit: common practice, no source.
struct MeasuredTo {
    std::string_view unit;
    Rational part;
};

Rational partOf(std::string_view unit) {
    static const std::array parts{
        MeasuredTo{"g", {1}},      MeasuredTo{"ml", {1}},      MeasuredTo{"kg", {1, 20}},
        MeasuredTo{"l", {1, 20}},  MeasuredTo{"L", {1, 20}},   MeasuredTo{"dl", {1, 4}},
        MeasuredTo{"mg", {1}},     MeasuredTo{"tsp", {1, 8}},  MeasuredTo{"tbsp", {1, 2}},
        MeasuredTo{"cup", {1, 8}}, MeasuredTo{"cups", {1, 8}}, MeasuredTo{"", {1, 2}},
        MeasuredTo{"lb", {1, 8}},
    };
    for (const MeasuredTo& each : parts) {
        if (each.unit == unit) {
            return each.part;
        }
    }
    return {1, 4};
}

/// The nearest whole number of parts, halves upwards, at least one. Zero stays zero.
Rational rounded(const Rational& value, const Rational& part) {
    if (value <= Rational(0)) {
        return value;
    }
    const Rational parts = value / part;
    const std::int64_t nearest = (2 * parts.num() + parts.den()) / (2 * parts.den());
    return part * Rational(std::max<std::int64_t>(1, nearest));
}

}  // namespace

Amount scaledAmount(const Ingredient& ingredient, const Serving& serving, int times) {
    Amount amount = *ingredient.amount;
    const Rational factor =
        ingredient.scaling == Scaling::Fixed
            ? Rational(times)
            : Rational(std::int64_t{serving.covers} * times, serving.dish.writtenFor);
    if (factor == Rational(1)) {
        return amount;
    }
    const Rational part = partOf(amount.unit);
    amount.low = rounded(amount.low * factor, part);
    amount.high = rounded(amount.high * factor, part);
    return amount;
}

}  // namespace rangeline
