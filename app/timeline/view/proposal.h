#pragma once
// What a proposal looks like: ghosts where things would be, what they would collide with, and why.

#include <QString>
#include <vector>

#include "timeline/timeline_painter.h"
#include "timeline_view/scene.h"
#include "timeline_view/tool.h"

namespace rangeline {

struct ProposalLook {
    std::vector<Ghost> ghosts;
    std::vector<int> clashing;   ///< items
    QString reason;              ///< the worst, as a sentence; empty: none
    std::vector<QString> notes;  ///< a few words each, worst first; to read while dragging
    int more = 0;                ///< reasons that are not among the notes
    bool collides = false;
    Interval interval;  ///< of what is held, as it would lie
};

/// Tries the proposal's edit out and takes it back.
ProposalLook lookOf(const LessonDocument& document, const TimelineScene& scene,
                    const Proposal& proposal, const QLocale& locale);

}  // namespace rangeline
