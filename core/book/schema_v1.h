#pragma once
#include "book/schema.h"

namespace rangeline {

extern const SchemaVersion schemaVersion1;

}  // namespace rangeline
