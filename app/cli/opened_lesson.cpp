#include "cli/opened_lesson.h"

#include <QCoreApplication>
#include <QFile>
#include <algorithm>
#include <cstdio>

#include "cli/output.h"
#include "exchange/lesson_file.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

Result<Lesson, Fault> readStandardInput() {
    QFile input;
    if (!input.open(stdin, QIODevice::ReadOnly)) {
        return Fault{FaultCode::CannotOpen, {}, {input.errorString().toStdString()}};
    }
    // One byte more than is allowed, so that too much is noticed without being read.
    return readLesson(input.read(static_cast<qint64>(largestLessonFile) + 1).toStdString());
}

}  // namespace

OpenedLesson::OpenedLesson(Lesson lesson, const QLocale& locale)
    : lesson_(std::move(lesson)),
      expanded_(expand(lesson_)),
      index_(lesson_, expanded_),
      text_{lesson_, expanded_, locale},
      findings_(Findings(index_).all()),
      plating_(analysePlating(index_)) {}

bool OpenedLesson::works() const {
    return std::ranges::none_of(findings_, [this](const Finding& finding) {
        return finding.severity == Severity::Collision ||
               (finding.severity == Severity::Late && !lesson_.head.lateAllowed);
    });
}

std::optional<Lesson> readLesson(const Invocation& invocation) {
    auto read = invocation.file == QStringLiteral("-")
                    ? readStandardInput()
                    : loadLesson(QFile::encodeName(invocation.file).toStdString());
    if (!read.ok()) {
        complain(QStringLiteral("%1: %2").arg(invocation.file, sentence(read.error())));
        return std::nullopt;
    }
    return std::move(read.value());
}

std::unique_ptr<OpenedLesson> openLesson(const Invocation& invocation) {
    auto lesson = readLesson(invocation);
    return lesson ? std::make_unique<OpenedLesson>(std::move(*lesson), invocation.locale) : nullptr;
}

}  // namespace rangeline
