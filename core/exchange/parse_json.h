#pragma once

#include <QJsonDocument>
#include <string_view>

#include "base/result.h"
#include "model/fault.h"

namespace rangeline {

/// JSON of at most largestLessonFile bytes without duplicate keys or deep nesting, or the first
/// thing wrong with it.
Result<QJsonDocument, Fault> parseJson(std::string_view bytes);

}  // namespace rangeline
