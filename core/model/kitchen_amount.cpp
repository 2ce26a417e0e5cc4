#include "model/kitchen_amount.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <vector>

#include "model/measures.h"

namespace rangeline {
namespace {

// Shares of the amount that is told. A hair more, so that an exact twentieth is not lost to the
// arithmetic of floating point.
constexpr double eyeForgives = 0.05 + 1e-9;
constexpr double wordCovers = 0.15 + 1e-9;
// More than so many spoons or cups are told in a larger measure, and spoons also where they make up
// a larger one: common practice, no source.
constexpr double mostCounted = 8;
constexpr std::string_view largestSpoonsMakeUp = "cup";

bool isMetric(MeasureFamily family) {
    return family == MeasureFamily::MetricVolume || family == MeasureFamily::MetricWeight;
}

Amount inMeasure(const Amount& exact, const Measure& from, const Measure& to,
                 std::string_view unit) {
    const auto told = [&](const Rational& value) {
        return roundedToMeasure(value * from.size / to.size, to.key);
    };
    return {told(exact.low), told(exact.high), std::string(unit)};
}

/// By how much of what is told the exact amount is more; the upper end of a range decides.
double excess(const Amount& exact, const Measure& from, const Amount& told, const Measure& to) {
    const double toldSize = told.high.toDouble() * to.size.toDouble();
    return toldSize == 0 ? 0 : exact.high.toDouble() * from.size.toDouble() / toldSize - 1;
}

/// The measure that so many spoons are a part of to the last drop; null where there is none.
const Measure* madeUpBy(const Rational& size, const Measure& spoon) {
    const double most = findMeasure(largestSpoonsMakeUp)->size.toDouble();
    for (auto each = measures().rbegin(); each != measures().rend(); ++each) {
        const double times = each->size.toDouble();
        const bool larger = each->family == spoon.family && times > spoon.size.toDouble() &&
                            times <= most && each->least > Rational(0);
        const Rational parts = size / each->size;
        if (larger && !(parts < each->least) && roundedToMeasure(parts, each->key) == parts) {
            return &*each;
        }
    }
    return nullptr;
}

/// From the one it is written in to those it could be told in, the larger first.
std::vector<const Measure*> candidates(const Measure& written, double count) {
    const double size = count * written.size.toDouble();
    std::vector<const Measure*> found;
    for (auto each = measures().rbegin(); each != measures().rend(); ++each) {
        const bool suits = each->family == written.family && each->least > Rational(0) &&
                           size >= (each->size * each->least).toDouble();
        const bool countable = written.family != MeasureFamily::UsVolume ||
                               size <= mostCounted * each->size.toDouble();
        if (suits && (found.empty() || countable)) {
            found.push_back(&*each);
        }
    }
    const bool largerAtHand = !found.empty() && found.front()->size > written.size;
    if (isMetric(written.family) || count <= mostCounted || !largerAtHand) {
        found.insert(found.begin(), &written);
    }
    const auto smallest = std::ranges::find(measures(), written.family, &Measure::family);
    if (size <= mostCounted * smallest->size.toDouble()) {
        found.push_back(&*smallest);
    }
    return found;
}

Nearness nearnessOf(double excess) {
    if (std::abs(excess) <= eyeForgives) {
        return Nearness::Close;
    }
    if (excess < -wordCovers) {
        return Nearness::LessThan;
    }
    return excess < 0 ? Nearness::Scant : Nearness::Generous;
}

}  // namespace

KitchenAmount toldAsMeasured(const Amount& exact) {
    const Measure* written = findMeasure(exact.unit);
    if (written == nullptr) {
        return {{roundedToMeasure(exact.low, exact.unit), roundedToMeasure(exact.high, exact.unit),
                 exact.unit},
                Nearness::Close};
    }
    const Measure* whole = madeUpBy(exact.high * written->size, *written);
    if (whole != nullptr && exact.low == exact.high) {
        return {inMeasure(exact, *written, *whole, whole->key), Nearness::Close};
    }
    Amount best;
    double bestExcess = 0;
    for (const Measure* measure : candidates(*written, exact.high.toDouble())) {
        const bool same = measure == written;
        Amount told = inMeasure(exact, *written, *measure, same ? exact.unit : measure->key);
        const double off = excess(exact, *written, told, *measure);
        if (best.high == Rational() || std::abs(off) < std::abs(bestExcess)) {
            best = std::move(told);
            bestExcess = off;
        }
        if (std::abs(bestExcess) <= eyeForgives) {
            break;
        }
    }
    const bool byEye = written->family == MeasureFamily::UsVolume && exact.low == exact.high;
    return {std::move(best), byEye ? nearnessOf(bestExcess) : Nearness::Close};
}

}  // namespace rangeline
