#pragma once
// The one way in which files are written.

#include <optional>
#include <string>
#include <string_view>

#include "model/fault.h"

namespace rangeline {

/// Replaces the file, or creates it. Where that fails (CannotWrite: no space, no permission) the
/// old file is as it was. A pipe or a device is written into and stays what it is.
std::optional<Fault> writeFile(const std::string& path, std::string_view bytes);

}  // namespace rangeline
