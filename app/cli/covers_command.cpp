#include "cli/covers_command.h"

#include <QCoreApplication>

#include "check/covers_change.h"
#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "model/validate.h"
#include "text/columns.h"
#include "text/covers_text.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(CoversCommand)
};

/// The last word is the covers, the others name the lesson.
std::optional<int> takeCovers(Invocation& invocation) {
    const QString word = invocation.more.takeLast();
    bool whole = false;
    const int covers = word.toInt(&whole);
    if (!whole || covers < 1) {
        complain(Text::tr("“%1” is no number of covers: give a whole number from 1 on.").arg(word));
        return std::nullopt;
    }
    return covers;
}

/// Nothing, with a sentence on stderr, where it cannot be served to so many.
std::optional<Lesson> servedTo(Lesson lesson, int covers) {
    for (Serving& serving : lesson.servings) {
        serving.covers = covers;
    }
    if (const auto faults = validate(lesson, 1); !faults.empty()) {
        complain(sentence(faults.front()));
        return std::nullopt;
    }
    return lesson;
}

QString changeText(const CoversChange& change, const TextContext& after) {
    if (change.covers.empty()) {
        return Text::tr("It is served to so many already: nothing changes.") + '\n';
    }
    const int width = terminalWidth();
    QString text;
    for (const CoversSection& section : coversSections(change, after)) {
        text += (text.isEmpty() ? QString() : QStringLiteral("\n")) + section.heading + '\n';
        for (const QString& line : section.lines) {
            text += QStringLiteral("  - ") +
                    wrapped(line, width - 4).join(QStringLiteral("\n    ")) + '\n';
        }
    }
    return text;
}

}  // namespace

Exit runCovers(const Invocation& invocation) {
    Invocation ofLesson = invocation;
    const auto covers = takeCovers(ofLesson);
    const auto before = covers ? openLesson(ofLesson) : nullptr;
    auto lesson = before ? servedTo(before->lesson(), *covers) : std::nullopt;
    if (!lesson) {
        return Exit::Unusable;
    }
    const OpenedLesson after(std::move(*lesson), invocation.locale);
    const CoversChange change = coversChange(before->index(), after.index());
    if (invocation.has("--json")) {
        say(toMachine(change, after.text()));
    } else {
        say(changeText(change, after.text()));
    }
    return Exit::Fine;
}

}  // namespace rangeline
