#pragma once
// What is asked of an ingredient, column by column. A column is an entry in ingredient_fields.cpp.

#include <QLocale>
#include <vector>

#include "model/lesson.h"
#include "writing/field.h"
#include "writing/own_terms.h"

namespace rangeline {

/// Which of them is the name.
constexpr int ingredientNameColumn = 1;

std::vector<Field<Ingredient>> ingredientFields(const OwnTerms& terms, Units units,
                                                const QLocale& locale);

}  // namespace rangeline
