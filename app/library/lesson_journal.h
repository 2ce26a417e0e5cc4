#pragma once
// Keeps each change of the open lesson in the book it came from.

#include <QObject>
#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "document/lesson_document.h"
#include "library/open_book.h"

namespace rangeline {

/// One change after the other is handed to the book's thread; the next one once the last is on the
/// disk. Where one cannot be written it waits here, with those after it.
class LessonJournal : public QObject {
    Q_OBJECT

  public:
    /// The document outlives it.
    explicit LessonJournal(LessonDocument& document, QObject* parent = nullptr);

    /// From now on the document's changes belong to that lesson of the book, which is `there` now,
    /// until the document shows another lesson; what the document shows else is kept at once. The
    /// book outlives that.
    void follow(OpenBook& book, ItemId lesson, const Lesson& there);
    /// Goes on in a copy of the book, with what waits.
    void goOnIn(OpenBook& copy);
    void leave();

    const std::optional<ItemId>& lesson() const { return lesson_; }
    bool isKept() const { return waiting_.empty(); }
    /// Why what waits was not written; nothing while it is being written.
    const std::optional<BookFault>& fault() const { return fault_; }
    void retry();
    /// Waits until all is kept, or cannot be.
    void finish();

  Q_SIGNALS:
    void changed();

  private:
    enum class Kind : std::uint8_t { Applied, Undone, Redone, CaughtUp };
    struct Step {
        Kind kind = Kind::Applied;
        std::vector<Edit> edits;
        std::string name;
        GestureId gesture = 0;
        std::optional<Lesson> wanted;  ///< except after Applied
    };
    static std::optional<BookFault> write(Book& book, ItemId lesson, const Step& step);
    void add(Step step);
    void send();
    void answered(int round, std::optional<BookFault> fault);

    LessonDocument& document_;
    OpenBook* book_ = nullptr;
    std::optional<ItemId> lesson_;
    std::deque<std::shared_ptr<const Step>> waiting_;
    std::optional<BookFault> fault_;
    int round_ = 0;  ///< answers of earlier rounds come too late
};

}  // namespace rangeline
