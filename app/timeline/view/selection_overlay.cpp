#include "timeline_view/selection_overlay.h"

#include <algorithm>

#include "analysis/at.h"

namespace rangeline {
namespace {

class OverlayMaker {
  public:
    OverlayMaker(const LessonDocument& document, const TimelineScene& scene)
        : index_(document.index()), analysis_(document.analysis()), scene_(scene) {}

    TimelineOverlay run(const std::vector<PlacementKey>& selection) {
        for (const PlacementKey& key : selection) {
            if (const int item = scene_.itemOf(key); item >= 0) {
                overlay_.selected.push_back(item);
            }
        }
        const int node = overlay_.selected.empty() ? -1 : index_.nodeOf(selection.front());
        if (node >= 0 && index_.placed(node)) {
            overlay_.reachOf = overlay_.selected.front();
            addHolds(selection.front());
            if (index_.isTask(node)) {
                addChain(node);
                addWaits(node);
            }
        }
        return std::move(overlay_);
    }

  private:
    int itemOf(int node) const { return scene_.itemOf(index_.keyOf(node)); }

    void addChain(int task) {
        for (const int chain : index_.touches().of(task).chains) {
            const auto& tasks = at(index_.expanded().chains, chain).tasks;
            if (std::ranges::find(tasks, task) == tasks.end()) {
                continue;
            }
            for (const int other : tasks) {
                if (other != task && index_.placed(other)) {
                    overlay_.related.push_back(itemOf(other));
                }
            }
        }
    }

    void addLink(const TimelineLink& link) {
        const bool shown = std::ranges::any_of(overlay_.links, [&](const TimelineLink& other) {
            return other.fromItem == link.fromItem && other.toItem == link.toItem;
        });
        if (!shown && link.fromItem >= 0 && link.toItem >= 0 && link.fromItem != link.toItem) {
            overlay_.links.push_back(link);
        }
    }

    void addWaits(int task) {
        for (const int wait : index_.touches().of(task).waits) {
            const Wait& it = at(index_.expanded().waits, wait);
            const auto from = index_.timeOf(it.from);
            const auto to = index_.timeOf(it.to);
            if (it.origin != WaitOrigin::Keeping && from && to && from->task >= 0 &&
                to->task >= 0) {
                addLink({itemOf(from->task), itemOf(to->task), it.from.end, it.to.end, false});
            }
        }
    }

    void addHolds(const PlacementKey& key) {
        const auto spare = std::ranges::find(analysis_.spares, key, &Spare::key);
        if (spare == analysis_.spares.end()) {
            return;
        }
        for (const Hold& hold : spare->holds) {
            if (hold.next >= 0) {
                addHold(key, at(analysis_.spares, hold.next).key);
            }
        }
    }

    /// What follows may start before this has ended, where only part of this holds it up.
    void addHold(const PlacementKey& key, const PlacementKey& next) {
        const int from = scene_.itemOf(key);
        const int to = scene_.itemOf(next);
        if (from >= 0 && to >= 0) {
            const bool after = scene_.item(from).interval.end <= scene_.item(to).interval.begin;
            addLink({from, to, after ? StepEnd::End : StepEnd::Start, StepEnd::Start, true});
        }
    }

    const UseIndex& index_;
    const PlatingAnalysis& analysis_;
    const TimelineScene& scene_;
    TimelineOverlay overlay_;
};

}  // namespace

TimelineOverlay overlayOf(const LessonDocument& document, const TimelineScene& scene,
                          const std::vector<PlacementKey>& selection) {
    return OverlayMaker(document, scene).run(selection);
}

}  // namespace rangeline
