#include "rehearse/run.h"

#include <algorithm>
#include <limits>

namespace rangeline {
namespace {

constexpr double always = -std::numeric_limits<double>::infinity();

double seconds(Duration length) {
    return static_cast<double>(length.inSeconds());
}

double seconds(Instant instant) {
    return static_cast<double>(instant.inSeconds());
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

}  // namespace

OneRun::OneRun(const Network& network)
    : network_(network),
      begin_(network.activities.size()),
      longer_(network.activities.size()),
      heldBy_(network.activities.size()),
      handsWait_(network.activities.size()),
      handsFollowing_(network.activities.size()),
      spareFree_(static_cast<std::size_t>(network.spares)) {
    for (const Activity& activity : network.activities) {
        lengths_.emplace_back(activity.range);
    }
}

void OneRun::go(std::uint64_t seed, std::uint64_t number) {
    constexpr std::uint64_t apart = 0x9E3779B97F4A7C15ULL;
    const std::uint64_t own = Random(seed + number * apart).next();
    std::ranges::fill(spareFree_, always);
    std::size_t next = 0;
    for (std::size_t i = 0; i < network_.activities.size(); ++i) {
        const Activity& activity = network_.activities[i];
        Random random(own ^ activity.stream);
        longer_[i] = lengths_[i].draw(random) - seconds(activity.length);
        hold(i, next);
    }
    judge();
}

double OneRun::end(std::size_t i) const {
    return begin_[i] + std::max(0.0, seconds(network_.activities[i].length) + longer_[i]);
}

double OneRun::instantOf(int activity, Duration offset) const {
    const auto i = static_cast<std::size_t>(activity);
    return begin_[i] + offsetAt(network_.activities[i], offset, longer_[i]);
}

double OneRun::boundOf(const Following& following) const {
    const auto to = static_cast<std::size_t>(following.to);
    return instantOf(following.from, following.fromOffset) + seconds(following.gap) -
           offsetAt(network_.activities[to], following.toOffset, longer_[to]);
}

/// The spare and what is waited for change places where the spare is free sooner.
double OneRun::takeSpare(const Following& following, double until) {
    double& free = spareFree_[static_cast<std::size_t>(following.spare)];
    const double sooner = std::min(free, until);
    free = std::max(free, until);
    return sooner;
}

/// Its followings begin at `next`, which is moved behind them.
void OneRun::hold(std::size_t i, std::size_t& next) {
    const double planned = seconds(network_.activities[i].planned);
    Bound other{planned};
    Bound hands{always};
    Bound spared{always};
    const auto raise = [this](const Following& following, double until, Bound& bound) {
        if (until > bound.until) {
            bound = {until, static_cast<int>(&following - network_.followings.data())};
        }
    };
    for (; next < network_.followings.size() && network_.followings[next].to == static_cast<int>(i);
         ++next) {
        const Following& following = network_.followings[next];
        const double until = boundOf(following);
        if (following.spare >= 0 && until > std::max(planned, spared.until)) {
            if (spared.following >= 0) {
                const Following& less =
                    network_.followings[static_cast<std::size_t>(spared.following)];
                raise(less, spared.until, less.by == HeldBy::Cook ? hands : other);
            }
            spared = {until, static_cast<int>(next)};
        } else {
            raise(following, until, following.by == HeldBy::Cook ? hands : other);
        }
    }
    if (spared.following >= 0) {
        const Following& most = network_.followings[static_cast<std::size_t>(spared.following)];
        raise(most, takeSpare(most, spared.until), most.by == HeldBy::Cook ? hands : other);
    }
    const Bound& last = hands.until > other.until ? hands : other;
    begin_[i] = last.until;
    heldBy_[i] = last.following < 0
                     ? -1
                     : network_.followings[static_cast<std::size_t>(last.following)].from;
    handsWait_[i] = std::max(0.0, hands.until - other.until);
    handsFollowing_[i] = hands.following;
}

void OneRun::judge() {
    lateness_ = network_.plating.empty() ? 0 : always;
    latest_ = -1;
    for (const Deadline& deadline : network_.plating) {
        const double late =
            instantOf(deadline.activity, deadline.offset) - seconds(deadline.latest);
        if (late > lateness_) {
            lateness_ = late;
            latest_ = deadline.activity;
        }
    }
}

double OneRun::pointOf(const std::vector<Moment>& moments, bool first) const {
    double point = instantOf(moments.front().activity, moments.front().offset);
    for (const Moment& moment : moments) {
        const double at = instantOf(moment.activity, moment.offset);
        point = first ? std::min(point, at) : std::max(point, at);
    }
    return point;
}

double OneRun::over(const WaitLimit& limit) const {
    const double from =
        limit.from.empty() ? seconds(limit.fixed) : pointOf(limit.from, limit.fromFirst);
    return pointOf(limit.to, limit.toFirst) - from - seconds(limit.most);
}

}  // namespace rangeline
