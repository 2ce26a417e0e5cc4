// The program: finds out from its words alone what is wanted, so that nothing needs a display that
// does not show anything.

#include <QApplication>
#include <QCoreApplication>
#include <QFileInfo>
#include <QGuiApplication>
#include <csignal>
#include <cstdio>
#include <optional>

#include "cli/output.h"
#include "cli/program.h"
#include "exchange/lesson_file.h"
#include "text/fault_text.h"
#include "window/run_window.h"
#include "window/toolkit_options.h"

namespace rangeline {
namespace {

bool hasDisplay(const QStringList& words) {
    return words.contains(QStringLiteral("-platform")) || !qEnvironmentVariableIsEmpty("DISPLAY") ||
           !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") ||
           !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM");
}

/// What Qt says of its surroundings helps nobody who started a program to cook.
void saySurroundingsNothing(QtMsgType type, const QMessageLogContext& context,
                            const QString& text) {
    if (!text.startsWith(QStringLiteral("QStandardPaths:")) &&
        !text.startsWith(QStringLiteral("This plugin does not support"))) {
        std::fprintf(stderr, "%s\n", qPrintable(qFormatLogMessage(type, context, text)));
    }
}

/// Without a display a file that cannot be opened is the nearer reason.
int refuseWindow(const QString& path) {
    const bool missing = !path.isEmpty() && !QFileInfo::exists(path);
    const auto loaded = missing ? std::optional(loadLesson(path.toStdString())) : std::nullopt;
    complain(loaded && !loaded->ok()
                 ? path + QStringLiteral(": ") + sentence(loaded->error())
                 : QCoreApplication::translate(
                       "Command",
                       "There is no display for the window. For the terminal, see rangeline "
                       "--help."));
    return static_cast<int>(Exit::Unusable);
}

int showWindow(int argc, char** argv, const QStringList& words) {
    const QStringList own = withoutToolkitOptions(words);
    const QString path = own.value(0);
    if (!hasDisplay(words)) {
        return refuseWindow(path);
    }
    QApplication application(argc, argv);
    return runWindow(application, path, own.value(1));
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
    qInstallMessageHandler(rangeline::saySurroundingsNothing);
    const QStringList own = rangeline::withoutToolkitOptions(words);
    return rangeline::wantedBy(own) == rangeline::Wanted::Window
               ? rangeline::showWindow(argc, argv, words)
               : rangeline::answer(argc, argv, words);
}
