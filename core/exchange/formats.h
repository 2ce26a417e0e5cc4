#pragma once
// The formats of data that lessons are read from and written to. Adding one is a file with its
// functions and a row in formats.cpp.

#include <span>
#include <string>
#include <string_view>

#include "base/result.h"
#include "model/fault.h"
#include "model/lesson.h"

namespace rangeline {

struct Format {
    std::string_view name;
    std::string_view ending;                                ///< of file names, with the dot
    Result<Lesson, Fault> (*read)(std::string_view bytes);  ///< null: is only written
    std::string (*write)(const Lesson& lesson);             ///< null: is only read
};

std::span<const Format> formats();
/// By the ending of the file's name; null if none has it.
const Format* formatFor(std::string_view path);

}  // namespace rangeline
