// What a kitchen laptop does to a book: disks that fail and fill up, files moved away or changed by
// others, media that cannot be written.

#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include <gmock/gmock.h>

#include "book/book_support.h"
#include "book/connection.h"
#include "book/failing_disk.h"

namespace rangeline::test {
namespace {

using testing::AnyOf;

class BookFaults : public BookFolder {
  protected:
    BookFaults() { FailingDisk::install(); }
};

struct Trouble {
    DiskTrouble kind;
    bool sticky;
};

/// Makes the n-th act of the disk fail, n = 1, 2, 3 ... until none does. `act` is given the book
/// and returns its fault; `after` must hold for the book as it is then.
template <class Act, class After>
void failEveryAct(const std::string& path, Act act, After after) {
    for (const Trouble trouble : {Trouble{DiskTrouble::Error, false},
                                  {DiskTrouble::Error, true},
                                  {DiskTrouble::Full, false},
                                  {DiskTrouble::Full, true}}) {
        int n = 0;
        for (bool failed = true; failed && n < 500;) {
            ++n;
            SCOPED_TRACE("act " + std::to_string(n) + (trouble.sticky ? " and all after" : ""));
            auto book = opened(path);
            std::optional<BookFault> fault;
            {
                const FailingDisk disk(n, trouble.kind, trouble.sticky);
                fault = act(*book);
                failed = disk.failed();
            }
            if (fault) {
                EXPECT_THAT(fault->code, AnyOf(BookFaultCode::CannotWrite, BookFaultCode::DiskFull,
                                               BookFaultCode::CannotOpen))
                    << said(fault);
            }
            after(*book, fault);
            book = nullptr;
            book = opened(path);
            ASSERT_TRUE(book);
            after(*book, fault);
        }
        EXPECT_GT(n, 5);
        EXPECT_LT(n, 500);
    }
}

TEST_F(BookFaults, AnEditThatADiskFailsIsNotDoneAndTheNextOneIs) {
    Lesson lesson = someLesson(1);
    const ItemId id = take(addLesson(*created(path()), lesson));
    Random random(seedOr(11));
    SetPlacements edit;
    failEveryAct(
        path(),
        [&](Book& book) {
            edit = someMove(random, lesson);
            return applyEdit(book, id, edit, "move");
        },
        [&](Book& book, const std::optional<BookFault>& fault) {
            Lesson moved = lesson;
            apply(moved, edit);
            // A disk that fails when the journal is taken away may have done the edit all the same;
            // what counts is that what was said to be done is done.
            const Lesson found = take(book.lesson(id));
            EXPECT_TRUE(found == moved || (fault && found == lesson));
            lesson = found;
            ASSERT_FALSE(applyEdit(book, id, SetChoices{lesson.choices}, "again"));
        });
}

TEST_F(BookFaults, ACopyThatADiskFailsLeavesTheOldCopy) {
    auto book = created(path());
    const ItemId id = take(addLesson(*book, someLesson(1)));
    ASSERT_FALSE(saveCopy(*book, path("copy.rangeline")));
    ASSERT_FALSE(rename(*book, id, "Renamed"));
    book = nullptr;
    failEveryAct(
        path(), [&](Book& open) { return saveCopy(open, path("copy.rangeline")); },
        [&](Book&, const std::optional<BookFault>& fault) {
            const auto copy = opened(path("copy.rangeline"));
            ASSERT_TRUE(copy);
            const std::string name = take(copy->lesson(id)).head.name;
            EXPECT_TRUE(name == "Renamed" || (fault && name == "Lesson 1"));
        });
}

TEST_F(BookFaults, AFileSizeLimitIsAFaultAndNoCrash) {
    const ItemId id = take(addLesson(*created(path()), someLesson(1)));
    const pid_t child = fork();
    if (child == 0) {
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{4096, 4096};
        setrlimit(RLIMIT_FSIZE, &limit);
        auto book = opened(path());
        const auto fault = applyEdit(*book, id, SetChoices{}, "edit");
        _exit(fault && fault->code == BookFaultCode::CannotWrite ? 0 : 1);
    }
    int status = -1;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << status;
    EXPECT_TRUE(take(opened(path())->lesson(id)) == someLesson(1));
}

TEST_F(BookFaults, ABookMovedReplacedOrWrittenByOthersIsNotWritten) {
    struct Case {
        BookFaultCode code;
        void (*happens)(const std::string& path, const std::string& other);
    };
    const std::string other = path("other.rangeline");
    for (const Case& one :
         {Case{BookFaultCode::Gone,
               [](const std::string&path, const std::string&to) {
                   std::rename(path.c_str(), to.c_str());
               }},
          Case{BookFaultCode::Gone,
               [](const std::string&path, const std::string&) { unlink(path.c_str()); }},
          Case{BookFaultCode::Replaced,
               [](const std::string&path, const std::string&to) {
                   ASSERT_FALSE(saveCopy(*take(Book::open(path, BookAccess::ReadOnly)), to));
                   std::rename(to.c_str(), path.c_str());
               }},
          Case{BookFaultCode::ChangedElsewhere, [](const std::string&path, const std::string&) {
                   std::fstream(path, std::ios::in | std::ios::out | std::ios::binary).put('S');
               }}}) {
        std::remove(path().c_str());
        auto book = created(path());
        const ItemId id = take(addLesson(*book, someLesson(1)));
        one.happens(path(), other);
        const auto fault = applyEdit(*book, id, SetChoices{}, "edit");
        ASSERT_TRUE(fault);
        EXPECT_EQ(fault->code, one.code) << said(fault);
        EXPECT_TRUE(take(book->lesson(id)) == someLesson(1)) << "the old file can still be read";
    }
}

TEST_F(BookFaults, ABookReplacedWhileItIsWrittenSaysSoThenAndAfterwards) {
    auto book = created(path());
    const ItemId id = take(addLesson(*book, someLesson(1)));
    ASSERT_FALSE(saveCopy(*book, path("other.rangeline")));
    const auto fault = book->write([&](Connection&, Book::Touched& touched) {
        touched.push_back(id);
        std::rename(path("other.rangeline").c_str(), path().c_str());
    });
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->code, BookFaultCode::Replaced);
    EXPECT_EQ(applyEdit(*book, id, SetChoices{}, "edit")->code, BookFaultCode::Replaced);
}

TEST_F(BookFaults, TheSecondProcessReadsOnlyAndSeesWhatTheFirstWrites) {
    auto book = created(path());
    const ItemId id = take(addLesson(*book, someLesson(1)));
    auto second = take(Book::open(path()));
    EXPECT_EQ(second->state(), BookState::ReadOnly);
    EXPECT_EQ(second->whyNotWritable()->code, BookFaultCode::OpenElsewhere);
    EXPECT_FALSE(second->verify());
    EXPECT_EQ(rename(*second, id, "mine")->code, BookFaultCode::OpenElsewhere);
    ASSERT_FALSE(rename(*book, id, "theirs"));
    EXPECT_EQ(take(second->lesson(id)).head.name, "theirs");
    book = nullptr;
    EXPECT_EQ(opened(path())->state(), BookState::Writable);
}

TEST_F(BookFaults, ReadOnlyMediaAreRead) {
    const ItemId id = take(addLesson(*created(path()), someLesson(1)));
    // A child without root's rights, which modes do not bind.
    const pid_t child = fork();
    if (child == 0) {
        if (chmod(folder_.path().toUtf8().constData(), 0555) != 0 ||
            chmod(path().c_str(), 0444) != 0 || (getuid() == 0 && setuid(65534) != 0)) {
            _exit(2);
        }
        auto book = take(Book::open(path()));
        const bool reads = book && book->lesson(id).ok() && !book->verify();
        _exit(reads && book->whyNotWritable()->code == BookFaultCode::ReadOnlyFile &&
                      rename(*book, id, "new")->code == BookFaultCode::ReadOnlyFile
                  ? 0
                  : 1);
    }
    int status = -1;
    waitpid(child, &status, 0);
    chmod(folder_.path().toUtf8().constData(), 0755);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << status;
}

/// Leaves a change under way on the disk, as a writer does that is killed: the pages are written,
/// the journal says how to take them back.
void leaveHalfDone(const std::string& path) {
    const pid_t child = fork();
    if (child == 0) {
        auto connection = Connection::open(path, Connection::Access::ReadWrite);
        Connection& open = *connection.value();
        open.run("PRAGMA cache_size = 1");
        open.run("BEGIN IMMEDIATE");
        open.run("UPDATE items SET name = name || ' half done'");
        open.run("CREATE TABLE half(a BLOB) STRICT");
        open.run("INSERT INTO half VALUES(zeroblob(200000))");
        _exit(0);
    }
    int status = -1;
    waitpid(child, &status, 0);
}

TEST_F(BookFaults, AHalfDoneChangeIsTakenBackButNotOnReadOnlyMedia) {
    const ItemId id = take(addLesson(*created(path()), someLesson(1)));
    leaveHalfDone(path());
    ASSERT_GT(std::filesystem::file_size(path() + "-journal"), 0U);
    const pid_t child = fork();
    if (child == 0) {
        if (chmod(folder_.path().toUtf8().constData(), 0555) != 0 ||
            chmod(path().c_str(), 0444) != 0 || (getuid() == 0 && setuid(65534) != 0)) {
            _exit(2);
        }
        const auto book = Book::open(path());
        _exit(!book.ok() && book.error().code == BookFaultCode::NeedsRecovery ? 0 : 1);
    }
    int status = -1;
    waitpid(child, &status, 0);
    chmod(folder_.path().toUtf8().constData(), 0755);
    chmod(path().c_str(), 0644);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << status;
    EXPECT_TRUE(take(opened(path())->lesson(id)) == someLesson(1));
    EXPECT_FALSE(std::filesystem::exists(path() + "-journal"));
}

TEST_F(BookFaults, OfTwoProcessesOneWritesAndTheOtherGoesOnWhenItEnds) {
    const ItemId id = take(addLesson(*created(path()), someLesson(1)));
    int ready[2];
    int finish[2];
    ASSERT_EQ(pipe(ready), 0);
    ASSERT_EQ(pipe(finish), 0);
    const pid_t child = fork();
    if (child == 0) {
        auto book = opened(path());
        char mark = book && book->state() == BookState::Writable ? 'w' : 'r';
        const bool told = write(ready[1], &mark, 1) == 1 && read(finish[0], &mark, 1) == 1;
        _exit(told && !rename(*book, id, "theirs") ? 0 : 1);
    }
    char mark = 0;
    ASSERT_EQ(read(ready[0], &mark, 1), 1);
    EXPECT_EQ(mark, 'w');
    auto mine = take(Book::open(path()));
    EXPECT_FALSE(mine->verify());
    EXPECT_EQ(mine->whyNotWritable()->code, BookFaultCode::OpenElsewhere);
    EXPECT_EQ(rename(*mine, id, "mine")->code, BookFaultCode::OpenElsewhere);
    ASSERT_EQ(write(finish[1], &mark, 1), 1);
    int status = -1;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << status;
    EXPECT_EQ(take(mine->lesson(id)).head.name, "theirs");
    mine = nullptr;
    EXPECT_FALSE(rename(*opened(path()), id, "mine"));
    for (const int end : {ready[0], ready[1], finish[0], finish[1]}) {
        close(end);
    }
}

}  // namespace
}  // namespace rangeline::test
