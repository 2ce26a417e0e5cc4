#pragma once

#include <QObject>
#include <QTimer>

#include "document/lesson_document.h"
#include "window/kept_lesson.h"

namespace rangeline {

/// Keeps the open lesson on disk while it has changes that are not saved: a moment after each
/// change, so that an end without a word costs a fifth of a second of work at most.
class Recovery : public QObject {
    Q_OBJECT

  public:
    /// The document outlives it.
    Recovery(LessonDocument& document, QString folder, QObject* parent = nullptr);

    /// Goes on with what an earlier run has left: from now on the document's changes go there.
    void goOnWith(std::unique_ptr<KeptLesson> kept);
    /// Keeps what is not saved yet, now.
    void flush();
    /// The changes are given up: nothing is kept.
    void discard();

  Q_SIGNALS:
    /// Once, if nothing can be kept.
    void failed(const rangeline::Fault& fault);

  private:
    void changed();

    LessonDocument& document_;
    QString folder_;
    std::unique_ptr<KeptLesson> kept_;
    QTimer soon_;
    bool hasFailed_ = false;
};

}  // namespace rangeline
