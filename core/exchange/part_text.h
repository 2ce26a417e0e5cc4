#pragma once
// Parts of a lesson as JSON text on one line, in the words of lesson files. What is written is read
// back exactly; equal parts give equal bytes.

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/result.h"
#include "model/edit.h"
#include "model/fault.h"
#include "model/lesson.h"

namespace rangeline {

using PlacementPart = std::pair<PlacementKey, Placement>;
/// Edits that are applied one after the other.
using EditsPart = std::vector<Edit>;

/// For Head, Kitchen, Dish, Choices, PlacementPart and EditsPart. Requires a part of a lesson that
/// validate() accepts.
template <class Part>
std::string writePart(const Part& part);

/// The part, or the first thing wrong with the form of the text. Whether it fits into a lesson is
/// for validate() to say.
template <class Part>
Result<Part, Fault> readPart(std::string_view bytes);

}  // namespace rangeline
