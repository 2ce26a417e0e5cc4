#pragma once
// The length of a step that is known by its shortest, likely and longest: the beta distribution of
// PERT (Malcolm, Roseboom, Clark and Fazar 1959), with shapes 1 + 4 (m - a) / (b - a) and
// 1 + 4 (b - m) / (b - a).

#include "base/random.h"
#include "model/dish.h"

namespace rangeline {

/// (a + 4 m + b) / 6, in seconds.
double pertMean(const DurationRange& range);
/// The usual estimate ((b - a) / 6)^2, in seconds squared. The distribution's own variance differs
/// from it where the likely lies near an end: (mean - a) (b - mean) / 7.
double pertVariance(const DurationRange& range);
double pertExactVariance(const DurationRange& range);

/// Draws lengths in seconds, shortest to longest.
class PertLength {
  public:
    explicit PertLength(const DurationRange& range);
    double draw(Random& random) const;

  private:
    /// What drawing a gamma variable of one shape needs.
    struct Gamma {
        explicit Gamma(double shape);
        double d, c;
    };

    double shortest_;
    double width_;  ///< 0: always the same
    Gamma up_, down_;
};

}  // namespace rangeline
