#pragma once

#include <QJsonObject>
#include <QString>

namespace rangeline {

/// Data, to standard output. What cannot be written there is complained of once.
void say(const QString& text);
void say(const QJsonObject& object);
/// One line to standard error, with the program's name.
void complain(const QString& text);
/// False once standard output could not be written.
bool couldSay();
/// How many character cells a line of the terminal has; 100 where that is unknown.
int terminalWidth();

}  // namespace rangeline
