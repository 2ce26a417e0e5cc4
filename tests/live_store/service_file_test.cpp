// The file of a service: what is written comes back, torn and damaged files, kills.

#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QDir>
#include <QTemporaryDir>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "live/session.h"
#include "live_store/service_file.h"
#include "model/validate.h"
#include "support/lesson_builder.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

using live::FileFault;
using live::ServiceFile;
using testing::ElementsAre;
using testing::IsEmpty;

constexpr int steps = 5;

/// Several steps that run side by side, and an oven.
Lesson severalSteps() {
    LessonBuilder builder;
    builder.oven("oven");
    for (int i = 0; i < steps; ++i) {
        const std::string id = "step-" + std::to_string(i);
        builder.step(id, {away(10_min)});
        builder.place(id, -60 + i);
    }
    builder.placeTurnOn("oven", minute(-90), 400_F, "ann");
    EXPECT_TRUE(validate(builder.lesson).empty()) << validate(builder.lesson).front().place;
    return builder.lesson;
}

live::ServiceHead someHead() {
    return {"service-1",
            7,
            severalSteps(),
            {{"boot-a", live::milliseconds(5'000'000), live::milliseconds(1'800'000'000'000)},
             live::millisecondsOf(minute(-60))}};
}

/// One of each kind.
std::vector<live::Entry> everyEvent() {
    const PlacementKey step = key("step-0");
    const PlacementKey wash = WashKey{key("step-1", 2, 1), 3};
    const PlacementKey turnOn = TurnOnKey{OvenId{"oven"}, 1};
    Placement moved;
    moved.start = Instant::atSeconds(-1234);
    const std::vector<live::Event> events{
        live::Started{step},
        live::Done{wash},
        live::MoreTime{turnOn, 300_s},
        live::NotReady{step, 120_s},
        live::Skipped{step},
        live::AlarmFired{step, 4},
        live::AlarmStopped{wash, 5},
        live::PlanReplaced{{{{step, moved}, {key("step-1"), std::nullopt}}}},
        live::ServedLater{600_s},
        live::ClockSet(),
        live::ClockNoted(),
        live::Ended()};
    EXPECT_EQ(events.size(), std::variant_size_v<live::Event>);
    std::vector<live::Entry> entries;
    for (const live::Event& event : events) {
        const auto number = static_cast<std::int64_t>(entries.size());
        entries.push_back({{{"boot-b", live::milliseconds(number), live::milliseconds(-number)},
                            live::milliseconds(number * 1001 - 5000)},
                           event});
    }
    return entries;
}

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

void putBytes(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

class LiveFile : public testing::Test {
  protected:
    std::string path() const { return folder_.filePath("book.service").toStdString(); }
    void writeEveryEvent() {
        auto file = ServiceFile::begin(path(), someHead());
        ASSERT_TRUE(file.ok());
        for (const live::Entry& entry : everyEvent()) {
            ASSERT_TRUE(file.value()->append({entry}));
        }
    }
    /// In memory where there is such a place: these tests write thousands of files.
    QTemporaryDir folder_{QDir(QStringLiteral("/dev/shm")).exists()
                              ? QStringLiteral("/dev/shm/rangeline-XXXXXX")
                              : QString()};
};

TEST_F(LiveFile, GivesBackTheHeadAndEveryKindOfEvent) {
    writeEveryEvent();
    const auto file = ServiceFile::open(path());
    ASSERT_TRUE(file.ok());
    EXPECT_EQ(file.value()->head(), someHead());
    EXPECT_EQ(file.value()->entries(), everyEvent());
    EXPECT_FALSE(file.value()->wasTorn());
    EXPECT_EQ(file.value()->damagedLines(), 0);
}

TEST_F(LiveFile, TornAtEveryByteKeepsTheLinesBeforeAndGoesOn) {
    writeEveryEvent();
    const std::string whole = bytesOf(path());
    const std::size_t head = whole.find('\n') + 1;
    for (std::size_t size = 0; size < whole.size(); ++size) {
        SCOPED_TRACE(size);
        putBytes(path(), whole.substr(0, size));
        auto file = ServiceFile::open(path());
        if (size < head) {
            ASSERT_FALSE(file.ok());
            EXPECT_EQ(file.error(), FileFault::Unreadable);
            EXPECT_EQ(bytesOf(path()).size(), size) << "what cannot be read stays";
            continue;
        }
        ASSERT_TRUE(file.ok());
        const auto lines = static_cast<std::size_t>(
            std::count(whole.begin(), whole.begin() + static_cast<std::ptrdiff_t>(size), '\n'));
        ASSERT_EQ(file.value()->entries().size(), lines - 1);
        EXPECT_EQ(file.value()->wasTorn(), whole[size - 1] != '\n');
        ASSERT_TRUE(file.value()->append({everyEvent().front()}));
        file.value().reset();
        const auto again = ServiceFile::open(path());
        ASSERT_TRUE(again.ok());
        EXPECT_EQ(again.value()->entries().size(), lines);
        EXPECT_FALSE(again.value()->wasTorn());
    }
}

TEST_F(LiveFile, AFlippedBitAnywhereIsNeverBelieved) {
    writeEveryEvent();
    const std::string whole = bytesOf(path());
    const std::size_t head = whole.find('\n') + 1;
    const auto all = everyEvent();
    for (std::size_t at = 0; at < whole.size(); at += at < head ? 97 : 1) {
        std::string bytes = whole;
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << (at % 8)));
        putBytes(path(), bytes);
        const auto file = ServiceFile::open(path());
        if (at < head) {
            EXPECT_FALSE(file.ok()) << at;
            continue;
        }
        ASSERT_TRUE(file.ok()) << at;
        const auto& entries = file.value()->entries();
        ASSERT_LT(entries.size(), all.size()) << at;
        EXPECT_TRUE(std::equal(entries.begin(), entries.end(), all.begin())) << at;
        EXPECT_TRUE(file.value()->wasTorn() || file.value()->damagedLines() > 0) << at;
        if (file.value()->damagedLines() > 0) {
            EXPECT_EQ(bytesOf(path() + ".damaged"), bytes) << at;
        }
    }
}

