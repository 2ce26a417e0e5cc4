// A process that edits a book is killed at random moments. RANGELINE_KILLS sets how often.

#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>

#include "book/book_support.h"

namespace rangeline::test {
namespace {

class BookKills : public BookFolder {};

int trials() {
    const char* wanted = std::getenv("RANGELINE_KILLS");
    return wanted == nullptr ? 20 : std::atoi(wanted);
}

/// Edits, copies and keeps versions until it is killed; after each edit writes its number.
[[noreturn]] void session(const std::string& path, const std::string& copy, ItemId id, int from,
                          int acknowledge) {
    auto book = opened(path);
    for (int i = from;; ++i) {
        SetPlacements edit{{{StepKey{{"counter"}, 0, 0}, Placement()}}};
        edit.changes.front().placement->start = Instant::atSeconds(i);
        const bool done = book && !applyEdit(*book, id, edit, std::to_string(i));
        if (!done || write(acknowledge, &i, sizeof i) != static_cast<ssize_t>(sizeof i)) {
            _exit(1);
        }
        if (i % 4 == 3 && saveCopy(*book, copy)) {
            _exit(1);
        }
        if (i % 5 == 4) {
            const auto version = keepVersion(*book, id, "v", "2027-10-09T16:30:00Z");
            if (!version.ok() || restoreVersion(*book, id, version.value()) ||
                removeVersion(*book, id, version.value())) {
                _exit(1);
            }
        }
    }
}

int lastRead(int file) {
    int last = -1;
    for (int i = 0; read(file, &i, sizeof i) == static_cast<ssize_t>(sizeof i);) {
        last = i;
    }
    return last;
}

TEST_F(BookKills, LoseNoAcknowledgedEdit) {
    const std::uint64_t seed = seedOr(1);
    Random random(seed);
    const ItemId id = take(addLesson(*created(path()), someLesson(1)));
    int known = 0, hot = 0;
    for (int trial = 0; trial < trials(); ++trial) {
        SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed) + " trial " + std::to_string(trial));
        int channel[2];
        ASSERT_EQ(pipe(channel), 0);
        const pid_t child = fork();
        if (child == 0) {
            close(channel[0]);
            session(path(), path("copy.rangeline"), id, known + 1, channel[1]);
        }
        close(channel[1]);
        usleep(static_cast<useconds_t>(random.between(20'000, 250'000)));
        kill(child, SIGKILL);
        int status = 0;
        waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the session ended by itself";
        const int acknowledged = std::max(lastRead(channel[0]), known);
        close(channel[0]);
        std::error_code none;
        const auto size = std::filesystem::file_size(path() + "-journal", none);
        hot += !none && size > 0 ? 1 : 0;
        auto book = opened(path());
        ASSERT_TRUE(book);
        const Lesson lesson = take(book->lesson(id));
        const auto counter = lesson.placements.find(StepKey{{"counter"}, 0, 0});
        const int found = counter == lesson.placements.end()
                              ? 0
                              : static_cast<int>(counter->second.start.inSeconds());
        EXPECT_TRUE(found == acknowledged || found == acknowledged + 1)
            << found << " of " << acknowledged;
        if (access(path("copy.rangeline").c_str(), F_OK) == 0) {
            EXPECT_TRUE(opened(path("copy.rangeline")));
        }
        known = found;
    }
    std::printf("%d kills, %d with an unfinished change on the disk, %d edits\n", trials(), hot,
                known);
    EXPECT_GT(known, 0);
}

}  // namespace
}  // namespace rangeline::test
