#include "cli/explain_command.h"

#include <QCoreApplication>

#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "text/columns.h"
#include "text/machine_form.h"
#include "text/plating_text.h"

namespace rangeline {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Explain", text);
}

QString paragraphs(const QStringList& lines, int width) {
    QString text;
    for (const QString& line : lines) {
        text +=
            QStringLiteral("  ") + wrapped(line, width - 4).join(QStringLiteral("\n    ")) + '\n';
    }
    return text;
}

}  // namespace

Exit runExplain(const Invocation& invocation) {
    const auto opened = openLesson(invocation);
    if (!opened) {
        return Exit::Unusable;
    }
    const bool placed = !opened->plating().spares.empty();
    if (invocation.has("--json")) {
        say(toMachine(opened->plating(), opened->text()));
    } else if (placed) {
        const int width = terminalWidth();
        say(tr("What decides plating") + '\n' +
            paragraphs(platingLines(opened->plating(), opened->text()), width) + '\n' +
            tr("Minutes to spare") + '\n' +
            paragraphs(spareLines(opened->plating(), opened->text()), width));
    } else {
        complain(
            tr("No step is placed yet, so nothing decides plating: rangeline arrange places "
               "them."));
    }
    return placed ? Exit::Fine : Exit::Wrong;
}

}  // namespace rangeline
