#pragma once
// A lesson with changes that were never saved, on disk until it is saved or given up, so that it
// outlives the program. One file with a lock beside it: while a running program holds the lock, the
// lesson is that program's.

#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "model/fault.h"
#include "model/lesson.h"

namespace rangeline {

struct UnsavedLesson {
    Lesson lesson;
    QString path;  ///< of the lesson's own file; empty if it has none
};

class KeptLesson {
  public:
    /// A new one in that folder, nothing kept yet. Null if the folder cannot be written.
    static std::unique_ptr<KeptLesson> make(const QString& folder);
    /// Those that no running program holds, newest first. They are this program's from now on.
    static std::vector<std::unique_ptr<KeptLesson>> left(const QString& folder);
    /// Frees the lock; what is kept stays.
    ~KeptLesson() = default;

    std::optional<Fault> keep(const Lesson& lesson, const QString& path);
    /// Nothing if nothing is kept or it cannot be read.
    std::optional<UnsavedLesson> read() const;
    void remove();

  private:
    KeptLesson(const QString& folder, const QString& name);
    bool lock();

    QString file_;
    QLockFile lock_;
};

/// Where this user's unsaved lessons are kept: in XDG_STATE_HOME, or in its usual place.
QString unsavedFolder();

}  // namespace rangeline
