#pragma once
// The open lesson: what everything on screen shows and the one seam, apply(), through which
// everything on screen changes it.

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <memory>
#include <optional>

#include "document/lesson_state.h"
#include "model/fault.h"

namespace rangeline {

/// Edits of one gesture become one step of undo. 0: on its own.
using GestureId = int;

class LessonDocument : public QObject {
    Q_OBJECT

  public:
    /// Holds an empty lesson: no dishes, an empty kitchen, one cook.
    explicit LessonDocument(QObject* parent = nullptr);
    ~LessonDocument() override;

    const Lesson& lesson() const { return state_->lesson(); }
    const Expanded& expanded() const { return state_->expanded(); }
    const UseIndex& index() const { return state_->index(); }
    const std::vector<Finding>& findings() const { return state_->findings(); }
    const PlatingAnalysis& analysis() const { return state_->analysis(); }
    /// For placing.h and repairs.h, which try things out; nothing stays changed by that.
    LessonState& state() const { return *state_; }

    /// The one way to change the lesson. An edit that changes nothing is dropped; one that would
    /// make the lesson unusable is refused with the reason. `text` names the step of undo ("move
    /// “Roast the thighs”"). Edits that follow each other with the same `gesture` (not 0) are taken
    /// back together.
    std::optional<Fault> apply(Edit edit, const QString& text, GestureId gesture = 0);
    /// A number that no gesture has had yet.
    GestureId newGesture() { return ++lastGesture_; }
    QUndoStack& undoStack() { return undoStack_; }

    /// Findings among what the edit touches, and a look at the lesson as it would be. Nothing stays
    /// changed. See LessonState::tryOut.
    std::vector<Finding> preview(const SetPlacements& edit, const LookAtTrial& look = {}) const {
        return state_->tryOut(edit, look);
    }

    /// Shows another lesson; undo begins anew. Requires validate(lesson) to be empty.
    void setLesson(Lesson lesson, const QString& path = {});
    /// The same, with changes that are not saved in its file.
    void goOnWith(Lesson lesson, const QString& path);
    /// On a fault everything stays as it was.
    std::optional<Fault> load(const QString& path);
    /// Saves and from then on belongs to that file.
    std::optional<Fault> save(const QString& path);
    /// Empty while the lesson has never been saved.
    const QString& path() const { return path_; }
    bool isModified() const { return !undoStack_.isClean(); }

  Q_SIGNALS:
    /// After every change: an edit, undo, redo, another lesson.
    void changed(const rangeline::LessonChange& change);
    void modifiedChanged(bool modified);
    void pathChanged(const QString& path);

  private:
    friend class EditCommand;
    void exchange(Edit& edit);

    std::unique_ptr<LessonState> state_;
    QUndoStack undoStack_;
    QString path_;
    GestureId lastGesture_ = 0;
};

}  // namespace rangeline
