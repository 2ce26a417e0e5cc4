#pragma once
// Freeing vessels sooner.

#include <optional>
#include <vector>

#include "model/lesson.h"

namespace rangeline {

/// The lesson's servings with all food turned out of vessels of that kind when its step ends,
/// instead of waiting there for what uses it. Food that is kept hot in its vessel, or goes on in
/// it, stays. Nothing where no step would change.
std::optional<std::vector<Serving>> turnedOut(const Lesson& lesson, const std::string& kind);

}  // namespace rangeline
