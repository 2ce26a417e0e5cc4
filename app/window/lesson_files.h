#pragma once
// Opening and saving lessons, with the questions that belong to it.

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

    /// Whether the open lesson may be left: it has no unsaved changes, or they were saved or given
    /// up.
    bool mayLeave();
    /// Asks for a file. True if another lesson is open now.
    bool open();
    /// On a fault says why, and the open lesson stays. True if it is open now.
    bool openFile(const QString& path);
    /// Asks for a file where the lesson has none yet. True if it was saved.
    bool save();
    bool saveAs();

    RecentFiles& recent() { return recent_; }

  Q_SIGNALS:
    void said(const QString& text);

  private:
    bool saveTo(const QString& path);
    QString folder() const;

    LessonDocument& document_;
    QWidget& window_;
    RecentFiles recent_;
};

}  // namespace rangeline
