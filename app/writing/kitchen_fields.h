#pragma once
// What is asked of a kitchen as a whole, beside the tables of what stands in it.

#include <vector>

#include "model/kitchen.h"
#include "model/lesson.h"
#include "writing/field.h"

namespace rangeline {

std::vector<Field<Kitchen>> kitchenFields(Units units);

}  // namespace rangeline
