#pragma once
// From a laid out lesson to primitives. The same functions serve the window, where heads and axis
// stay put while the plot scrolls, and paper.

#include <optional>
#include <vector>

#include "timeline/primitives.h"
#include "timeline/text_measure.h"
#include "timeline/timeline_layout.h"

namespace rangeline {

/// A placement that is proposed but not made: what is being dragged.
struct Ghost {
    int lane = 0;
    Interval interval;
    QString name;
    bool collides = false;
};

/// A wait between two items.
struct TimelineLink {
    int fromItem = 0;
    int toItem = 0;
    StepEnd fromEnd = StepEnd::End;
    StepEnd toEnd = StepEnd::Start;
    bool holds = false;  ///< keeps the selected one from moving later
};

/// When an item begins and ends in rehearsals: in 80 of 100 between early and late.
struct SpreadMark {
    int item = 0;
    Instant beginEarly, beginLate;
    Instant endEarly, endMiddle, endLate;
};

/// What the person at the screen is doing; nothing of it appears on paper.
struct TimelineOverlay {
    std::vector<int> selected;  ///< items whose blocks are lit
    std::vector<int> related;   ///< items that share a vessel with them
    std::vector<int> clashing;  ///< items that what is being dragged would collide with
    std::vector<TimelineLink> links;
    std::optional<int> reachOf;  ///< item whose minutes to spare are shown
    std::vector<Ghost> ghosts;
    std::vector<SpreadMark> spreads;
};

/// References must outlive the calls.
struct PaintJob {
    const TimelineModel& model;
    const TimelineLayout& layout;
    const TimelineStyle& style;
    const TextMeasure& measure;
};

/// Clock times and minutes to plating.
void paintAxis(const PaintJob& job, Picture& out);
/// Lane and section names.
void paintHeads(const PaintJob& job, Picture& out);
/// Bands, grid, ovens, blocks and serving lines, as far as they meet `exposed`.
void paintPlot(const PaintJob& job, const QRectF& exposed, Picture& out);
void paintOverlay(const PaintJob& job, const TimelineOverlay& overlay, Picture& out);

/// All of the above.
Picture paintTimeline(const PaintJob& job, const TimelineOverlay& overlay = {});

}  // namespace rangeline
