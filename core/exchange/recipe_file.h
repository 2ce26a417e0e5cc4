#pragma once
// Dishes as recipes of the vocabulary schema.org/Recipe, in JSON-LD.

#include <string>

#include "model/lesson.h"

namespace rangeline {

/// The dishes of a lesson with the amounts for the covers served: one recipe, or a graph of
/// several. Components are sections; the time of hands is the preparation, the rest of all steps
/// the cooking. Links, equipment and placements stay behind.
std::string writeRecipes(const Lesson& lesson);

}  // namespace rangeline
