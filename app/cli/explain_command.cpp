#include "cli/explain_command.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <algorithm>

#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "text/columns.h"
#include "text/explain_text.h"
#include "text/machine_form.h"
#include "text/plating_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Explain)
};

QString paragraphs(const QStringList& lines) {
    const int width = terminalWidth();
    QString text;
    for (const QString& line : lines) {
        text +=
            QStringLiteral("  ") + wrapped(line, width - 4).join(QStringLiteral("\n    ")) + '\n';
    }
    return text;
}

QStringList remedyLines(const std::vector<Remedy>& remedies, const TextContext& context) {
    QStringList lines;
    for (const Remedy& remedy : remedies) {
        lines << remedyText(remedy, context);
    }
    return lines;
}

QString notPossible(const Explanation& explanation, const std::vector<Remedy>& remedies,
                    const TextContext& context) {
    QString text = notPossibleText(explanation) + '\n' +
                   paragraphs(requirementLines(explanation.requirements, context));
    text +=
        '\n' + (remedies.empty() ? Text::tr("No single change that was tried would help.") + '\n'
                                 : Text::tr("What would help, each on its own") + '\n' +
                                       paragraphs(remedyLines(remedies, context)));
    return text;
}

QString whyNotLater(const Explanation& explanation, const std::vector<Remedy>& remedies,
                    const TextContext& context) {
    QString text = '\n' + Text::tr("Why it does not start later") + '\n' +
                   paragraphs({noLaterText(explanation)}) +
                   paragraphs(requirementLines(explanation.requirements, context));
    if (!remedies.empty()) {
        text += '\n' + Text::tr("What would let it start later, each on its own") + '\n' +
                paragraphs(remedyLines(remedies, context));
    }
    return text;
}

QJsonObject machineForm(const Explanation& explanation, const std::vector<Remedy>& remedies,
                        const TextContext& context) {
    QJsonObject object = toMachine(explanation, context);
    QJsonArray list;
    for (const Remedy& remedy : remedies) {
        list.append(toMachine(remedy, context));
    }
    object["remedies"] = list;
    return object;
}

bool allPlaced(const OpenedLesson& opened) {
    return std::ranges::none_of(opened.findings(), [](const Finding& finding) {
        return finding.code == FindingCode::NotPlaced;
    });
}

/// Half of the time for the reason, half for what would help.
RemedyOptions halfOf(double seconds) {
    RemedyOptions options;
    options.explain.secondsLimit = seconds / 2;
    options.helperName = Text::tr("Helper").toStdString();
    return options;
}

QString platingText(const OpenedLesson& opened) {
    return Text::tr("What decides plating") + '\n' +
           paragraphs(platingLines(opened.plating(), opened.text())) + '\n' +
           Text::tr("Minutes to spare") + '\n' +
           paragraphs(spareLines(opened.plating(), opened.text()));
}

/// A lesson that is not placed, or not without collisions.
Exit explainNoPlan(const Invocation& invocation, const OpenedLesson& opened, double seconds) {
    const RemedyOptions options = halfOf(seconds);
    const Explanation explanation = explainNotPossible(opened.lesson(), options.explain);
    std::vector<Remedy> remedies;
    if (!explanation.requirements.empty()) {
        remedies = whatMakesItPossible(opened.lesson(), explanation, options);
    }
    const bool placed = !opened.plating().spares.empty();
    const bool possible = explanation.status == ExplainStatus::Possible ||
                          explanation.status == ExplainStatus::Stopped;
    if (invocation.has("--json")) {
        QJsonObject object = toMachine(opened.plating(), opened.text());
        object["why_no_plan"] = machineForm(explanation, remedies, opened.text());
        say(object);
    } else if (!possible) {
        say(notPossible(explanation, remedies, opened.text()));
    } else if (placed) {
        say(platingText(opened));
        complain(
            Text::tr("Something collides, is late or has no place yet, so this is not the "
                     "last word: rangeline check says what."));
    } else {
        complain(
            Text::tr("No step is placed yet, so nothing decides plating: rangeline arrange places "
                     "them."));
    }
    return Exit::Wrong;
}

Exit explainPlan(const Invocation& invocation, const OpenedLesson& opened, double seconds) {
    const RemedyOptions options = halfOf(seconds);
    const Explanation explanation = explainPlating(opened.lesson(), options.explain);
    std::vector<Remedy> remedies;
    if (!explanation.requirements.empty()) {
        remedies = whatStartsLater(opened.lesson(), explanation, options);
    }
    if (invocation.has("--json")) {
        QJsonObject object = toMachine(opened.plating(), opened.text());
        object["why_not_later"] = machineForm(explanation, remedies, opened.text());
        say(object);
    } else {
        say(platingText(opened) + whyNotLater(explanation, remedies, opened.text()));
    }
    return Exit::Fine;
}

}  // namespace

Exit runExplain(const Invocation& invocation) {
    double seconds = 10;
    const auto opened = openLesson(invocation);
    if (!opened || !readNumber(invocation, "--limit", 0.001, 86400, seconds)) {
        return Exit::Unusable;
    }
    return allPlaced(*opened) && opened->works() ? explainPlan(invocation, *opened, seconds)
                                                 : explainNoPlan(invocation, *opened, seconds);
}

}  // namespace rangeline
