#pragma once
// The book: one SQLite file that keeps kitchens, dishes, lessons with their undo journal and named
// versions, the cooking log and settings. Nothing needs saving: what write() has returned from
// without a fault is on the disk.
//
// A book belongs to the thread that opened it (see book_thread.h for one of its own); several
// threads open it several times. After open() it is shown: it can be read, and its list is known to
// be as it was written; each item is checked when it is read. verify() checks everything and makes
// it writable.

#include <QByteArray>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/result.h"
#include "book/book_fault.h"
#include "book/items.h"
#include "model/lesson.h"

namespace rangeline {

class Connection;
struct SchemaVersion;

enum class BookAccess : std::uint8_t { ReadOnly, ReadWrite };
enum class BookState : std::uint8_t {
    Shown,     ///< verify() has not ended yet
    Writable,  ///< verified
    ReadOnly,  ///< and stays so; whyNotWritable() says why
    Refused    ///< found damaged by verify()
};

class Book {
  public:
    /// A new book without items. AlreadyThere if the file exists; CannotOpen, DiskFull,
    /// CannotWrite.
    static Result<std::unique_ptr<Book>, BookFault> create(const std::string& path);
    /// Reads the file but never changes it, except for taking back a change that a crash left half
    /// done. Then whatever is listed before NotVerified in BookFaultCode.
    static Result<std::unique_ptr<Book>, BookFault> open(const std::string& path,
                                                         BookAccess wanted = BookAccess::ReadWrite);
    /// Whether the file is one of SQLite's, so that opening it as a book says more than reading it
    /// as a lesson would.
    static bool isBook(const std::string& path);
    ~Book();
    Book(const Book&) = delete;
    Book& operator=(const Book&) = delete;

    /// Everything: the file's structure, every reference, every seal, every value. Brings an older
    /// book up to date after making a copy of it beside it (copyBeforeMigration()). `stop` is asked
    /// now and then; when it says so the book stays as it is, NotVerified.
    std::optional<BookFault> verify(const std::function<bool()>& stop = {});

    const std::string& path() const { return path_; }
    BookState state() const { return state_; }
    /// NotVerified while shown.
    const std::optional<BookFault>& whyNotWritable() const { return why_; }
    /// The copy made before the book was brought up to date by verify(); the undo journal began
    /// anew then. Empty if it was not.
    const std::string& copyBeforeMigration() const { return before_; }

    /// In the order in which they were made, deleted ones too.
    Result<std::vector<Item>, BookFault> items();
    /// SealBroken or BadValue if it is not as it was written; NoSuchItem.
    Result<Lesson, BookFault> lesson(ItemId id);
    Result<Dish, BookFault> dish(ItemId id);
    Result<Kitchen, BookFault> kitchen(ItemId id);

    // ---- for core/book: what the functions of its other headers are made of --------------------

    Connection& connection() { return *connection_; }
    /// One transaction: does the work, seals the items that it names and the book, and commits.
    /// Returns the work's own fault, or what kept it from being written; then nothing has changed.
    using Touched = std::vector<ItemId>;
    std::optional<BookFault> write(const std::function<void(Connection&, Touched&)>& work);
    /// The lesson as last written or read by editing, so that an edit need not read all of it.
    Result<const Lesson*, BookFault> heldLesson(ItemId id);
    void holdLesson(ItemId id, Lesson lesson);
    void holdNoLesson() { held_.reset(); }
    /// Undo continues a gesture only within one session.
    struct Gesture {
        ItemId lesson;
        int number = 0;
        std::int64_t entry = 0;
    };
    Gesture lastGesture;
    /// With other versions than those there are, for tests of migration.
    static Result<std::unique_ptr<Book>, BookFault> open(const std::string& path, BookAccess wanted,
                                                         std::span<const SchemaVersion> history);

  private:
    struct Hold;
    Book(std::string path, BookAccess wanted, std::span<const SchemaVersion> history);
    std::optional<BookFault> show();
    std::optional<BookFault> readVersion();
    std::optional<BookFault> takeBackHalfDone();
    void takeHold();
    void settle(BookState state, BookFault why);
    std::optional<BookFault> reopen(BookAccess access);
    std::optional<BookFault> bringUpToDate();
    std::optional<BookFault> becomeWritable();
    std::optional<BookFault> mayWriteNow() const;
    void checkUnchanged();
    bool isNewer() const;
    void checkItemSeal(ItemId id);
    template <class Value>
    Result<Value, BookFault> readItem(ItemId id, Value (*read)(Connection&, ItemId));

    std::string path_;
    BookAccess wanted_;
    std::span<const SchemaVersion> history_;
    int version_ = 0;
    BookState state_ = BookState::Shown;
    std::optional<BookFault> why_;
    std::string before_;
    std::unique_ptr<Hold> hold_;  ///< outlives the connection: see readHeader()
    std::unique_ptr<Connection> connection_;
    std::int64_t dataVersion_ = 0;
    QByteArray seal_;  ///< the book's, when it was last known
    /// After a write that failed: the seal it would have left. SQLite takes the change back at the
    /// next reading, so that the file looks changed; whose change it is, the seal tells.
    std::optional<QByteArray> unsettled_;
    std::optional<std::pair<ItemId, Lesson>> held_;
};

}  // namespace rangeline
