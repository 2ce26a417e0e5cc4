#pragma once

#include <QLocale>
#include <optional>

#include "document/lesson_document.h"
#include "print/sheets.h"

namespace rangeline {

/// The sheet of the lesson, as PDF, on the paper usual where its units are.
std::optional<Fault> printTo(const QString& path, const Sheet& sheet,
                             const LessonDocument& document, const QLocale& locale);

}  // namespace rangeline
