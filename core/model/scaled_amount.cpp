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
    if (ingredient.usablePercent < 100) {
        const Rational more(100, ingredient.usablePercent);
        amount.low = roundedUpToMeasure(amount.low * more, amount.unit);
        amount.high = roundedUpToMeasure(amount.high * more, amount.unit);
    }
    return amount;
}

}  // namespace rangeline
