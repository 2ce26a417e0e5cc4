#include "model/scaled_amount.h"

#include "model/measures.h"

namespace rangeline {

Amount scaledAmount(const Ingredient& ingredient, const Serving& serving, int times) {
    Amount amount = *ingredient.amount;
    const Rational factor =
        ingredient.scaling == Scaling::Fixed
            ? Rational(times)
            : Rational(std::int64_t{serving.covers} * times, serving.dish.writtenFor);
    if (factor == Rational(1)) {
        return amount;
    }
    amount.low = roundedToMeasure(amount.low * factor, amount.unit);
    amount.high = roundedToMeasure(amount.high * factor, amount.unit);
    return amount;
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
