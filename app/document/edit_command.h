#pragma once

#include <QUndoCommand>
#include <vector>

#include "document/lesson_document.h"

namespace rangeline {

/// The one command of the undo stack: edits that are done and taken back together. Each edit is
/// exchanged for its inverse when it is applied, so that doing and taking back are the same act in
/// opposite order.
class EditCommand : public QUndoCommand {
  public:
    /// The document owns the stack that owns the command.
    EditCommand(LessonDocument& document, std::vector<Edit> edits, const QString& text,
                GestureId gesture);

    void redo() override { document_.play(edits_, text(), false); }
    void undo() override { document_.play(edits_, text(), true); }
    int id() const override { return 1; }
    /// Only commands of one gesture become one.
    bool mergeWith(const QUndoCommand* other) override;

  private:
    LessonDocument& document_;
    std::vector<Edit> edits_;  ///< in the order in which they are applied next
    GestureId gesture_;
};

}  // namespace rangeline
