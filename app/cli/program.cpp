#include "cli/program.h"

#include <QCoreApplication>

#include "cli/output.h"

namespace rangeline {
namespace {

bool asksForHelp(const QStringList& words) {
    return words.contains(QStringLiteral("--help")) || words.contains(QStringLiteral("-h"));
}

/// Whether the one word can be the name of a lesson's file rather than a mistyped command.
bool namesAFile(const QString& word) {
    return word.contains('.') || word.contains('/');
}

Exit runCommand(const QStringList& words) {
    const Command* command = findCommand(words.first());
    if (command == nullptr) {
        complain(QCoreApplication::translate("Command",
                                             "There is no command “%1”. See rangeline --help.")
                     .arg(words.first()));
        return Exit::Unusable;
    }
    if (asksForHelp(words)) {
        say(helpText(*command));
        return Exit::Fine;
    }
    Invocation invocation;
    invocation.locale = QLocale::system();
    return readArguments(*command, words.mid(1), invocation) ? command->run(invocation)
                                                             : Exit::Unusable;
}

}  // namespace

Wanted wantedBy(const QStringList& words) {
    const bool book = words.size() == 2 && words.first().endsWith(QStringLiteral(".rangeline"));
    if (words.isEmpty() || (words.size() == 1 && namesAFile(words.first())) ||
        (book && !asksForHelp(words))) {
        return Wanted::Window;
    }
    const Command* command = findCommand(words.first());
    return command != nullptr && command->needsFonts && !asksForHelp(words) ? Wanted::Paper
                                                                            : Wanted::Text;
}

namespace {

Exit answerTo(const QStringList& words) {
    const QString first = words.value(0);
    if (first == QStringLiteral("--help") || first == QStringLiteral("-h")) {
        say(helpText());
        return Exit::Fine;
    }
    if (first == QStringLiteral("--version")) {
        say(QStringLiteral("rangeline %1\n").arg(QCoreApplication::applicationVersion()));
        return Exit::Fine;
    }
    return runCommand(words);
}

}  // namespace

Exit runProgram(const QStringList& words) {
    const Exit exit = answerTo(words);
    return couldSay() ? exit : Exit::Unusable;
}

}  // namespace rangeline
