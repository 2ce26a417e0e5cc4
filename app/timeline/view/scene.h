#pragma once
// The lesson laid out for the screen, and the way from placements and lanes to blocks and back.

#include <map>
#include <memory>
#include <optional>

#include "document/lesson_document.h"
#include "document/placing.h"
#include "text/names.h"
#include "timeline/lanes.h"
#include "timeline/timeline_layout.h"

namespace rangeline {

class TimelineScene {
  public:
    /// Reads the lesson anew. The document outlives the scene.
    void read(const LessonDocument& document, const QLocale& locale);

    struct View {
        double unitsPerMinute = 4;
        double deviceScale = 1;
        bool onlyUsedLanes = false;
    };
    /// All of the lesson with some room around it, from (0, 0) on. Requires read().
    void layOut(const TimelineStyle& style, const View& view);

    const TimelineModel& model() const { return model_; }
    const TimelineLayout& layout() const { return layout_; }
    const Lanes& lanes() const { return *lanes_; }
    /// What the picture reaches over, however much of it is placed.
    const Interval& window() const { return window_; }

    /// -1 if the placement is not on the timeline.
    int itemOf(const PlacementKey& key) const;
    /// Index into model().blocks.
    int mainBlockOf(int item) const { return mains_[static_cast<std::size_t>(item)]; }
    QRectF rectOf(int block) const;
    const TimelineItem& item(int item) const {
        return model_.items[static_cast<std::size_t>(item)];
    }
    const Lane& lane(int lane) const { return model_.lanes[static_cast<std::size_t>(lane)]; }

    /// What dropping on the lane means; nothing particular for -1.
    DropTarget targetOf(int lane) const;
    /// The lane of a target; -1 if there is none.
    int laneOf(const DropTarget& target) const;

  private:
    TimelineModel model_;
    TimelineLayout layout_;
    std::unique_ptr<Lanes> lanes_;
    Interval window_;
    std::map<PlacementKey, int> items_;
    std::vector<int> mains_;
    std::vector<int> boxes_;  ///< index into layout_.blocks by block, or -1
};

}  // namespace rangeline
