#pragma once

#include <QApplication>
#include <QString>

namespace rangeline {

/// Shows the window, with the lesson in that file unless the path is empty, until it is closed.
/// Returns what the program is to return.
int runWindow(QApplication& application, const QString& lessonPath);

}  // namespace rangeline
