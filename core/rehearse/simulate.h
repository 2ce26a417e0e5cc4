#pragma once
// A plan run many times with lengths as they may turn out.

#include <cstdint>
#include <functional>
#include <stop_token>
#include <vector>

#include "rehearse/network.h"

namespace rangeline {

struct RehearsalOptions {
    int runs = 10'000;  ///< 1 to 1,000,000
    std::uint64_t seed = 1;
    int threads = 1;            ///< >= 1; the outcome is the same with any number
    bool onlyLateness = false;  ///< neither bands nor what waits is counted
};

/// When one activity begins and ends over all runs.
struct Band {
    Instant beginEarly, beginMiddle, beginLate;  ///< in 10, 50 and 90 of 100 runs no later
    Instant endEarly, endMiddle, endLate;
    double decides = 0;  ///< in which part of the runs it decides when plating is done
};

/// Something that went on for too long in some of the runs.
struct Excess {
    int of = 0;        ///< which one
    double share = 0;  ///< of the runs, > 0
    Duration by;       ///< in those, on average
};

struct Rehearsal {
    int runs = 0;
    std::vector<Duration> lateness;  ///< of plating, ascending; not above zero: on time
    /// By activity of the network. Of a long lesson's many runs as many are taken for the instants
    /// as fit into 400 MB.
    std::vector<Band> bands;
    /// Food that waited longer than it may; of the network's limits.
    std::vector<Excess> waitsTooLong;
    /// What waited a minute or more for nothing but a cook; of the network's followings, which say
    /// what waits for whom.
    std::vector<Excess> waitsForCook;

    double chanceOnTime() const;
    /// In that part of the runs, 0 to 1, plating is no later than this. Requires a run.
    Duration latenessIn(double part) const;
    /// How much earlier all of it has to begin so that plating is on time with this chance, 0 to 1.
    Duration earlierFor(double chance) const;
};

/// Each activity begins as soon as it is due and what it follows allows. `progress` is told how
/// many runs are done, from any thread. Stopped, it tells of the runs that were done.
Rehearsal rehearse(const Network& network, const RehearsalOptions& options,
                   std::stop_token stop = {}, const std::function<void(int)>& progress = {});

}  // namespace rangeline
