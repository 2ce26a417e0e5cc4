// Services with random events, jumps of the wall clock, sleep, kills, power cuts and new starts of
// the machine. An account of deadlines kept beside it, in the test's own time, says which alarm has
// to ring: each exactly once, none missed. RANGELINE_SEED gives the seed back, RANGELINE_SERVICES
// how many.

#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>
#include <memory>
#include <set>

#include "live/machine.h"
#include "support/random_lesson.h"
#include "support/random_placements.h"

namespace rangeline::test {
namespace {

using live::Bell;
using live::Stage;

std::int64_t setting(const char* name, std::int64_t otherwise) {
    const char* wanted = std::getenv(name);
    return wanted == nullptr ? otherwise : std::atoll(wanted);
}

/// A deadline in the account.
struct Due {
    std::int64_t second = 0;
    bool rings = false;
    bool open = false;  ///< to ring yet
    int rang = 0;       ///< how often this deadline has rung
    bool ringing = false;
};

class SimulatedService {
  public:
    SimulatedService(Random& random, Lesson lesson)
        : random_(random), lesson_(std::move(lesson)), service_(milliseconds(-7'200'000)) {
        const live::Service plan(lesson_);
        for (const auto& [key, work] : plan.works()) {
            keys_.push_back(key);
            offsets_[key] = cueOffset(plan, key);
        }
        start();
    }

    void run(int steps) {
        for (int i = 0; i < steps && !testing::Test::HasFailure(); ++i) {
            step();
            if (session_) {
                look();
            }
        }
        reopen();  // whatever is due by now has rung at the latest after this
        look();
    }

    std::int64_t alarms = 0, restarts = 0, boots = 0, asked = 0, cuts = 0;

  private:
    /// Seconds from the start to the cue, and whether it rings: anew, from the segments.
    static std::pair<std::int64_t, bool> cueOffset(const live::Service& plan,
                                                   const PlacementKey& key) {
        const int node = plan.index().nodeOf(key);
        const Placed& placed = plan.index().placed(node);
        if (!plan.index().isTask(node)) {
            return {placed.timing.length.inSeconds(), false};
        }
        const int last = plan.index().expanded().tasks[static_cast<std::size_t>(node)].stretching;
        if (last < 0) {
            return {placed.timing.length.inSeconds(), placed.timing.length > Duration()};
        }
        std::int64_t sum = 0;
        for (int i = 0; i <= last; ++i) {
            sum += placed.timing.segments[static_cast<std::size_t>(i)].length.inSeconds();
        }
        const bool hands =
            placed.timing.segments[static_cast<std::size_t>(last)].attention == Attention::Hands;
        // What takes no time is done as soon as it is started.
        return {sum, placed.timing.length > Duration() &&
                         (!hands || !plan.index().step(node).cue.empty())};
    }

    std::int64_t second() const { return live::instantOf(service_).inSeconds(); }
    PlacementKey anyKey() {
        return keys_[static_cast<std::size_t>(
            random_.between(0, static_cast<std::int64_t>(keys_.size()) - 1))];
    }

    void start() {
        session_ = std::make_unique<live::Session>(lesson_, service_, machine_, machine_.disk());
        begun_ = session_->begun();
        written_ = {begun_.reading.utc, service_};
    }

    void pass(milliseconds time) {
        machine_.pass(time);
        service_ += time;
    }

