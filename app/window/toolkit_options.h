#pragma once

#include <QStringList>

namespace rangeline {

/// The words without the options that Qt's own application takes for windows, such as -reverse or
/// -style fusion (https://doc.qt.io/qt-6/qapplication.html#QApplication, and qguiapplication.html).
/// What Rangeline itself is asked for are the others.
QStringList withoutToolkitOptions(const QStringList& words);

}  // namespace rangeline
