#pragma once

#include <QJsonObject>

#include "recipe/recipe_import.h"

namespace rangeline {

/// The dish of an object of type Recipe.
ImportedRecipe makeDish(const QJsonObject& recipe);

}  // namespace rangeline
