#pragma once

#include <QApplication>
#include <QString>

namespace rangeline {

/// Shows the window until it is closed, with the book or the lesson in that file, and the lesson of
/// that name in the book; where the path is empty, with the book opened last. Returns what the
/// program is to return.
int runWindow(QApplication& application, const QString& path, const QString& name = {});

}  // namespace rangeline
