#include "book/book.h"

#include "book/book_file.h"
#include "book/checks.h"
#include "book/connection.h"
#include "book/copy_file.h"
#include "book/migration.h"
#include "book/rows.h"
#include "book/schema.h"
#include "book/seals.h"

namespace rangeline {

struct Book::Hold {
    explicit Hold(const std::string& path) : stamp(path) {}
    FileHold file;
    FileStamp stamp;
};

Book::Book(std::string path, BookAccess wanted, std::span<const SchemaVersion> history)
    : path_(std::move(path)), wanted_(wanted), history_(history) {}

Book::~Book() {
    if (connection_ && !mayWriteNow()) {
        connection_->run("PRAGMA journal_mode = DELETE");
    }
}

Result<std::unique_ptr<Book>, BookFault> Book::create(const std::string& path) {
    dropPart(path);
    std::optional<BookFault> fault;
    {
        auto connection = Connection::open(partName(path), Connection::Access::ReadWrite);
        if (!connection.ok()) {
            return connection.error();
        }
        Transaction transaction(*connection.value());
        createSchema(*connection.value(), schemaHistory().back());
        transaction.commit();
        fault = connection.value()->takeFault();
    }
    fault = fault ? fault : finishPart(path, false);
    if (fault) {
        dropPart(path);
        return *std::move(fault);
    }
    return open(path);
}

Result<std::unique_ptr<Book>, BookFault> Book::open(const std::string& path, BookAccess wanted) {
    return open(path, wanted, schemaHistory());
}

Result<std::unique_ptr<Book>, BookFault> Book::open(const std::string& path, BookAccess wanted,
                                                    std::span<const SchemaVersion> history) {
    std::unique_ptr<Book> book(new Book(path, wanted, history));
    if (auto fault = book->show()) {
        return *std::move(fault);
    }
    return book;
}

bool Book::isBook(const std::string& path) {
    return startsLikeBook(path);
}

bool Book::isNewer() const {
    return version_ > history_.back().number;
}

void Book::settle(BookState state, BookFault why) {
    state_ = state;
    why_ = std::move(why);
}

void Book::takeHold() {
    hold_ = std::make_unique<Hold>(path_);
    if (wanted_ == BookAccess::ReadOnly) {
        settle(BookState::ReadOnly, {BookFaultCode::NotVerified, {}, {}});
    } else if (isNewer()) {
        settle(BookState::ReadOnly,
               {BookFaultCode::NewerBook,
                {std::to_string(version_), std::to_string(history_.back().number)},
                {}});
    } else if (!mayWrite(path_)) {
        settle(BookState::ReadOnly, {BookFaultCode::ReadOnlyFile, {}, {}});
    } else if (!hold_->file.take(path_)) {
        settle(BookState::ReadOnly, {BookFaultCode::OpenElsewhere, {}, {}});
    } else {
        settle(BookState::Shown, {BookFaultCode::NotVerified, {}, {}});
    }
}

std::optional<BookFault> Book::reopen(BookAccess access) {
    connection_.reset();
    auto connection =
        Connection::open(path_, access == BookAccess::ReadOnly ? Connection::Access::ReadOnly
                                                               : Connection::Access::ReadWrite);
    if (!connection.ok()) {
        return connection.error();
    }
    connection_ = std::move(connection.value());
    return std::nullopt;
}

std::optional<BookFault> Book::readVersion() {
    const auto header = readHeader(path_);
    if (!header.ok()) {
        return header.error();
    }
    version_ = header.value().version;
    return std::nullopt;
}

std::optional<BookFault> Book::takeBackHalfDone() {
    // Reading takes the half-done change back, which a read-only connection could not.
    if (auto fault = reopen(BookAccess::ReadWrite)) {
        return fault;
    }
    connection_->number("PRAGMA schema_version");
    if (auto fault = connection_->takeFault()) {
        return fault;
    }
    // A migration killed while it wrote had changed the version too.
    return readVersion();
}

std::optional<BookFault> Book::show() {
    if (auto fault = readVersion()) {
        return fault;
    }
    if (hasJournal(path_) && mayWrite(path_)) {
        if (auto fault = takeBackHalfDone()) {
            return fault;
        }
    }
    takeHold();
    if (auto fault = reopen(BookAccess::ReadOnly)) {
        return fault;
    }
    hold_->stamp = FileStamp(path_);
    const Snapshot snapshot(*connection_);
    const auto known = static_cast<std::size_t>(std::min(version_, history_.back().number));
    compareSchema(*connection_, history_[known - 1], isNewer());
    readItems(*connection_);
    if (!isNewer() && storedBookSeal(*connection_) != bookSeal(*connection_)) {
        connection_->report({BookFaultCode::SealBroken, {"the list of items"}, {}});
    }
    return connection_->takeFault();
}

std::optional<BookFault> Book::verify(const std::function<bool()>& stop) {
    {
        const Snapshot snapshot(*connection_);
        checkCounts(*connection_);
        checkStructure(*connection_);
        const std::vector<Item> items = readItems(*connection_);
        if (!isNewer()) {
            checkSeals(*connection_, items, stop);
        }
        checkValues(*connection_, items, stop);
    }
    auto fault = connection_->takeFault();
    if (fault && isDamage(fault->code)) {
        settle(BookState::Refused, *fault);
    }
    return fault || state_ != BookState::Shown ? fault : becomeWritable();
}

std::optional<BookFault> Book::bringUpToDate() {
    const std::string before = path_ + ".version" + std::to_string(version_);
    if (auto fault = copyBook(*connection_, before)) {
        return fault;
    }
    if (auto fault = migrate(*connection_, history_, version_)) {
        return fault;
    }
    before_ = before;
    version_ = history_.back().number;
    return std::nullopt;
}

std::optional<BookFault> Book::becomeWritable() {
    if (auto fault = hold_->stamp.difference(path_)) {
        return fault;
    }
    if (auto fault = reopen(BookAccess::ReadWrite)) {
        return fault;
    }
    if (version_ < history_.back().number) {
        if (auto fault = bringUpToDate()) {
            return fault;
        }
    }
    // An emptied journal stays until the book is closed: making and deleting one for each edit
    // would cost two more syncs, of the folder.
    connection_->run("PRAGMA journal_mode = TRUNCATE");
    dataVersion_ = connection_->number("PRAGMA data_version");
    seal_ = storedBookSeal(*connection_);
    const FileStamp now(path_);
    if (!hold_->stamp.isOfSameFile(now)) {
        return hold_->stamp.difference(path_);
    }
    hold_->stamp = now;
    if (auto fault = connection_->takeFault()) {
        return fault;
    }
    state_ = BookState::Writable;
    why_.reset();
    return std::nullopt;
}

std::optional<BookFault> Book::mayWriteNow() const {
    if (state_ != BookState::Writable) {
        return why_;
    }
    auto fault = hold_->stamp.difference(path_);
    const bool own = fault && fault->code == BookFaultCode::ChangedElsewhere && unsettled_;
    return own ? std::nullopt : fault;
}

void Book::checkUnchanged() {
    const std::int64_t now = connection_->number("PRAGMA data_version");
    const QByteArray seal = storedBookSeal(*connection_);
    const bool unchanged =
        unsettled_ ? seal == seal_ || seal == *unsettled_ : seal == seal_ && now == dataVersion_;
    if (!connection_->failed() && !unchanged) {
        connection_->report({BookFaultCode::ChangedElsewhere, {}, {}});
    }
}

std::optional<BookFault> Book::write(const std::function<void(Connection&, Touched&)>& work) {
    if (auto fault = mayWriteNow()) {
        return fault;
    }
    QByteArray seal;
    {
        Transaction transaction(*connection_);
        checkUnchanged();
        Touched touched;
        work(*connection_, touched);
        for (const ItemId id : touched) {
            sealItem(*connection_, id.number);
        }
        sealBook(*connection_);
        seal = storedBookSeal(*connection_);
        transaction.commit();
    }
    auto fault = connection_->takeFault();
    // Another file may have come under the name meanwhile: then all of this went into the old one.
    const FileStamp now(path_);
    if (!hold_->stamp.isOfSameFile(now)) {
        held_.reset();
        return hold_->stamp.difference(path_);
    }
    if (!fault) {
        unsettled_.reset();
        seal_ = seal;
        dataVersion_ = connection_->number("PRAGMA data_version");
        hold_->stamp = now;
        return std::nullopt;
    }
    held_.reset();
    // A wish that could not be met has written nothing.
    const bool mayHaveWritten =
        fault->code < BookFaultCode::NoSuchItem && fault->code != BookFaultCode::ChangedElsewhere;
    if (mayHaveWritten && !unsettled_) {
        unsettled_ = seal;
    }
    return fault;
}

Result<std::vector<Item>, BookFault> Book::items() {
    auto items = readItems(*connection_);
    if (auto fault = connection_->takeFault()) {
        return *std::move(fault);
    }
    return items;
}

void Book::checkItemSeal(ItemId id) {
    Statement row(*connection_, "SELECT seal FROM items WHERE id = ?");
    if (!row.with(id.number).next()) {
        connection_->report({BookFaultCode::NoSuchItem, {std::to_string(id.number)}, {}});
    } else if (!isNewer() && row.bytes(0) != itemSeal(*connection_, id.number)) {
        connection_->report({BookFaultCode::SealBroken, {"item " + std::to_string(id.number)}, {}});
    }
}

template <class Value>
Result<Value, BookFault> Book::readItem(ItemId id, Value (*read)(Connection&, ItemId)) {
    const Snapshot snapshot(*connection_);
    checkItemSeal(id);
    Value value = read(*connection_, id);
    if (auto fault = connection_->takeFault()) {
        return *std::move(fault);
    }
    return value;
}

Result<Lesson, BookFault> Book::lesson(ItemId id) {
    return readItem(id, &readLessonRows);
}

Result<Dish, BookFault> Book::dish(ItemId id) {
    return readItem(id, &readDishRow);
}

Result<Kitchen, BookFault> Book::kitchen(ItemId id) {
    return readItem(id, &readKitchenRow);
}

Result<const Lesson*, BookFault> Book::heldLesson(ItemId id) {
    if (!held_ || held_->first != id) {
        auto read = lesson(id);
        if (!read.ok()) {
            return read.error();
        }
        held_.emplace(id, std::move(read.value()));
    }
    return &held_->second;
}

void Book::holdLesson(ItemId id, Lesson lesson) {
    held_.emplace(id, std::move(lesson));
}

}  // namespace rangeline
