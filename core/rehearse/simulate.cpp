#include "rehearse/simulate.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include "rehearse/run.h"

namespace rangeline {
namespace {

/// Calls work(thread, from, to) for parts of [0, count), from as many threads, until it is stopped.
/// A part that is taken is done, so that what was done comes first.
template <class Work>
void inPortions(int threads, std::size_t count, std::size_t portion, const std::stop_token& stop,
                const Work& work) {
    std::atomic<std::size_t> next = 0;
    const auto loop = [&](std::size_t thread) {
        while (!stop.stop_requested()) {
            const std::size_t from = next.fetch_add(portion);
            if (from >= count) {
                return;
            }
            work(thread, from, std::min(from + portion, count));
        }
    };
    std::vector<std::jthread> others;
    for (std::size_t thread = 1; thread < static_cast<std::size_t>(threads); ++thread) {
        others.emplace_back(loop, thread);
    }
    loop(0);
}

/// How often, and for how long in all.
struct Tally {
    std::int64_t times = 0;
    double seconds = 0;

    void take(double more) {
        ++times;
        seconds += more;
    }
    void add(const Tally& other) {
        times += other.times;
        seconds += other.seconds;
    }
};

/// What one thread counts.
struct Tallies {
    explicit Tallies(const Network& network)
        : decides(network.activities.size()),
          limits(network.limits.size()),
          hands(network.followings.size()) {}

    std::vector<std::int64_t> decides;
    std::vector<Tally> limits;
    std::vector<Tally> hands;  ///< by following

    void add(const Tallies& other) {
        for (std::size_t i = 0; i < decides.size(); ++i) {
            decides[i] += other.decides[i];
        }
        for (std::size_t i = 0; i < limits.size(); ++i) {
            limits[i].add(other.limits[i]);
        }
        for (std::size_t i = 0; i < hands.size(); ++i) {
            hands[i].add(other.hands[i]);
        }
    }

    void take(const Network& network, const OneRun& run) {
        run.forDeciding([this](std::size_t activity) { ++decides[activity]; });
        for (std::size_t i = 0; i < limits.size(); ++i) {
            constexpr double noticed = 1;
            if (const double over = run.over(network.limits[i]); over >= noticed) {
                limits[i].take(over);
            }
        }
        for (std::size_t i = 0; i < network.activities.size(); ++i) {
            constexpr double aMinute = 60;
            if (const double wait = run.waitForHands(i); wait >= aMinute) {
                hands[static_cast<std::size_t>(run.handsFollowing(i))].take(wait);
            }
        }
    }
};

/// Which of so many in ascending order has that part of them no later than itself.
std::size_t rankOf(double part, std::size_t count) {
    constexpr double rounding = 1e-9;  // 0.07 of 100 is the seventh, whatever the computer makes
    const double wanted = std::ceil(part * static_cast<double>(count) - rounding);
    return std::min(static_cast<std::size_t>(std::max(1.0, wanted)) - 1, count - 1);
}

using Columns = std::vector<std::vector<float>>;  ///< seconds from serving by activity, run by run

class Rehearsing {
  public:
    Rehearsing(const Network& network, const RehearsalOptions& options)
        : network_(network),
          options_(options),
          runs_(static_cast<std::size_t>(options.runs)),
          lateness_(runs_),
          tallies_(static_cast<std::size_t>(options.threads), Tallies(network)) {
        if (!options.onlyLateness) {
            constexpr std::size_t mostKept = 50'000'000;
            kept_ = std::min(runs_, mostKept / std::max<std::size_t>(1, network.activities.size()));
            begins_.assign(network.activities.size(), std::vector<float>(kept_));
            ends_ = begins_;
        }
    }

    void runAll(const std::stop_token& stop, const std::function<void(int)>& progress) {
        std::vector<OneRun> ways(tallies_.size(), OneRun(network_));
        std::atomic<int> done = 0;
        constexpr std::size_t portion = 64;
        inPortions(options_.threads, runs_, portion, stop,
                   [&](std::size_t thread, std::size_t from, std::size_t to) {
                       for (std::size_t number = from; number < to; ++number) {
                           ways[thread].go(options_.seed, number);
                           keep(ways[thread], tallies_[thread], number);
                       }
                       done += static_cast<int>(to - from);
                       if (progress) {
                           progress(done);
                       }
                   });
        runs_ = static_cast<std::size_t>(done);
    }

