#include "live/review.h"

#include <algorithm>
#include <map>

#include "rehearse/network.h"

namespace rangeline::live {
namespace {

class Reviewing {
  public:
    Reviewing(const Lesson& planned, const std::vector<Taken>& taken)
        : expanded_(expand(planned)), index_(planned, expanded_), network_(networkOf(index_)) {
        for (const Taken& each : taken) {
            taken_.emplace(index_.nodeOf(each.key), &each);
        }
    }

    Review run() {
        for (std::size_t i = 0; i < network_.activities.size(); ++i) {
            goOn(i);
        }
        addDeciders();
        std::ranges::stable_sort(review_.steps, {},
                                 [](const ReviewedStep& step) { return step.real.begin; });
        return std::move(review_);
    }

  private:
    /// An activity as it really went.
    struct Gone {
        Instant begin;
        Duration longer;
        bool known = false;
        int after = -1;  ///< what it waited for last; -1: it was due by the plan
        Duration idle;
    };

    Instant instantOf(int activity, Duration offset) const {
        const auto i = static_cast<std::size_t>(activity);
        const Gone& gone = gone_[i];
        const bool moves = offset >= network_.activities[i].stretchEnd;
        return gone.begin + offset + (moves ? gone.longer : Duration());
    }

    void goOn(std::size_t i) {
        const Activity& activity = network_.activities[i];
        Gone gone;
        gone.begin = activity.planned;
        for (; next_ < network_.followings.size() &&
               network_.followings[next_].to == static_cast<int>(i);
             ++next_) {
            const Following& following = network_.followings[next_];
            const Instant could = instantOf(following.from, following.fromOffset) + following.gap -
                                  following.toOffset;
            if (could > gone.begin) {
                gone.begin = could;
                gone.after = following.from;
            }
        }
        if (const auto known = taken_.find(activity.node); known != taken_.end()) {
            const Taken& taken = *known->second;
            gone.idle = taken.started - gone.begin;
            gone.begin = taken.started;
            gone.longer = taken.ended - taken.started - activity.length;
            gone.known = true;
            const Interval planned{activity.planned, activity.planned + activity.length};
            review_.steps.push_back({taken.key,
                                     planned,
                                     {taken.started, taken.ended},
                                     taken.started - planned.begin,
                                     gone.longer});
        }
        gone_.push_back(gone);
    }

    void addDeciders() {
        int last = -1;
        for (const Deadline& deadline : network_.plating) {
            const auto i = static_cast<std::size_t>(deadline.activity);
            const Duration late = instantOf(deadline.activity, deadline.offset) - deadline.latest;
            if (gone_[i].known && (!review_.late || late > *review_.late)) {
                review_.late = late;
                last = deadline.activity;
            }
        }
        for (int at = last; at >= 0; at = gone_[static_cast<std::size_t>(at)].after) {
            const auto i = static_cast<std::size_t>(at);
            review_.deciders.push_back({index_.keyOf(network_.activities[i].node), gone_[i].known,
                                        gone_[i].longer, std::max(Duration(), gone_[i].idle)});
        }
        std::ranges::reverse(review_.deciders);
    }

    Expanded expanded_;
    UseIndex index_;
    Network network_;
    std::map<int, const Taken*> taken_;
    std::vector<Gone> gone_;
    std::size_t next_ = 0;
    Review review_;
};

}  // namespace

Review review(const Lesson& planned, const std::vector<Taken>& taken) {
    return Reviewing(planned, taken).run();
}

}  // namespace rangeline::live
