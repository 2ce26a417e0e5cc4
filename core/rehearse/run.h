#pragma once
// One run of a network after another. For core/rehearse only; each thread has one of its own.

#include <cstdint>
#include <optional>
#include <vector>

#include "rehearse/network.h"
#include "rehearse/pert.h"

namespace rangeline {

class OneRun {
  public:
    explicit OneRun(const Network& network);

    /// What comes of run `number` of that seed; the same whatever was run before.
    void go(std::uint64_t seed, std::uint64_t number);

    /// Seconds from serving.
    double begin(std::size_t activity) const { return begin_[activity]; }
    double end(std::size_t activity) const;
    /// Of the plating that is latest; 0 where nothing is plated.
    double lateness() const { return lateness_; }
    /// The activities that decided it, from the last to the first.
    template <class Visit>
    void forDeciding(Visit visit) const {
        for (int at = latest_; at >= 0; at = heldBy_[static_cast<std::size_t>(at)]) {
            visit(static_cast<std::size_t>(at));
        }
    }
    /// How much longer than it may something waited; negative: no longer than that.
    double over(const WaitLimit& limit) const;
    /// How long it waited only for somebody's hands or eyes, and the following that says whose.
    double waitForHands(std::size_t activity) const { return handsWait_[activity]; }
    int handsFollowing(std::size_t activity) const { return handsFollowing_[activity]; }

  private:
    /// What holds an activity back: until when, and which following says so.
    struct Bound {
        double until;
        int following = -1;
    };

    double instantOf(int activity, Duration offset) const;
    double pointOf(const std::vector<Moment>& moments, bool first) const;
    double boundOf(const Following& following) const;
    void hold(std::size_t activity, std::size_t& next);
    double takeSpare(const Following& following, double until);
    void judge();

    const Network& network_;
    std::vector<PertLength> lengths_;
    std::vector<double> begin_;
    std::vector<double> longer_;
    std::vector<int> heldBy_;
    std::vector<double> handsWait_;
    std::vector<int> handsFollowing_;
    std::vector<double> spareFree_;  ///< by spare: from when on
    double lateness_ = 0;
    int latest_ = -1;
};

}  // namespace rangeline
