// Books of other versions. Beside this file lies a book of every version there has been.

#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <cstdio>
#include <filesystem>

#include "book/book_support.h"
#include "book/book_thread.h"
#include "book/connection.h"
#include "book/schema.h"
#include "exchange/lesson_file.h"

namespace rangeline::test {
namespace {

/// The book, and the lesson in it as a file.
std::string fixture(int version, const char* ending = ".rangeline") {
    return std::string(RANGELINE_SOURCE_DIR) + "/tests/book/fixtures/version" +
           std::to_string(version) + ending;
}

Lesson lessonOf(int version) {
    auto lesson = loadLesson(fixture(version, ".json"));
    EXPECT_TRUE(lesson.ok());
    return std::move(lesson.value());
}

class Migration : public BookFolder {
  protected:
    void copyFixture(int version) const { std::filesystem::copy_file(fixture(version), path()); }
};

TEST_F(Migration, ABookOfEveryVersionIsOpenedAndBroughtUpToDate) {
    for (const SchemaVersion& version : schemaHistory()) {
        SCOPED_TRACE(version.number);
        copyFixture(version.number);
        auto book = opened(path());
        ASSERT_TRUE(book);
        EXPECT_EQ(book->state(), BookState::Writable);
        const auto items = take(book->items());
        ASSERT_EQ(items.size(), 3U);
        EXPECT_TRUE(take(book->lesson(items.back().id)) == lessonOf(version.number));
        std::filesystem::remove(path());
    }
}

/// A version after the newest, with one more table.
std::vector<SchemaVersion> longerHistory(std::vector<SchemaPart>& parts,
                                         void (*migrate)(Connection&)) {
    std::vector<SchemaVersion> history(schemaHistory().begin(), schemaHistory().end());
    parts.assign(history.back().parts.begin(), history.back().parts.end());
    parts.push_back({"notes", "CREATE TABLE notes(id INTEGER PRIMARY KEY, text TEXT) STRICT"});
    history.push_back({history.back().number + 1, parts, migrate});
    return history;
}

void addNotes(Connection& connection) {
    connection.run("CREATE TABLE notes(id INTEGER PRIMARY KEY, text TEXT) STRICT");
}

void addNotesAndFail(Connection& connection) {
    addNotes(connection);
    connection.run("INSERT INTO notes VALUES('no number', '')");
}

TEST_F(Migration, KeepsACopyAndStartsTheJournalAnew) {
    copyFixture(1);
    std::vector<SchemaPart> parts;
    const auto history = longerHistory(parts, &addNotes);
    auto book = take(Book::open(path(), BookAccess::ReadWrite, history));
    const ItemId id = take(book->items()).back().id;
    EXPECT_FALSE(take(undoSteps(*book, id)).undo.empty());
    ASSERT_FALSE(book->verify());
    EXPECT_EQ(book->state(), BookState::Writable);
    EXPECT_TRUE(take(undoSteps(*book, id)).undo.empty());
    EXPECT_TRUE(take(book->lesson(id)) == lessonOf(1));
    EXPECT_FALSE(rename(*book, id, "Later"));
    auto before = opened(book->copyBeforeMigration());
    EXPECT_FALSE(take(undoSteps(*before, id)).undo.empty());
    // For the program of before it is a newer book now: it can be read.
    book = nullptr;
    auto newer = take(Book::open(path()));
    EXPECT_EQ(newer->state(), BookState::ReadOnly);
    EXPECT_EQ(newer->whyNotWritable()->code, BookFaultCode::NewerBook);
    EXPECT_EQ(take(newer->lesson(id)).head.name, "Later");
    EXPECT_EQ(rename(*newer, id, "Earlier")->code, BookFaultCode::NewerBook);
}

TEST_F(Migration, ThatFailsLeavesTheBookAsItWas) {
    copyFixture(1);
    std::vector<SchemaPart> parts;
    const auto history = longerHistory(parts, &addNotesAndFail);
    auto book = take(Book::open(path(), BookAccess::ReadWrite, history));
    EXPECT_TRUE(book->verify());
    EXPECT_NE(book->state(), BookState::Writable);
    book = nullptr;
    EXPECT_EQ(opened(path())->state(), BookState::Writable);
}

void addNotesSlowly(Connection& connection) {
    addNotes(connection);
    for (int i = 0; i < 200; ++i) {
        connection.run("INSERT INTO notes(text) VALUES(hex(zeroblob(4000)))");
        usleep(200);
    }
}

/// Killed at any moment the book is of the old version or of the new one, and goes on.
TEST_F(Migration, KilledMidwayTheBookIsWholeAndMigratesTheNextTime) {
    const std::uint64_t seed = seedOr(1);
    Random random(seed);
    std::vector<SchemaPart> parts;
    const auto history = longerHistory(parts, &addNotesSlowly);
    constexpr int trials = 20;
    int cutOff = 0;
    for (int trial = 0; trial < trials; ++trial) {
        SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed) + " trial " + std::to_string(trial));
        std::filesystem::remove(path());
        std::filesystem::remove(path() + "-journal");
        copyFixture(1);
        const pid_t child = fork();
        if (child == 0) {
            auto book = Book::open(path(), BookAccess::ReadWrite, history);
            _exit(book.ok() && !book.value()->verify() ? 0 : 1);
        }
        usleep(static_cast<useconds_t>(random.between(1'000, 120'000)));
        kill(child, SIGKILL);
        int status = 0;
        waitpid(child, &status, 0);
        cutOff += WIFSIGNALED(status) ? 1 : 0;
        auto book = take(Book::open(path(), BookAccess::ReadWrite, history));
        ASSERT_TRUE(book);
        const auto fault = book->verify();
        ASSERT_FALSE(fault) << said(fault);
        EXPECT_EQ(book->state(), BookState::Writable);
        EXPECT_TRUE(take(book->lesson(take(book->items()).back().id)) == lessonOf(1));
    }
    std::printf("%d of %d were cut off\n", cutOff, trials);
    EXPECT_GT(cutOff, 0);
}

class OnAThread : public BookFolder {};

TEST_F(OnAThread, EditsAskedForAtOnceComeAfterVerifying) {
    const Lesson lesson = someLesson(1);
    const ItemId id = take(addLesson(*created(path()), lesson));
    auto shown = take(Book::open(path(), BookAccess::ReadOnly));
    std::atomic<bool> verified = false;
    std::vector<std::optional<BookFault>> faults;
    {
        BookThread thread(path(), BookAccess::ReadWrite,
                          [&](Book*, const std::optional<BookFault>& fault) { verified = !fault; });
        for (int i = 0; i < 20; ++i) {
            thread.post([&, i](Book& book) {
                EXPECT_TRUE(verified);
                Random random(static_cast<std::uint64_t>(i));
                faults.push_back(applyEdit(book, id, someMove(random, lesson), "move"));
            });
            EXPECT_TRUE(shown->lesson(id).ok());
        }
    }
    EXPECT_EQ(faults, std::vector<std::optional<BookFault>>(20));
    EXPECT_EQ(take(undoSteps(*opened(path()), id)).undo.size(), 20U);
}

TEST_F(OnAThread, ABookThatCannotBeOpenedSaysSo) {
    std::optional<BookFault> why;
    {
        BookThread thread(path("none"), BookAccess::ReadWrite,
                          [&](Book*, const std::optional<BookFault>& fault) { why = fault; });
        thread.post([](Book&) { FAIL(); });
    }
    EXPECT_EQ(why->code, BookFaultCode::CannotOpen);
}

}  // namespace
}  // namespace rangeline::test
