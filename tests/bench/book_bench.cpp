// A book of 500 dishes and 200 lessons: showing it, verifying it, one edit, finding words.

#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QTemporaryDir>

#include "book/book.h"
#include "book/journal.h"
#include "book/library.h"
#include "book/search.h"
#include "support/natural_lesson.h"

namespace rangeline::test {
namespace {

constexpr int dishes = 500, lessons = 200, stepsEach = 20;

/// Made once; of about stepsEach steps a dish and a lesson.
class LargeBook {
  public:
    static LargeBook& get() {
        static LargeBook book;
        return book;
    }
    std::string path() const { return folder_.filePath("large.rangeline").toStdString(); }
    ItemId lesson;

  private:
    LargeBook() {
        auto book = std::move(Book::create(path()).value());
        book->verify();
        std::vector<Lesson> all;
        for (std::uint64_t i = 0; i < dishes; ++i) {
            Random random(i);
            Lesson one = naturalLesson(random, stepsEach);
            addDish(*book, one.servings.front().dish).ok();
            if (i < lessons) {
                one.head.name = "Lesson " + std::to_string(i);
                all.push_back(std::move(one));
            }
        }
        lesson = addLessons(*book, all).value().front();
    }

    int argc_ = 1;
    char name_[6] = "bench";
    char* argv_[2] = {name_, nullptr};
    QCoreApplication application_{argc_, argv_};
    QTemporaryDir folder_;
};

void showBook(benchmark::State& state) {
    const LargeBook& large = LargeBook::get();
    for (auto _ : state) {
        auto book = Book::open(large.path());
        benchmark::DoNotOptimize(book.value()->items().value().size());
    }
}
BENCHMARK(showBook)->Unit(benchmark::kMillisecond);

void verifyBook(benchmark::State& state) {
    const LargeBook& large = LargeBook::get();
    for (auto _ : state) {
        auto book = Book::open(large.path());
        if (book.value()->verify()) {
            state.SkipWithError("refused");
        }
    }
}
BENCHMARK(verifyBook)->Unit(benchmark::kMillisecond);

void commitEdit(benchmark::State& state) {
    const LargeBook& large = LargeBook::get();
    auto book = std::move(Book::open(large.path()).value());
    book->verify();
    std::int64_t minute = 0;
    for (auto _ : state) {
        SetPlacements edit{{{StepKey{{"moved"}, 0, 0}, Placement()}}};
        edit.changes.front().placement->start = Instant::atMinutes(++minute % 1000);
        if (applyEdit(*book, large.lesson, edit, "move")) {
            state.SkipWithError("not written");
        }
    }
}
BENCHMARK(commitEdit)->Unit(benchmark::kMillisecond)->UseRealTime();

/// What the disk alone takes for one page.
void syncAlone(benchmark::State& state) {
    const std::string path = LargeBook::get().path() + ".sync";
    const int file = open(path.c_str(), O_CREAT | O_RDWR | O_CLOEXEC, 0600);
    const std::string page(4096, 'x');
    for (auto _ : state) {
        benchmark::DoNotOptimize(pwrite(file, page.data(), page.size(), 0));
        fsync(file);
    }
    close(file);
}
BENCHMARK(syncAlone)->Unit(benchmark::kMillisecond)->UseRealTime();

void findWords(benchmark::State& state) {
    auto book = std::move(Book::open(LargeBook::get().path()).value());
    Search search;
    search.fill(*book);
    for (auto _ : state) {
        for (const char* typed : {"s", "se", "sea", "sear"}) {
            benchmark::DoNotOptimize(search.find(typed));
        }
    }
    state.SetItemsProcessed(4 * state.iterations());
}
BENCHMARK(findWords)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace rangeline::test
