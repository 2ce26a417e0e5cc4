#include "exchange/safe_write.h"

#include <QSaveFile>
#include <QString>

namespace rangeline {

std::optional<Fault> writeFile(const std::string& path, std::string_view bytes) {
    QSaveFile file(QString::fromStdString(path));
    // On a full disk Qt's commit() alone reports success and replaces the old file by a cut one
    // (seen with 6.4.2), so every step before it is checked, and any doubt cancels.
    const auto size = static_cast<qint64>(bytes.size());
    bool ok = file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size &&
              file.flush() && file.error() == QFileDevice::NoError;
    const QString reason = file.errorString();
    if (!ok) {
        file.cancelWriting();
    }
    ok = file.isOpen() && file.commit() && ok;
    if (ok) {
        return std::nullopt;
    }
    const QString last = file.error() == QFileDevice::NoError ? reason : file.errorString();
    return Fault{FaultCode::CannotWrite, {}, {last.toStdString()}};
}

}  // namespace rangeline
