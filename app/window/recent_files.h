#pragma once

#include <QStringList>

namespace rangeline {

/// The lessons opened last, newest first, kept in the user's settings.
class RecentFiles {
  public:
    static constexpr int most = 8;

    QStringList list() const;
    void add(const QString& path);
    void clear();
};

}  // namespace rangeline