    void step() {
        const auto what = random_.between(0, 99);
        if (what < 45) {
            pass(milliseconds(random_.between(0, 240'000)));
        } else if (what < 80) {
            act();
        } else if (what < 84) {
            pass(milliseconds(random_.between(0, 7'200'000)));  // asleep
        } else if (what < 89) {
            machine_.setWall(milliseconds(random_.between(-10'800'000, 10'800'000)));
        } else if (what < 94) {
            session_.reset();
            pass(milliseconds(random_.between(0, 900'000)));
            reopen();
        } else if (what < 96) {
            startAnew();
        } else {
            (random_.chance(0.5) ? machine_.loseBefore : machine_.loseAfter) =
                static_cast<int>(random_.between(0, 2));
        }
    }

    /// The machine is off for a while, and its wall clock may come back wrong.
    void startAnew() {
        ++boots;
        session_.reset();
        const milliseconds off(random_.between(0, 1'200'000));
        machine_.startAnew(off);
        service_ += off;
        if (random_.chance(0.3)) {
            machine_.setWall(milliseconds(random_.between(-100'000'000, 100'000'000)));
        }
        const auto [writtenWall, writtenService] = written_;
        const milliseconds passed = machine_.wall() - writtenWall;
        reopen();
        const bool sure = passed >= milliseconds(0) && passed <= live::longestAway;
        ASSERT_EQ(session_->doubt().has_value(), !sure);
        if (sure) {
            service_ = writtenService + passed;
            return;
        }
        ++asked;
        EXPECT_TRUE(session_->tick().empty());
        service_ = milliseconds(second() * 1000 + random_.between(-300, 300) * 1000);
        guarded([&] { session_->setClock(live::instantOf(service_)); });
    }

    void reopen() {
        ++restarts;
        machine_.loseBefore = machine_.loseAfter = -1;
        const std::size_t before = machine_.written.size();
        const std::vector<live::Entry> entries = machine_.written;
        session_ =
            std::make_unique<live::Session>(lesson_, begun_, entries, machine_, machine_.disk());
        accountFrom(before);
    }
    void accountFrom(std::size_t first) {
        for (std::size_t i = first; i < machine_.written.size(); ++i) {
            account(machine_.written[i]);
        }
    }

    /// The power may go at any write: then what was written, and no more, has happened.
    template <class Work>
    void guarded(Work work) {
        const std::size_t before = machine_.written.size();
        bool cut = false;
        try {
            work();
        } catch (const PowerGone&) {
            cut = true;
            ++cuts;
        }
        accountFrom(before);
        if (cut) {
            reopen();
        }
    }

    void act() {
        const PlacementKey key = anyKey();
        const live::Work& work = session_->service().work(key);
        const Duration by = Duration::seconds(random_.between(1, 600));
        const std::vector<live::Event> events{
            live::Started{key},      live::Started{key},
            live::Done{key},         live::MoreTime{key, by},
            live::NotReady{key, by}, live::AlarmStopped{key, work.generation},
            live::Skipped{key}};
        const live::Event event =
            events[static_cast<std::size_t>(random_.between(0, random_.chance(0.9) ? 5 : 6))];
        if (work.stage == Stage::Waiting) {
            // Washing up after a step that was skipped takes no time.
            offsets_[key] = cueOffset(session_->service(), key);
        }
        guarded([&] { session_->record(event); });
    }

    /// The account of what was written down, by rules of its own.
    void account(const live::Entry& entry) {
        written_ = {entry.when.reading.utc, entry.when.at};
        const std::int64_t now = live::instantOf(entry.when.at).inSeconds();
        if (const auto* it = std::get_if<live::Started>(&entry.event)) {
            const auto [offset, rings] = offsets_.at(it->key);
            dues_[it->key] = {now + offset, rings, rings, 0, false};
        } else if (const auto* more = std::get_if<live::MoreTime>(&entry.event)) {
            move(more->key,
                 [&](std::int64_t due) { return std::max(due, now) + more->by.inSeconds(); });
        } else if (const auto* no = std::get_if<live::NotReady>(&entry.event)) {
            move(no->key,
                 [&](std::int64_t due) { return std::max(due, now + no->again.inSeconds()); });
        } else if (const auto* stopped = std::get_if<live::AlarmStopped>(&entry.event)) {
            EXPECT_TRUE(dues_.at(stopped->key).ringing);
            dues_.at(stopped->key).ringing = false;
        } else if (const auto* fired = std::get_if<live::AlarmFired>(&entry.event)) {
            Due& due = dues_.at(fired->key);
            EXPECT_TRUE(due.open) << "rings though nothing is due";
            EXPECT_GE(now, due.second) << "rings too early";
            EXPECT_EQ(++due.rang, 1) << "rings twice";
            due.open = false;
            due.ringing = true;
            ++alarms;
        } else if (const auto* done = std::get_if<live::Done>(&entry.event)) {
            dues_.erase(done->key);
        } else if (const auto* skipped = std::get_if<live::Skipped>(&entry.event)) {
            dues_.erase(skipped->key);
        }
    }

    template <class Move>
    void move(const PlacementKey& key, Move to) {
        if (const auto found = dues_.find(key); found != dues_.end()) {
            Due& due = found->second;
            due = {to(due.second), due.rings, due.rings, 0, false};
        }
    }

    /// The program looks once a second; here after each step.
    void look() {
        guarded([&] {
            const auto rung = session_->tick();
            for (std::size_t i = 1; i < rung.size(); ++i) {
                EXPECT_LE(rung[i - 1].deadline, rung[i].deadline) << "out of order";
            }
        });
        guarded([&] { session_->tick(); });  // a power cut during the first
        EXPECT_EQ(session_->now(), service_) << "another time than it is";
        std::set<int> numbers;
        for (const auto& [key, due] : dues_) {
            const live::Work& work = session_->service().work(key);
            EXPECT_FALSE(due.open && due.second <= second()) << "missed";
            EXPECT_EQ(work.bell == Bell::Ringing, due.ringing);
            EXPECT_EQ(work.cueAt.inSeconds(), due.second) << "another remaining time";
            if (due.ringing && work.bellNumber != 0) {
                EXPECT_TRUE(numbers.insert(work.bellNumber).second) << "one key for two alarms";
            }
        }
    }

    Random& random_;
    Lesson lesson_;
    Machine machine_;
    milliseconds service_;
    live::ClockAnchor begun_;
    std::pair<milliseconds, milliseconds> written_;  ///< wall and service time of the last entry
    std::unique_ptr<live::Session> session_;
    std::vector<PlacementKey> keys_;
    std::map<PlacementKey, std::pair<std::int64_t, bool>> offsets_;
    std::map<PlacementKey, Due> dues_;
};

TEST(LiveAlarms, InManyServicesNoneIsMissedAndNoneRingsTwice) {
    const auto seed = static_cast<std::uint64_t>(setting("RANGELINE_SEED", 1));
    const auto services = setting("RANGELINE_SERVICES", 1'000);
    std::int64_t alarms = 0, restarts = 0, boots = 0, asked = 0, cuts = 0;
    for (std::int64_t i = 0; i < services && !HasFailure(); ++i) {
        SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed) + " service " + std::to_string(i));
        Random random(seed * 1'000'003 + static_cast<std::uint64_t>(i));
        Lesson lesson = randomLesson(random);
        placeAtRandom(random, lesson, expand(lesson), 0.9);
        if (lesson.placements.empty()) {
            continue;
        }
        SimulatedService service(random, std::move(lesson));
        service.run(60);
        alarms += service.alarms;
        restarts += service.restarts;
        boots += service.boots;
        asked += service.asked;
        cuts += service.cuts;
    }
    std::printf(
        "%lld services, seed %llu: %lld alarms, %lld restarts, %lld new starts of the "
        "machine (%lld asked for the time), %lld power cuts while writing\n",
        static_cast<long long>(services), static_cast<unsigned long long>(seed),
        static_cast<long long>(alarms), static_cast<long long>(restarts),
        static_cast<long long>(boots), static_cast<long long>(asked), static_cast<long long>(cuts));
    EXPECT_GT(alarms, services);
}

}  // namespace
}  // namespace rangeline::test
