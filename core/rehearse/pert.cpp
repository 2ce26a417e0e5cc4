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

/// Standard normal variables, two at a time by Marsaglia's polar method.
class Normals {
  public:
    explicit Normals(Random& random) : random_(random) {}

    double next() {
        if (kept_) {
            kept_ = false;
            return other_;
        }
        for (;;) {
            const double x = 2 * uniform(random_) - 1;
            const double y = 2 * uniform(random_) - 1;
            const double square = x * x + y * y;
            if (square > 0 && square < 1) {
                const double factor = std::sqrt(-2 * std::log(square) / square);
                other_ = y * factor;
                kept_ = true;
                return x * factor;
            }
        }
    }

  private:
    Random& random_;
    double other_ = 0;
    bool kept_ = false;
};

double lowerShape(const DurationRange& range) {
    const double width = seconds(range.longest - range.shortest);
    return width > 0 ? 1 + 4 * seconds(range.likely - range.shortest) / width : 1;
}

/// Marsaglia and Tsang 2000, "A simple method for generating gamma variables".
template <class Gamma>
double drawGamma(const Gamma& gamma, Normals& normals, Random& random) {
    for (;;) {
        const double x = normals.next();
        const double root = 1 + gamma.c * x;
        if (root <= 0) {
            continue;
        }
        const double v = root * root * root;
        const double u = uniform(random);
        constexpr double squeeze = 0.0331;  // of the paper: spares the logarithms, changes nothing
        if (u < 1 - squeeze * x * x * x * x ||
            std::log(u) < 0.5 * x * x + gamma.d * (1 - v + std::log(v))) {
            return gamma.d * v;
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

PertLength::Gamma::Gamma(double shape) : d(shape - 1.0 / 3.0), c(1.0 / std::sqrt(9 * d)) {}

/// The two shapes of PERT add up to six.
PertLength::PertLength(const DurationRange& range)
    : shortest_(seconds(range.shortest)),
      width_(seconds(range.longest - range.shortest)),
      up_(lowerShape(range)),
      down_(6 - lowerShape(range)) {}

double PertLength::draw(Random& random) const {
    if (width_ <= 0) {
        return shortest_;
    }
    Normals normals(random);
    const double up = drawGamma(up_, normals, random);
    const double down = drawGamma(down_, normals, random);
    return shortest_ + width_ * up / (up + down);
}

}  // namespace rangeline
