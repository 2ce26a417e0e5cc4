#include "window/recent_files.h"

#include <QFileInfo>
#include <QSettings>

namespace rangeline {
namespace {

const QString key = QStringLiteral("recentLessons");

}  // namespace

QStringList RecentFiles::list() const {
    return QSettings().value(key).toStringList();
}

void RecentFiles::add(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    QStringList paths = list();
    paths.removeAll(whole);
    paths.prepend(whole);
    QSettings().setValue(key, QStringList(paths.mid(0, most)));
}

void RecentFiles::clear() {
    QSettings().remove(key);
}

}  // namespace rangeline
