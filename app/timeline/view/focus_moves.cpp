#include "timeline_view/focus_moves.h"

#include <algorithm>

namespace rangeline {
namespace {

class FocusMover {
  public:
    FocusMover(const TimelineScene& scene, int item)
        : scene_(scene), item_(item), lane_(laneOf(item)) {}

    int alongLane(bool later) const {
        const auto here = rank(item_);
        int best = item_;
        for (int other = 0; other < items(); ++other) {
            const bool beyond = later ? here < rank(other) : rank(other) < here;
            const bool nearer =
                best == item_ || (later ? rank(other) < rank(best) : rank(best) < rank(other));
            if (laneOf(other) == lane_ && beyond && nearer) {
                best = other;
            }
        }
        return best;
    }

    int toLane(int step) const {
        const int lanes = static_cast<int>(scene_.model().lanes.size());
        for (int lane = lane_ + step; lane >= 0 && lane < lanes; lane += step) {
            if (const int found = nearestIn(lane); found >= 0) {
                return found;
            }
        }
        return item_;
    }

  private:
    int items() const { return static_cast<int>(scene_.model().items.size()); }
    int laneOf(int item) const {
        const int block = scene_.mainBlockOf(item);
        return block < 0 ? -1 : scene_.model().blocks[static_cast<std::size_t>(block)].lane;
    }
    std::pair<Instant, int> rank(int item) const {
        return {scene_.item(item).interval.begin, item};
    }
    Duration away(int item) const {
        const Interval& here = scene_.item(item_).interval;
        const Interval& there = scene_.item(item).interval;
        return here.overlaps(there) ? Duration()
                                    : std::max(there.begin - here.end, here.begin - there.end);
    }
    int nearestIn(int lane) const {
        int best = -1;
        for (int other = 0; other < items(); ++other) {
            if (laneOf(other) == lane && (best < 0 || away(other) < away(best))) {
                best = other;
            }
        }
        return best;
    }

    const TimelineScene& scene_;
    int item_;
    int lane_;
};

}  // namespace

int nextFocus(const TimelineScene& scene, int item, Direction direction) {
    const int last = static_cast<int>(scene.model().items.size()) - 1;
    if (last < 0 || direction == Direction::Last) {
        return last;
    }
    if (item < 0 || direction == Direction::First) {
        return 0;
    }
    const FocusMover mover(scene, item);
    switch (direction) {
        case Direction::Earlier:
            return mover.alongLane(false);
        case Direction::Later:
            return mover.alongLane(true);
        case Direction::Up:
            return mover.toLane(-1);
        case Direction::Down:
        case Direction::First:
        case Direction::Last:
            break;
    }
    return mover.toLane(1);
}

}  // namespace rangeline
