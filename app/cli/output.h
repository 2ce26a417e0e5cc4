#pragma once

#include <QJsonObject>
#include <QString>

namespace rangeline {

/// Data, to standard output.
void say(const QString& text);
void say(const QJsonObject& object);
/// One line to standard error, with the program's name.
void complain(const QString& text);
/// How many character cells a line of the terminal has; 100 where that is unknown.
int terminalWidth();

}  // namespace rangeline
