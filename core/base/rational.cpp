#include "base/rational.h"

#include <cassert>
#include <limits>

namespace rangeline {
namespace {

// Products of two 64-bit numbers; g++ and clang have the type, ISO C++ does not name it.
__extension__ using Wide = __int128;

Wide magnitude(Wide value) {
    return value < 0 ? -value : value;
}

Wide commonDivisor(Wide a, Wide b) {
    while (b != 0) {
        const Wide rest = a % b;
        a = b;
        b = rest;
    }
    return magnitude(a);
}

bool fits(Wide value) {
    return magnitude(value) <= std::numeric_limits<std::int64_t>::max();
}

struct Fraction {
    std::int64_t num = 0;
    std::int64_t den = 1;
};

/// In lowest terms. What needs longer numbers loses their last digits; what is larger than any
/// whole number of 64 bits is the largest one.
Fraction reduced(Wide num, Wide den) {
    const Wide divisor = num == 0 ? magnitude(den) : commonDivisor(num, den);
    num = den < 0 ? -num / divisor : num / divisor;
    den = magnitude(den) / divisor;
    while (den > 1 && (!fits(num) || !fits(den))) {
        num /= 2;
        den /= 2;
    }
    constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();
    if (!fits(num)) {
        return {num < 0 ? -largest : largest, 1};
    }
    const Wide again = num == 0 ? den : commonDivisor(num, den);
    return {static_cast<std::int64_t>(num / again), static_cast<std::int64_t>(den / again)};
}

}  // namespace

Rational::Rational(std::int64_t num, std::int64_t den) {
    assert(den != 0);
    const Fraction fraction = reduced(num, den);
    num_ = fraction.num;
    den_ = fraction.den;
}

std::int64_t Rational::ceil() const {
    const std::int64_t quotient = num_ / den_;
    return num_ > 0 && num_ % den_ != 0 ? quotient + 1 : quotient;
}

Rational operator+(const Rational& a, const Rational& b) {
    const Fraction sum =
        reduced(Wide(a.num_) * b.den_ + Wide(b.num_) * a.den_, Wide(a.den_) * b.den_);
    return {sum.num, sum.den};
}

Rational operator*(const Rational& a, const Rational& b) {
    const Fraction product = reduced(Wide(a.num_) * b.num_, Wide(a.den_) * b.den_);
    return {product.num, product.den};
}

Rational operator/(const Rational& a, const Rational& b) {
    assert(b.num_ != 0);
    const Fraction quotient = reduced(Wide(a.num_) * b.den_, Wide(a.den_) * b.num_);
    return {quotient.num, quotient.den};
}

std::strong_ordering operator<=>(const Rational& a, const Rational& b) {
    return Wide(a.num_) * b.den_ <=> Wide(b.num_) * a.den_;
}

}  // namespace rangeline
