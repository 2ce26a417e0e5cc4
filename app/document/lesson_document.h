#pragma once
// The open lesson: what everything on screen shows and the one seam, apply(), through which
// everything on screen changes it.

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <memory>
#include <optional>
#include <vector>

#include "document/lesson_state.h"
#include "model/fault.h"
#include "text/names.h"

namespace rangeline {

/// A step of undo that was done in an earlier session, with the edits that take it back, or do it
/// again, in the order in which they are applied.
struct EarlierStep {
    QString text;
    std::vector<Edit> edits;
};

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
    /// What the user reads temperatures, lengths and hours in, whatever the lesson was written in;
    /// nothing: what the lesson says. The lesson stays as it is.
    void setUnits(std::optional<Units> units);
    Units units() const { return units_.value_or(lesson().head.units); }
    /// The lesson's head in these units.
    Head shownHead() const;
    /// The lesson's name as one of a file, without an ending.
    QString nameForFile() const;
    /// For sentences about the lesson, in these units. Holds until the lesson changes.
    TextContext text(const QLocale& locale) const {
        return {lesson(), expanded(), locale, units()};
    }
    /// For placing.h and repairs.h, which try things out; nothing stays changed by that.
    LessonState& state() const { return *state_; }

    /// The one way to change the lesson. An edit that changes nothing is dropped; one that would
    /// make the lesson unusable is refused with the reason. `text` names the step of undo ("move
    /// “Roast the thighs”"). Edits that follow each other with the same `gesture` (not 0) are taken
    /// back together.
    std::optional<Fault> apply(Edit edit, const QString& text, GestureId gesture = 0);
    /// Several edits as one step, refused or accepted by what they come to together; at most one of
    /// each kind.
    std::optional<Fault> apply(std::vector<Edit> edits, const QString& text, GestureId gesture = 0);
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
    /// Undo and redo go on with these: what is taken back first is the last of `undo`, what is done
    /// again first is the first of `redo`. Requires that the lesson is as these steps left it.
    void goOnWithSteps(std::vector<EarlierStep> undo, std::vector<EarlierStep> redo);
    /// Shows the empty lesson again.
    void close();
    /// What keeps every change by itself, such as a book, says here whether all is kept; files do
    /// not matter then, until another lesson is shown. Nothing: it no longer keeps any.
    void setKept(std::optional<bool> kept);
    bool isKeptByItself() const { return kept_.has_value(); }
    /// The same as setLesson(), with changes that are not saved in its file.
    void goOnWith(Lesson lesson, const QString& path);
    /// On a fault everything stays as it was.
    std::optional<Fault> load(const QString& path);
    /// Saves and from then on belongs to that file.
    std::optional<Fault> save(const QString& path);
    /// Empty while the lesson has never been saved.
    const QString& path() const { return path_; }
    bool isModified() const { return kept_ ? !*kept_ : !undoStack_.isClean(); }

  Q_SIGNALS:
    /// After every change: an edit, undo, redo, another lesson.
    void changed(const rangeline::LessonChange& change);
    /// For who keeps what is done: apply() has done this ...
    void applied(const std::vector<rangeline::Edit>& edits, const QString& text,
                 rangeline::GestureId gesture);
    /// ... and a step was taken back or done again. A gesture that ends where it began is taken
    /// back, too.
    void replayed(const QString& text, bool undone);
    void modifiedChanged(bool modified);
    void pathChanged(const QString& path);

  private:
    friend class EditCommand;
    /// What commands do: plays the edits and leaves in their place those that take them back.
    void play(std::vector<Edit>& edits, const QString& text, bool undone);

    std::unique_ptr<LessonState> state_;
    QUndoStack undoStack_;
    QString path_;
    GestureId lastGesture_ = 0;
    std::optional<bool> kept_;
    std::optional<Units> units_;
    bool pushing_ = false;  ///< the stack plays a step that is new to it
    bool quiet_ = false;    ///< steps are put on the stack without being played
};

}  // namespace rangeline