TEST_F(LiveFile, IsUsedByOneProgramAtATime) {
    auto file = ServiceFile::begin(path(), someHead());
    ASSERT_TRUE(file.ok());
    const auto second = ServiceFile::open(path());
    ASSERT_FALSE(second.ok());
    EXPECT_EQ(second.error(), FileFault::Elsewhere);
    EXPECT_FALSE(ServiceFile::begin(path(), someHead()).ok()) << "not under the other's hands";
    file.value().reset();
    EXPECT_TRUE(ServiceFile::open(path()).ok());
}

TEST_F(LiveFile, IsGoneOnceTheServiceIsOver) {
    auto file = ServiceFile::begin(path(), someHead());
    ASSERT_TRUE(file.value()->remove());
    file.value().reset();
    const auto none = ServiceFile::open(path());
    ASSERT_FALSE(none.ok());
    EXPECT_EQ(none.error(), FileFault::NotThere);
}

TEST_F(LiveFile, OnAFullDiskKeepsWhatItHasAndLaterGoesOn) {
    auto file = ServiceFile::begin(path(), someHead());
    ASSERT_TRUE(file.value()->append({everyEvent()[0]}));
    const rlimit before = [] {
        rlimit limit{};
        getrlimit(RLIMIT_FSIZE, &limit);
        return limit;
    }();
    const auto oldHandler = std::signal(SIGXFSZ, SIG_IGN);
    rlimit tight = before;
    tight.rlim_cur = bytesOf(path()).size() + 40;  // room for a part of the next line
    setrlimit(RLIMIT_FSIZE, &tight);
    EXPECT_FALSE(file.value()->append({everyEvent()[1], everyEvent()[2]}));
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, oldHandler);
    EXPECT_TRUE(file.value()->append({everyEvent()[3]}));
    file.value().reset();
    const auto again = ServiceFile::open(path());
    ASSERT_TRUE(again.ok());
    EXPECT_THAT(again.value()->entries(), ElementsAre(everyEvent()[0], everyEvent()[3]));
}

// ---- kills --------------------------------------------------------------------------------------

/// The machine's clock, run so fast that ten minutes pass in a few milliseconds. It counts from an
/// instant that parent and children share.
class FastClock : public live::ClockSource {
  public:
    FastClock() : first_(system_.read().sinceBoot) {}
    live::ClockReading read() const override {
        const live::ClockReading now = system_.read();
        return {now.boot, (now.sinceBoot - first_) * 10'000, now.utc};
    }

  private:
    live::SystemClock system_;
    live::milliseconds first_;
};

live::WriteDown into(ServiceFile& file) {
    return [&file](const std::vector<live::Entry>& entries) { return file.append(entries); };
}

/// What the outside has noticed: an alarm heard, or a button answered.
struct Noticed {
    int step = 0;
    int generation = 0;
    char what = 'r';  ///< 'r' rings, 's' stopped, 'b' begun

