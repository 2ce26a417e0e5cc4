#pragma once
// What to look at in an imported recipe, in words.

#include <QLocale>
#include <QString>

#include "model/lesson.h"
#include "recipe/recipe_import.h"

namespace rangeline {

QString sentence(const ImportRemark& remark, Units units, const QLocale& locale);

}  // namespace rangeline
