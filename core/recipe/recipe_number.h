#pragma once
// Numbers as recipes write them.

#include <optional>
#include <string_view>

#include "base/rational.h"

namespace rangeline {

/// Takes a number off a plain line (plainLine): whole, fraction, mixed or decimal, or a word for
/// one ("a", "twelve", "half a", "a dozen"). At most six digits, and fractions of at most a
/// thousandth. Empty, and the line as it was, where it begins otherwise.
std::optional<Rational> takeNumber(std::string_view& line);

}  // namespace rangeline
