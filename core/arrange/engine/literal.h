#pragma once
// Integer variables known by their bounds. A variable has two views, itself and its negative, so
// that every bound is a lower bound; a literal says that a view is at least some value, and is
// never stored anywhere unless a clause mentions it. Booleans are variables in [0, 1].

#include <compare>
#include <cstdint>

namespace rangeline::engine {

using Value = std::int32_t;
using View = std::int32_t;  ///< 2 * variable, or 2 * variable + 1 for its negative

constexpr View opposite(View view) {
    return view ^ 1;
}

/// value(view) >= bound.
struct Literal {
    View view = 0;
    Value bound = 0;

    friend auto operator<=>(const Literal&, const Literal&) = default;
};

/// An instant: the value of a view plus a constant.
struct TimePoint {
    View view = 0;
    Value offset = 0;

    friend bool operator==(const TimePoint&, const TimePoint&) = default;
};

}  // namespace rangeline::engine
