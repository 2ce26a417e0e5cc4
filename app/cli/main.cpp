// The program: finds out from its words alone what is wanted, so that nothing needs a display that
// does not show anything.

#include <QCoreApplication>
#include <QGuiApplication>
#include <csignal>

#include "cli/command.h"
#include "cli/output.h"

namespace rangeline {
namespace {

Exit runCommand(const QStringList& words) {
    const Command* command = findCommand(words.first());
    if (command == nullptr) {
        complain(QCoreApplication::translate("Command",
                                             "There is no command “%1”. See rangeline --help.")
                     .arg(words.first()));
        return Exit::Unusable;
    }
    const QStringList rest = words.mid(1);
    if (rest.contains(QStringLiteral("--help")) || rest.contains(QStringLiteral("-h"))) {
        say(helpText(*command));
        return Exit::Fine;
    }
    Invocation invocation;
    invocation.locale = QLocale::system();
    return readArguments(*command, rest, invocation) ? command->run(invocation) : Exit::Unusable;
}

Exit runProgram(const QStringList& words) {
    if (words.isEmpty()) {
        complain(QCoreApplication::translate("Command", "What to do? See rangeline --help."));
        return Exit::Unusable;
    }
    if (words.first() == QStringLiteral("--help") || words.first() == QStringLiteral("-h")) {
        say(helpText());
        return Exit::Fine;
    }
    if (words.first() == QStringLiteral("--version")) {
        say(QStringLiteral("rangeline " RANGELINE_VERSION "\n"));
        return Exit::Fine;
    }
    return runCommand(words);
}

bool needsFonts(int argc, char** argv) {
    const Command* command = argc > 1 ? findCommand(QString::fromLocal8Bit(argv[1])) : nullptr;
    return command != nullptr && command->needsFonts;
}

}  // namespace
}  // namespace rangeline

int main(int argc, char** argv) {
    // A full disk or a closed pipe is an error to be said, not an end without a word.
    std::signal(SIGXFSZ, SIG_IGN);
    std::signal(SIGPIPE, SIG_IGN);
    std::unique_ptr<QCoreApplication> application;
    if (rangeline::needsFonts(argc, argv)) {
        qputenv("QT_QPA_PLATFORM", "offscreen");  // paper needs fonts, never a display
        application = std::make_unique<QGuiApplication>(argc, argv);
    } else {
        application = std::make_unique<QCoreApplication>(argc, argv);
    }
    return static_cast<int>(rangeline::runProgram(QCoreApplication::arguments().mid(1)));
}
