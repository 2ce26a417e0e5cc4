#include "rehearse/simulate.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include "rehearse/pert.h"

namespace rangeline {
namespace {

double seconds(Duration length) {
    return static_cast<double>(length.inSeconds());
}

/// Where an instant of an activity lies when it takes so much longer: before the part that
/// stretches it stays, behind it it moves along, within it in proportion.
double offsetAt(const Activity& activity, Duration offset, double longer) {
    const double at = seconds(offset);
    const double begin = seconds(activity.stretchBegin);
    const double end = seconds(activity.stretchEnd);
    if (at <= begin && offset < activity.length) {
        return at;
    }
    return at >= end ? at + longer : at + longer * (at - begin) / (end - begin);
}

/// What all runs come to, run by run.
struct Record {
    Record(std::size_t runs, std::size_t activities)
        : begins(activities, std::vector<float>(runs)),
          ends(activities, std::vector<float>(runs)),
          lateness(runs) {}

    std::vector<std::vector<float>> begins;  ///< seconds from serving
    std::vector<std::vector<float>> ends;
    std::vector<double> lateness;
};

class Runs {
  public:
    Runs(const Network& network, std::uint64_t seed, Record& record,
         std::vector<std::int64_t>& decides)
        : network_(network),
          seed_(seed),
          record_(record),
          decides_(decides),
          begin_(network.activities.size()),
          longer_(network.activities.size()),
          heldBy_(network.activities.size()) {}

    void run(std::size_t number) {
        // A sequence of its own for each run, whatever thread it is in.
        Random random(Random(seed_ + number * 0x9E3779B97F4A7C15ULL).next());
        std::size_t next = 0;
        for (std::size_t i = 0; i < network_.activities.size(); ++i) {
            const Activity& activity = network_.activities[i];
            longer_[i] = drawPert(activity.range, random) - seconds(activity.range.likely);
            begin_[i] = static_cast<double>(activity.planned.inSeconds());
            heldBy_[i] = -1;
            for (; next < network_.followings.size() &&
                   network_.followings[next].to == static_cast<int>(i);
                 ++next) {
                follow(network_.followings[next]);
            }
            record_.begins[i][number] = static_cast<float>(begin_[i]);
            record_.ends[i][number] = static_cast<float>(begin_[i] + lengthOf(i));
        }
        judge(number);
    }

  private:
    double lengthOf(std::size_t i) const {
        return std::max(0.0, seconds(network_.activities[i].length) + longer_[i]);
    }

    double instantOf(int activity, Duration offset) const {
        const auto i = static_cast<std::size_t>(activity);
        return begin_[i] + offsetAt(network_.activities[i], offset, longer_[i]);
    }

    void follow(const Following& it) {
        const auto to = static_cast<std::size_t>(it.to);
        const double least = instantOf(it.from, it.fromOffset) + seconds(it.gap) -
                             offsetAt(network_.activities[to], it.toOffset, longer_[to]);
        if (least > begin_[to]) {
            begin_[to] = least;
            heldBy_[to] = it.from;
        }
    }

    void judge(std::size_t number) {
        double worst = -1e18;
        int at = -1;
        for (const Deadline& deadline : network_.plating) {
            const double late = instantOf(deadline.activity, deadline.offset) -
                                static_cast<double>(deadline.latest.inSeconds());
            if (late > worst) {
                worst = late;
                at = deadline.activity;
            }
        }
        record_.lateness[number] = network_.plating.empty() ? 0 : worst;
        for (; at >= 0; at = heldBy_[static_cast<std::size_t>(at)]) {
            ++decides_[static_cast<std::size_t>(at)];
        }
    }

    const Network& network_;
    std::uint64_t seed_;
    Record& record_;
    std::vector<std::int64_t>& decides_;
    std::vector<double> begin_;
    std::vector<double> longer_;
    std::vector<int> heldBy_;
};

float inOrder(std::vector<float>& values, double part) {
    const auto at = static_cast<std::ptrdiff_t>(std::min(part * static_cast<double>(values.size()),
                                                         static_cast<double>(values.size() - 1)));
    std::ranges::nth_element(values, values.begin() + at);
    return values[static_cast<std::size_t>(at)];
}

Instant instantOf(float value) {
    return Instant::atSeconds(static_cast<std::int64_t>(std::lround(value)));
}

Band bandOf(std::vector<float>& begins, std::vector<float>& ends) {
    constexpr double early = 0.1;
    constexpr double middle = 0.5;
    constexpr double late = 0.9;
    return {instantOf(inOrder(begins, early)),
            instantOf(inOrder(begins, middle)),
            instantOf(inOrder(begins, late)),
            instantOf(inOrder(ends, early)),
            instantOf(inOrder(ends, middle)),
            instantOf(inOrder(ends, late)),
            0};
}

constexpr std::size_t portion = 64;

}  // namespace

double Rehearsal::chanceOnTime() const {
    const auto late = std::ranges::upper_bound(lateness, Duration());
    return lateness.empty() ? 0
                            : static_cast<double>(late - lateness.begin()) /
                                  static_cast<double>(lateness.size());
}

Duration Rehearsal::earlierFor(double chance) const {
    if (lateness.empty()) {
        return {};
    }
    const double wanted = std::ceil(chance * static_cast<double>(lateness.size()));
    const auto at = static_cast<std::size_t>(std::max(1.0, wanted)) - 1;
    return std::max(Duration(), lateness[std::min(at, lateness.size() - 1)]);
}

Rehearsal rehearse(const Network& network, const RehearsalOptions& options, std::stop_token stop,
                   const std::function<void(int)>& progress) {
    const auto runs = static_cast<std::size_t>(options.runs);
    const std::size_t activities = network.activities.size();
    Record record(runs, activities);
    std::atomic<std::size_t> next = 0;
    std::atomic<int> done = 0;
    std::vector<std::vector<std::int64_t>> decides(static_cast<std::size_t>(options.threads),
                                                   std::vector<std::int64_t>(activities));
    const auto work = [&](std::size_t thread) {
        Runs own(network, options.seed, record, decides[thread]);
        while (!stop.stop_requested()) {
            const std::size_t first = next.fetch_add(portion);
            if (first >= runs) {
                return;
            }
            const std::size_t end = std::min(first + portion, runs);
            for (std::size_t run = first; run < end; ++run) {
                own.run(run);
            }
            done += static_cast<int>(end - first);
            if (progress) {
                progress(done);
            }
        }
    };
    {
        std::vector<std::jthread> others;
        for (std::size_t thread = 1; thread < static_cast<std::size_t>(options.threads); ++thread) {
            others.emplace_back(work, thread);
        }
        work(0);
    }
    Rehearsal outcome;
    outcome.runs = done;
    // Portions are taken in order, so that what was done comes first.
    const auto kept = static_cast<std::ptrdiff_t>(outcome.runs);
    for (auto it = record.lateness.begin(); it != record.lateness.begin() + kept; ++it) {
        outcome.lateness.push_back(Duration::seconds(static_cast<std::int64_t>(std::ceil(*it))));
    }
    std::ranges::sort(outcome.lateness);
    for (std::size_t i = 0; i < activities && kept > 0; ++i) {
        record.begins[i].resize(static_cast<std::size_t>(kept));
        record.ends[i].resize(static_cast<std::size_t>(kept));
        Band band = bandOf(record.begins[i], record.ends[i]);
        for (const auto& own : decides) {
            band.decides += static_cast<double>(own[i]) / static_cast<double>(kept);
        }
        outcome.bands.push_back(band);
    }
    return outcome;
}

}  // namespace rangeline
