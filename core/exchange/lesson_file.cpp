#include "exchange/lesson_file.h"

#include <QFile>
#include <QString>

#include "exchange/safe_write.h"

namespace rangeline {

Result<std::string, Fault> loadBytes(const std::string& path) {
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) {
        return Fault{FaultCode::CannotOpen, {}, {file.errorString().toStdString()}};
    }
    // One byte more than allowed tells too large a file, also where the size is not known.
    const QByteArray bytes = file.read(static_cast<qint64>(largestLessonFile) + 1);
    if (file.error() != QFileDevice::NoError) {
        return Fault{FaultCode::CannotOpen, {}, {file.errorString().toStdString()}};
    }
    return bytes.toStdString();
}

Result<Lesson, Fault> loadLesson(const std::string& path) {
    const auto bytes = loadBytes(path);
    return bytes.ok() ? readLesson(bytes.value()) : Result<Lesson, Fault>(bytes.error());
}

std::optional<Fault> saveLesson(const std::string& path, const Lesson& lesson) {
    return writeFile(path, writeLesson(lesson));
}

}  // namespace rangeline
