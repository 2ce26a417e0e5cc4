#pragma once
// Lessons as JSON text, described by resources/lesson.schema.json. What is written is read back
// exactly, and reading and writing such a text again gives the same bytes.

#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "model/fault.h"
#include "model/lesson.h"

namespace rangeline {

/// A lesson that validate() accepts, or the first thing wrong with the text. Figure 0 of BadText
/// says what is wrong ("not-a-duration"), figure 1 is the text found.
Result<Lesson, Fault> readLesson(std::string_view bytes);
/// The same of what the program itself has kept: also in a time zone that this computer does not
/// know, where times are those of UTC.
Result<Lesson, Fault> readKeptLesson(std::string_view bytes);
/// Requires a lesson that validate() accepts.
std::string writeLesson(const Lesson& lesson);

/// Files larger than this are refused unread.
inline constexpr std::size_t largestLessonFile = 10'000'000;

/// What is in the file, of any format; of a larger one only so much that readers can tell.
Result<std::string, Fault> loadBytes(const std::string& path);
Result<Lesson, Fault> loadLesson(const std::string& path);
/// The old file is kept unless the new one is whole. Requires what writeLesson requires.
std::optional<Fault> saveLesson(const std::string& path, const Lesson& lesson);

}  // namespace rangeline
