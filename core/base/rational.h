#pragma once
// Exact fractions for amounts: "1 1/2 tsp" stays one and a half through any scaling.

#include <compare>
#include <cstdint>

namespace rangeline {

/// A fraction in lowest terms with a positive denominator, both of 64 bits. Reckoning is exact as
/// long as the result has such terms, and else as near to it as they allow.
class Rational {
  public:
    constexpr Rational() = default;
    /// Requires den != 0.
    Rational(std::int64_t num, std::int64_t den = 1);

    std::int64_t num() const { return num_; }
    std::int64_t den() const { return den_; }
    double toDouble() const { return static_cast<double>(num_) / static_cast<double>(den_); }
    /// The least whole number that is not smaller.
    std::int64_t ceil() const;

    friend Rational operator+(const Rational& a, const Rational& b);
    friend Rational operator*(const Rational& a, const Rational& b);
    /// Requires b != 0.
    friend Rational operator/(const Rational& a, const Rational& b);
    friend bool operator==(const Rational&, const Rational&) = default;
    friend std::strong_ordering operator<=>(const Rational& a, const Rational& b);

  private:
    std::int64_t num_ = 0;
    std::int64_t den_ = 1;
};

}  // namespace rangeline