    Rehearsal outcome() {
        Rehearsal outcome;
        outcome.runs = static_cast<int>(runs_);
        lateness_.resize(runs_);
        std::ranges::sort(lateness_);
        for (const double late : lateness_) {
            outcome.lateness.push_back(
                Duration::seconds(static_cast<std::int64_t>(std::ceil(late))));
        }
        if (!options_.onlyLateness && runs_ > 0) {
            addBands(outcome);
            addExcesses(outcome);
        }
        return outcome;
    }

  private:
    void keep(const OneRun& run, Tallies& tallies, std::size_t number) {
        lateness_[number] = run.lateness();
        if (options_.onlyLateness) {
            return;
        }
        for (std::size_t i = 0; number < kept_ && i < begins_.size(); ++i) {
            begins_[i][number] = static_cast<float>(run.begin(i));
            ends_[i][number] = static_cast<float>(run.end(i));
        }
        tallies.take(network_, run);
    }

    /// The instant that no more than the rest of them lie after; what is smaller is moved before
    /// it.
    static Instant quantile(std::vector<float>& values, double part) {
        const std::size_t at = rankOf(part, values.size());
        std::ranges::nth_element(values, values.begin() + static_cast<std::ptrdiff_t>(at));
        return Instant::atSeconds(std::lround(values[at]));
    }

    void addBands(Rehearsal& outcome) {
        outcome.bands.resize(network_.activities.size());
        inPortions(options_.threads, outcome.bands.size(), 1, {},
                   [&](std::size_t, std::size_t i, std::size_t) {
                       begins_[i].resize(std::min(runs_, kept_));
                       ends_[i].resize(std::min(runs_, kept_));
                       constexpr double early = 0.1;
                       constexpr double middle = 0.5;
                       constexpr double late = 0.9;
                       Band& band = outcome.bands[i];
                       band = {quantile(begins_[i], early),
                               quantile(begins_[i], middle),
                               quantile(begins_[i], late),
                               quantile(ends_[i], early),
                               quantile(ends_[i], middle),
                               quantile(ends_[i], late),
                               0};
                   });
    }

    void addExcesses(Rehearsal& outcome) {
        Tallies all(network_);
        for (const Tallies& each : tallies_) {
            all.add(each);
        }
        const auto runs = static_cast<double>(runs_);
        for (std::size_t i = 0; i < outcome.bands.size(); ++i) {
            outcome.bands[i].decides = static_cast<double>(all.decides[i]) / runs;
        }
        const auto excesses = [runs](const std::vector<Tally>& tallies) {
            std::vector<Excess> found;
            for (std::size_t i = 0; i < tallies.size(); ++i) {
                if (const auto times = static_cast<double>(tallies[i].times); times > 0) {
                    found.push_back({static_cast<int>(i), times / runs,
                                     Duration::seconds(std::lround(tallies[i].seconds / times))});
                }
            }
            std::ranges::stable_sort(found, std::greater<>(), &Excess::share);
            return found;
        };
        outcome.waitsTooLong = excesses(all.limits);
        outcome.waitsForCook = excesses(all.hands);
    }

    const Network& network_;
    const RehearsalOptions& options_;
    std::size_t runs_;
    std::size_t kept_ = 0;  ///< of how many runs begins and ends are kept
    std::vector<double> lateness_;
    Columns begins_;
    Columns ends_;
    std::vector<Tallies> tallies_;
};

}  // namespace

double Rehearsal::chanceOnTime() const {
    const auto late = std::ranges::upper_bound(lateness, Duration());
    return lateness.empty() ? 0
                            : static_cast<double>(late - lateness.begin()) /
                                  static_cast<double>(lateness.size());
}

Duration Rehearsal::latenessIn(double part) const {
    return lateness[rankOf(part, lateness.size())];
}

Duration Rehearsal::earlierFor(double chance) const {
    return lateness.empty() ? Duration() : std::max(Duration(), latenessIn(chance));
}

Rehearsal rehearse(const Network& network, const RehearsalOptions& options, std::stop_token stop,
                   const std::function<void(int)>& progress) {
    Rehearsing rehearsing(network, options);
    rehearsing.runAll(stop, progress);
    return rehearsing.outcome();
}

}  // namespace rangeline
