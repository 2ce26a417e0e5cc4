#pragma once
// Lessons from files and to files, with the questions that belong to it.

#include <QObject>
#include <QWidget>

#include "document/lesson_document.h"
#include "window/recent_files.h"

namespace rangeline {

class LessonFiles : public QObject {
    Q_OBJECT

  public:
    /// Questions appear over `window`.
    LessonFiles(LessonDocument& document, QWidget& window);

    /// Whether the open lesson, which is in no book, may be left: it has no unsaved changes, or
    /// they were copied out or given up.
    bool mayLeave();
    /// Asks for the file of a lesson or a book; empty if none is chosen.
    QString ask();
    /// On a fault says why, and the open lesson stays. True if it is open now.
    bool openFile(const QString& path);
    /// Asks for a file. A lesson that is in no book belongs to that file from then on. True if it
    /// was written.
    bool copyOut();

    RecentFiles& recent() { return recent_; }

  Q_SIGNALS:
    void said(const QString& text);

  private:
    bool copyTo(const QString& path);
    QString folder() const;

    LessonDocument& document_;
    QWidget& window_;
    RecentFiles recent_;
};

}  // namespace rangeline
