#pragma once

#include <QString>

#include "document/repairs.h"
#include "text/names.h"

namespace rangeline {

/// What a repair does, as the words on its button: "Use sauté pan 2 for “Char the leeks”".
QString repairText(const Repair& repair, const TextContext& text);

}  // namespace rangeline
