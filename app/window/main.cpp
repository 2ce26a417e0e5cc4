// The program: finds out from its words alone what is wanted, so that nothing needs a display that
// does not show anything.

#include <QApplication>
#include <QCoreApplication>
#include <QGuiApplication>
#include <csignal>

#include "cli/output.h"
#include "cli/program.h"
#include "window/run_window.h"

namespace rangeline {
namespace {

bool hasDisplay() {
    return !qEnvironmentVariableIsEmpty("DISPLAY") ||
           !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") ||
           !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM");
}

int showWindow(int argc, char** argv, const QStringList& words) {
    if (!hasDisplay()) {
        complain(QCoreApplication::translate(
            "Command",
            "There is no display for the window. For the terminal, see rangeline "
            "--help."));
        return static_cast<int>(Exit::Unusable);
    }
    QApplication application(argc, argv);
    return runWindow(application, words.value(0), words.value(1));
}

int answer(int argc, char** argv, const QStringList& words) {
    if (wantedBy(words) == Wanted::Paper) {
        qputenv("QT_QPA_PLATFORM", "offscreen");  // paper needs fonts, never a display
        const QGuiApplication application(argc, argv);
        return static_cast<int>(runProgram(words));
    }
    const QCoreApplication application(argc, argv);
    return static_cast<int>(runProgram(words));
}

}  // namespace
}  // namespace rangeline

int main(int argc, char** argv) {
    // A full disk or a closed pipe is an error to be said, not an end without a word.
    std::signal(SIGXFSZ, SIG_IGN);
    std::signal(SIGPIPE, SIG_IGN);
    QCoreApplication::setApplicationName(QStringLiteral("rangeline"));
    QCoreApplication::setApplicationVersion(QStringLiteral(RANGELINE_VERSION));
    QStringList words;
    for (int i = 1; i < argc; ++i) {
        words << QString::fromLocal8Bit(argv[i]);
    }
    return rangeline::wantedBy(words) == rangeline::Wanted::Window
               ? rangeline::showWindow(argc, argv, words)
               : rangeline::answer(argc, argv, words);
}
