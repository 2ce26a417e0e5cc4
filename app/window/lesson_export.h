#pragma once

#include <QLocale>
#include <QString>

#include "document/lesson_document.h"

class QWidget;

namespace rangeline {

/// Asks where to, and writes the open lesson for another program; the ending chooses the format.
/// Says what is wrong in a message. What was done: "Written to supper.ics"; empty if nothing was.
QString exportLesson(const LessonDocument& document, const QLocale& locale, QWidget* parent);

/// Without asking where to. Requires an ending that exportFor knows.
std::optional<Fault> exportTo(const QString& path, const LessonDocument& document,
                              const QLocale& locale);

}  // namespace rangeline
