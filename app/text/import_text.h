#pragma once
// What to look at in an imported recipe, in words.

#include <QString>

#include "recipe/recipe_import.h"

namespace rangeline {

QString sentence(const ImportRemark& remark);

}  // namespace rangeline