    friend auto operator<=>(const Noticed&, const Noticed&) = default;
};

void notice(int channel, Noticed noticed) {
    if (write(channel, &noticed, sizeof noticed) != static_cast<ssize_t>(sizeof noticed)) {
        _exit(1);
    }
}

int stepNumber(const PlacementKey& key) {
    return std::get<StepKey>(key).step.text[5] - '0';
}

/// Cooks until it is killed: starts what waits, lets it ring, stops or puts off what rings.
[[noreturn]] void cook(const std::string& path, const FastClock& clock, Random random,
                       int channel) {
    auto file = ServiceFile::open(path);
    if (!file.ok()) {
        _exit(2);
    }
    live::Session session(file.value()->head().lesson, file.value()->head().begun,
                          file.value()->entries(), clock, into(*file.value()));
    for (;;) {
        session.tick();
        for (const auto& timer : live::ringingTimers(session.service())) {
            notice(channel, {stepNumber(timer.key), timer.generation, 'r'});
        }
        for (const auto& [key, work] : session.service().works()) {
            if (!std::holds_alternative<StepKey>(key) || !random.chance(0.3)) {
                continue;
            }
            const int before = work.generation;
            if (work.stage == live::Stage::Waiting && session.record(live::Started{key})) {
                notice(channel, {stepNumber(key), before + 1, 'b'});
            } else if (work.bell == live::Bell::Ringing &&
                       session.record(live::AlarmStopped{key, before})) {
                notice(channel, {stepNumber(key), before, 's'});
            } else if (work.bell == live::Bell::Stopped &&
                       session.record(live::MoreTime{key, 300_s})) {
                notice(channel, {stepNumber(key), before + 1, 'b'});
            }
        }
        usleep(300);
    }
}

std::vector<Noticed> readAll(int channel) {
    std::vector<Noticed> all;
    for (Noticed one; read(channel, &one, sizeof one) == static_cast<ssize_t>(sizeof one);) {
        all.push_back(one);
    }
    return all;
}

/// How often each alarm has been written down; no more than once each.
std::map<std::pair<int, int>, int> firedIn(const std::vector<live::Entry>& entries) {
    std::map<std::pair<int, int>, int> fired;
    for (const live::Entry& entry : entries) {
        if (const auto* it = std::get_if<live::AlarmFired>(&entry.event)) {
            ++fired[{stepNumber(it->key), it->generation}];
        }
    }
    return fired;
}

int trials() {
    const char* wanted = std::getenv("RANGELINE_KILLS");
    return wanted == nullptr ? 20 : std::atoi(wanted);
}

TEST_F(LiveFile, KilledAtAnyMomentItMissesNoAlarmAndRingsNoneAnew) {
    const std::uint64_t seed = seedOr(1);
    Random random(seed);
    const FastClock clock;
    live::ServiceHead head = someHead();
    head.begun = {clock.read(), live::millisecondsOf(minute(-60))};
    ASSERT_TRUE(ServiceFile::begin(path(), head).ok());
    std::set<std::pair<int, int>> silent;  // stopped once and for all
    std::size_t alarms = 0, torn = 0, known = 0;
    for (int trial = 0; trial < trials() && !HasFailure(); ++trial) {
        SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed) + " trial " + std::to_string(trial));
        int channel[2];
        ASSERT_EQ(pipe(channel), 0);
        const Random childs(random.next());
        const pid_t child = fork();
        if (child == 0) {
            close(channel[0]);
            cook(path(), clock, childs, channel[1]);
        }
        close(channel[1]);
        usleep(static_cast<useconds_t>(random.between(2'000, 150'000)));
        kill(child, SIGKILL);
        int status = 0;
        waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status)) << "ended by itself: " << WEXITSTATUS(status);
        const auto noticed = readAll(channel[0]);
        close(channel[0]);

        auto file = ServiceFile::open(path());
        ASSERT_TRUE(file.ok());
        EXPECT_EQ(file.value()->damagedLines(), 0);
        torn += file.value()->wasTorn() ? 1 : 0;
        EXPECT_GE(file.value()->entries().size(), known) << "lost what was written";
        known = file.value()->entries().size();
        const auto fired = firedIn(file.value()->entries());
        for (const auto& [alarm, times] : fired) {
            EXPECT_EQ(times, 1) << "rang twice";
        }
        live::Session session(file.value()->head().lesson, file.value()->head().begun,
                              file.value()->entries(), clock, into(*file.value()));
        for (const Noticed& one : noticed) {
            const std::pair alarm{one.step, one.generation};
            const auto& work = session.service().work(key("step-" + std::to_string(one.step)));
            EXPECT_GE(work.generation, one.generation) << "a button that was answered is lost";
            if (one.what == 'r') {
                EXPECT_TRUE(fired.contains(alarm)) << "heard, but not written down before";
                EXPECT_FALSE(silent.contains(alarm)) << "rings again after it was stopped";
            } else if (one.what == 's') {
                silent.insert(alarm);
            }
        }
        session.tick();
        for (const auto& [key, work] : session.service().works()) {
            EXPECT_FALSE(work.bell == live::Bell::Counting && work.cueAt < session.instant() - 60_s)
                << "missed";
        }
        alarms = fired.size();
    }
    std::printf("%d kills, %zu in the middle of a line, %zu alarms, %zu events\n", trials(), torn,
                alarms, known);
    EXPECT_GT(alarms, 0U);
}

}  // namespace
}  // namespace rangeline::test
