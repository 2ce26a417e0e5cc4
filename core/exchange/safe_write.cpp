#include "exchange/safe_write.h"

#include <QFileInfo>
#include <QSaveFile>
#include <QString>

namespace rangeline {
namespace {

/// Every step counts: on a full disk Qt's write() comes up short or flush() fails, while error()
/// or commit() alone may still claim success (seen with 6.4.2).
bool writeWhole(QFileDevice& file, std::string_view bytes) {
    const auto size = static_cast<qint64>(bytes.size());
    return file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size &&
           file.flush() && file.error() == QFileDevice::NoError;
}

Fault cannotWrite(const QString& reason) {
    return {FaultCode::CannotWrite, {}, {reason.toStdString()}};
}

/// A pipe or a device has no old content to keep, and must not be replaced by a file: QSaveFile
/// would rename over it.
std::optional<Fault> writeInto(const QString& path, std::string_view bytes) {
    QFile file(path);
    if (writeWhole(file, bytes)) {
        return std::nullopt;
    }
    return cannotWrite(file.errorString());
}

std::optional<Fault> replaceFile(const QString& path, std::string_view bytes) {
    QSaveFile file(path);
    const bool written = writeWhole(file, bytes);
    const QString reason = file.errorString();
    if (!written) {
        file.cancelWriting();
    }
    if (file.isOpen() && file.commit() && written) {
        return std::nullopt;
    }
    return cannotWrite(written ? file.errorString() : reason);
}

}  // namespace

std::optional<Fault> writeFile(const std::string& path, std::string_view bytes) {
    const QString name = QString::fromStdString(path);
    const QFileInfo there(name);
    const bool special = there.exists() && !there.isFile() && !there.isDir();
    return special ? writeInto(name, bytes) : replaceFile(name, bytes);
}

}  // namespace rangeline
