#include "cli/findings_text.h"

#include <QCoreApplication>
#include <algorithm>

#include "text/columns.h"
#include "text/finding_text.h"
#include "text/gathered_findings.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Findings)
};

QString heading(Severity severity, int count) {
    switch (severity) {
        case Severity::Collision:
            return count == 1 ? Text::tr("1 collision") : Text::tr("%1 collisions").arg(count);
        case Severity::Late:
            return count == 1 ? Text::tr("1 step is late")
                              : Text::tr("%1 steps are late").arg(count);
        case Severity::Open:
            return Text::tr("Still to do");
        case Severity::Caution:
            return count == 1 ? Text::tr("1 caution") : Text::tr("%1 cautions").arg(count);
    }
    return {};
}

QString item(const QString& text, int width) {
    return QStringLiteral("  - ") + wrapped(text, width - 4).join(QStringLiteral("\n    ")) + '\n';
}

/// On a terminal a command does what the shelf and Arrange do in the window.
QString whatToDo(const Finding& finding, const TextContext& context) {
    return finding.code == FindingCode::NotPlaced
               ? Text::tr("rangeline arrange places what is missing.")
               : hint(finding, context);
}

QString section(const std::vector<GatheredFinding>& findings, const TextContext& context,
                int width) {
    QString text =
        heading(findings.front().shown.severity, static_cast<int>(findings.size())) + '\n';
    for (const GatheredFinding& finding : findings) {
        text +=
            item(sentence(finding.shown, context) + ' ' + whatToDo(finding.shown, context), width);
    }
    return text + '\n';
}

}  // namespace

QString findingsText(const OpenedLesson& opened, int width) {
    QString text;
    for (const Severity severity :
         {Severity::Collision, Severity::Late, Severity::Open, Severity::Caution}) {
        std::vector<GatheredFinding> findings = gathered(opened.findings());
        std::erase_if(findings, [severity](const GatheredFinding& row) {
            return row.shown.severity != severity;
        });
        if (!findings.empty()) {
            text += section(findings, opened.text(), width);
        } else if (severity == Severity::Collision) {
            text += Text::tr("No collisions.") + QStringLiteral("\n\n");
        }
    }
    if (needsSafetyNote(opened.findings())) {
        const TextContext& context = opened.text();
        text += wrapped(safetyNote(context.lesson.head.profile, context.lesson.kitchen.room,
                                   context.units, context.locale),
                        width)
                    .join('\n') +
                '\n';
    }
    return text;
}

}  // namespace rangeline
