#include "base/rational.h"

#include <cassert>
#include <numeric>

namespace rangeline {

Rational::Rational(std::int64_t num, std::int64_t den) {
    assert(den != 0);
    const std::int64_t sign = den < 0 ? -1 : 1;
    const std::int64_t common = std::gcd(num, den);
    const std::int64_t divisor = common == 0 ? 1 : common;
    num_ = sign * num / divisor;
    den_ = sign * den / divisor;
}

std::int64_t Rational::ceil() const {
    const std::int64_t quotient = num_ / den_;
    return quotient * den_ < num_ ? quotient + 1 : quotient;
}

Rational operator+(const Rational& a, const Rational& b) {
    return {a.num_ * b.den_ + b.num_ * a.den_, a.den_ * b.den_};
}

Rational operator*(const Rational& a, const Rational& b) {
    return {a.num_ * b.num_, a.den_ * b.den_};
}

Rational operator/(const Rational& a, const Rational& b) {
    assert(b.num_ != 0);
    return {a.num_ * b.den_, a.den_ * b.num_};
}

std::strong_ordering operator<=>(const Rational& a, const Rational& b) {
    return a.num_ * b.den_ <=> b.num_ * a.den_;
}

}  // namespace rangeline
