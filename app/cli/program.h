#pragma once

#include <QStringList>

#include "cli/command.h"

namespace rangeline {

/// What the words after the program's name ask for, before anything is built.
enum class Wanted : std::uint8_t {
    Text,   ///< an answer on the terminal
    Paper,  ///< an answer that needs fonts, but no display
    Window  ///< no command: the window, on a book, a lesson or neither
};

Wanted wantedBy(const QStringList& words);

/// Runs a command, help or version. Requires an application object of the kind wanted.
Exit runProgram(const QStringList& words);

}  // namespace rangeline
