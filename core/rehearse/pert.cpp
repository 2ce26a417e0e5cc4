#include "rehearse/pert.h"

#include <cmath>

namespace rangeline {
namespace {

double seconds(Duration length) {
    return static_cast<double>(length.inSeconds());
}

/// In (0, 1).
double uniform(Random& random) {
    return (static_cast<double>(random.next() >> 11) + 0.5) * 0x1.0p-53;
}

/// Marsaglia's polar method, one of the two.
double normal(Random& random) {
    for (;;) {
        const double x = 2 * uniform(random) - 1;
        const double y = 2 * uniform(random) - 1;
        const double square = x * x + y * y;
        if (square > 0 && square < 1) {
            return x * std::sqrt(-2 * std::log(square) / square);
        }
    }
}

/// Marsaglia and Tsang 2000, "A simple method for generating gamma variables". Requires shape >= 1.
double gamma(double shape, Random& random) {
    const double d = shape - 1.0 / 3.0;
    const double c = 1.0 / std::sqrt(9 * d);
    for (;;) {
        const double x = normal(random);
        const double root = 1 + c * x;
        if (root <= 0) {
            continue;
        }
        const double v = root * root * root;
        const double u = uniform(random);
        if (std::log(u) < 0.5 * x * x + d - d * v + d * std::log(v)) {
            return d * v;
        }
    }
}

}  // namespace

double pertMean(const DurationRange& range) {
    return (seconds(range.shortest) + 4 * seconds(range.likely) + seconds(range.longest)) / 6;
}

double pertVariance(const DurationRange& range) {
    const double sixth = seconds(range.longest - range.shortest) / 6;
    return sixth * sixth;
}

double pertExactVariance(const DurationRange& range) {
    const double mean = pertMean(range);
    return (mean - seconds(range.shortest)) * (seconds(range.longest) - mean) / 7;
}

double drawPert(const DurationRange& range, Random& random) {
    const double a = seconds(range.shortest);
    const double m = seconds(range.likely);
    const double b = seconds(range.longest);
    if (b <= a) {
        return a;
    }
    const double up = gamma(1 + 4 * (m - a) / (b - a), random);
    const double down = gamma(1 + 4 * (b - m) / (b - a), random);
    return a + (b - a) * up / (up + down);
}

}  // namespace rangeline
