#include "cli/run_program.h"

#include <QProcess>
#include <QProcessEnvironment>

namespace rangeline::test {

Ended runProgram(const QStringList& words, const QByteArray& input) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.remove(QStringLiteral("DISPLAY"));
    environment.remove(QStringLiteral("WAYLAND_DISPLAY"));
    environment.remove(QStringLiteral("QT_QPA_PLATFORM"));
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(RANGELINE_PROGRAM), words);
    process.write(input);
    process.closeWriteChannel();
    constexpr int patience = 60'000;  // ms
    if (!process.waitForFinished(patience) || process.exitStatus() != QProcess::NormalExit) {
        return {};
    }
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

}  // namespace rangeline::test
