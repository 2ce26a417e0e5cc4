#include "window/kept_lesson.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QUuid>

#include "exchange/lesson_file.h"
#include "exchange/safe_write.h"

namespace rangeline {
namespace {

const QString ending = QStringLiteral(".unsaved");
const QString pathField = QStringLiteral("path");
const QString lessonField = QStringLiteral("lesson");

}  // namespace

KeptLesson::KeptLesson(const QString& folder, const QString& name)
    : file_(folder + u'/' + name + ending), lock_(folder + u'/' + name + QStringLiteral(".lock")) {
    lock_.setStaleLockTime(0);  // however long a program runs, the lesson is its own
}

bool KeptLesson::lock() {
    return lock_.tryLock(0);
}

std::unique_ptr<KeptLesson> KeptLesson::make(const QString& folder) {
    QDir().mkpath(folder);
    std::unique_ptr<KeptLesson> kept(
        new KeptLesson(folder, QUuid::createUuid().toString(QUuid::WithoutBraces)));
    return kept->lock() ? std::move(kept) : nullptr;
}

std::vector<std::unique_ptr<KeptLesson>> KeptLesson::left(const QString& folder) {
    std::vector<std::unique_ptr<KeptLesson>> all;
    const QDir dir(folder);
    for (const QFileInfo& info : dir.entryInfoList({u'*' + ending}, QDir::Files, QDir::Time)) {
        std::unique_ptr<KeptLesson> kept(new KeptLesson(folder, info.completeBaseName()));
        if (kept->lock()) {
            all.push_back(std::move(kept));
        }
    }
    return all;
}

std::optional<Fault> KeptLesson::keep(const Lesson& lesson, const QString& path) {
    const QJsonObject whole{{pathField, path},
                            {lessonField, QString::fromStdString(writeLesson(lesson))}};
    return writeFile(file_.toStdString(),
                     QJsonDocument(whole).toJson(QJsonDocument::Compact).toStdString());
}

std::optional<UnsavedLesson> KeptLesson::read() const {
    QFile file(file_);
    if (!file.open(QIODevice::ReadOnly) ||
        file.size() > 2 * static_cast<qint64>(largestLessonFile)) {
        return std::nullopt;
    }
    const QJsonObject whole = QJsonDocument::fromJson(file.readAll()).object();
    auto lesson = readLesson(whole.value(lessonField).toString().toStdString());
    if (!lesson.ok()) {
        return std::nullopt;
    }
    return UnsavedLesson{std::move(lesson.value()), whole.value(pathField).toString()};
}

void KeptLesson::remove() {
    QFile::remove(file_);
}

QString unsavedFolder() {
    // Relative values are to be ignored (XDG Base Directory Specification 0.8).
    QString state = qEnvironmentVariable("XDG_STATE_HOME");
    if (!QDir::isAbsolutePath(state)) {
        state = QDir::homePath() + QStringLiteral("/.local/state");
    }
    return state + QStringLiteral("/rangeline/unsaved");
}

}  // namespace rangeline
