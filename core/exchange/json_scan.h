#pragma once
// What Qt's JSON parser lets pass and a lesson file must not: duplicate keys and deep nesting.

#include <optional>
#include <string_view>

#include "model/fault.h"

namespace rangeline {

/// The first thing wrong with JSON that has already been parsed without error.
std::optional<Fault> scanJson(std::string_view bytes, std::size_t deepest);

/// "line, column" of a byte, counted from 1, columns in characters; as figures 0 and 1 of NotJson.
std::vector<std::string> lineAndColumn(std::string_view bytes, std::size_t offset);

}  // namespace rangeline
