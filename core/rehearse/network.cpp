#include "rehearse/network.h"

#include <algorithm>
#include <map>
#include <optional>
#include <string_view>
#include <tuple>

#include "analysis/at.h"
#include "analysis/order_graph.h"

namespace rangeline {
namespace {

/// FNV-1a.
class Hash {
  public:
    void add(std::uint64_t value) {
        constexpr std::uint64_t prime = 0x100000001B3ULL;
        value_ = (value_ ^ value) * prime;
    }
    void add(std::string_view text) {
        for (const char letter : text) {
            add(static_cast<std::uint64_t>(static_cast<unsigned char>(letter)));
        }
    }
    std::uint64_t value() const { return value_; }

  private:
    std::uint64_t value_ = 0xCBF29CE484222325ULL;
};

std::uint64_t streamOf(const StepKey& key) {
    Hash hash;
    hash.add(key.step.text);
    hash.add(static_cast<std::uint64_t>(key.batch));
    hash.add(static_cast<std::uint64_t>(key.group));
    return hash.value();
}

/// The range of a length in which the part that stretches takes `planned` instead of the time
/// `asWritten` at pace 1: a slow cook's spread is wider, that of several cooks narrower.
DurationRange spreadOf(const DurationRange& time, Duration planned, Duration asWritten,
                       Duration length) {
    const auto paced = [&](Duration difference) {
        const bool same = asWritten <= Duration() || planned == asWritten;
        return same ? difference
                    : Duration::seconds(difference.inSeconds() * planned.inSeconds() /
                                        asWritten.inSeconds());
    };
    return {length + paced(time.shortest - time.likely), length,
            length + paced(time.longest - time.likely)};
}

Activity activityOf(const UseIndex& index, int node) {
    const Placed& placed = index.placed(node);
    Activity made;
    made.planned = placed.interval.begin;
    made.length = placed.timing.length;
    made.node = node;
    made.range = {made.length, made.length, made.length};
    made.stretchEnd = made.length;
    if (!index.isTask(node)) {
        return made;  // a wash, or turning an oven on
    }
    const Task& task = at(index.expanded().tasks, node);
    made.stream = streamOf(task.key);
    Duration asWritten = task.time.likely;
    const auto stretching = static_cast<std::size_t>(task.stretching);
    if (task.stretching >= 0 && stretching < placed.timing.segments.size()) {
        const TimedSegment& segment = placed.timing.segments[stretching];
        made.stretchBegin = segment.offset;
        made.stretchEnd = segment.offset + segment.length;
        asWritten = task.segments[stretching].length;
    }
    made.range = spreadOf(task.time, made.stretchEnd - made.stretchBegin, asWritten, made.length);
    return made;
}

class Maker {
  public:
    explicit Maker(const UseIndex& index) : index_(index), graph_(index) {}

    Network make() {
        addActivities();
        addFollowings();
        addPlating();
        for (int i = 0; i < index_.count(Subject::Wait); ++i) {
            addLimit(i);
        }
        return std::move(network_);
    }

  private:
    void addActivities() {
        for (int node = 0; node < index_.nodes(); ++node) {
            if (index_.placed(node)) {
                network_.activities.push_back(activityOf(index_, node));
            }
        }
        std::ranges::sort(network_.activities, {}, [](const Activity& it) {
            return std::tuple(it.planned, it.planned + it.length, it.node);
        });
        for (std::size_t i = 0; i < network_.activities.size(); ++i) {
            numberOf_.emplace(network_.activities[i].node, static_cast<int>(i));
        }
    }

    void addFollowings() {
        for (const OrderArc& arc : graph_.arcs()) {
            const int from = numberOf_.at(arc.from);
            const int to = numberOf_.at(arc.to);
            if (from < to) {
                network_.followings.push_back({from, to, arc.fromOffset, arc.toOffset,
                                               arc.least - arc.fromOffset + arc.toOffset, arc.by,
                                               arc.equipment, arc.turn});
            }
        }
        std::ranges::stable_sort(network_.followings, {}, &Following::to);
    }

    void addPlating() {
        for (const LatestStart& bound : graph_.latestStarts()) {
            const bool plates =
                bound.window >= 0 &&
                at(index_.expanded().windows, bound.window).origin == WindowOrigin::Serving;
            if (plates) {
                network_.plating.push_back(
                    {numberOf_.at(bound.node), bound.offset, bound.latest + bound.offset});
            }
        }
    }

    void addLimit(int number) {
        const Wait& wait = at(index_.expanded().waits, number);
        if (!wait.most || !index_.timeOf(wait.from) || !index_.timeOf(wait.to)) {
            return;
        }
        WaitLimit limit;
        limit.from = momentsOf(wait.from);
        limit.to = momentsOf(wait.to);
        limit.fromFirst = wait.from.end == StepEnd::Start;
        limit.toFirst = wait.to.end == StepEnd::Start;
        limit.fixed = wait.from.fixed;
        limit.most = *wait.most;
        limit.wait = number;
        if (!limit.to.empty()) {
            network_.limits.push_back(std::move(limit));
        }
    }

    std::vector<Moment> momentsOf(const StepPoint& point) const {
        std::vector<Moment> moments;
        for (const int task : point.tasks) {
            const Duration length = index_.placed(task).timing.length;
            moments.push_back(
                {numberOf_.at(task), point.end == StepEnd::Start ? Duration() : length});
        }
        return moments;
    }

    const UseIndex& index_;
    OrderGraph graph_;
    Network network_;
    std::map<int, int> numberOf_;  ///< of the activity, by node
};

}  // namespace

Network networkOf(const UseIndex& index) {
    return Maker(index).make();
}

}  // namespace rangeline
