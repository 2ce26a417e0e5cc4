#include "model/scaled_amount.h"

#include "model/measures.h"

namespace rangeline {

namespace {

/// Seasoning goes up by half of what the covers do; down it follows them.
Rational factorOf(const Ingredient& ingredient, const Serving& serving) {
    const Rational covers(serving.covers, serving.dish.writtenFor);
    switch (ingredient.scaling) {
        case Scaling::Fixed:
            return 1;
        case Scaling::Seasoning:
            return covers > Rational(1) ? (covers + Rational(1)) / Rational(2) : covers;
        case Scaling::WithCovers:
            return covers;
    }
    return covers;
}

/// How many of the one unit make one of the other.
Rational unitsOf(const std::string& from, const std::string& to) {
    const Measure* one = findMeasure(from);
    const Measure* other = findMeasure(to);
    return one == nullptr || other == nullptr ? Rational(1) : one->size / other->size;
}

}  // namespace

KitchenAmount measuredAmount(const Ingredient& ingredient, const Serving& serving, int times) {
    const Amount& written = *ingredient.amount;
    const Rational factor = factorOf(ingredient, serving) * Rational(times);
    if (factor == Rational(1)) {
        return {written, Nearness::Close};
    }
    return toldAsMeasured({written.low * factor, written.high * factor, written.unit});
}

Amount scaledAmount(const Ingredient& ingredient, const Serving& serving, int times) {
    return measuredAmount(ingredient, serving, times).amount;
}

Amount amountToBuy(const Ingredient& ingredient, const Serving& serving, int times) {
    Amount amount = scaledAmount(ingredient, serving, times);
    const Amount& written = *ingredient.amount;
    const Rational factor = factorOf(ingredient, serving) * Rational(times);
    if (factor == Rational(1) && ingredient.usablePercent == 100) {
        return amount;
    }
    // From the exact amount: rounding twice could leave too little.
    const Rational more =
        factor * unitsOf(written.unit, amount.unit) * Rational(100, ingredient.usablePercent);
    amount.low = roundedUpToMeasure(written.low * more, amount.unit);
    amount.high = roundedUpToMeasure(written.high * more, amount.unit);
    return amount;
}

}  // namespace rangeline
