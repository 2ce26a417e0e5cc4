#pragma once
// Blocks and proposals in words, for screen readers and the status line.

#include "timeline_view/proposal.h"

namespace rangeline {

/// "Roast the thighs, slot 2, from 5:10 to 5:55 PM, collides, pinned, no minutes to spare"
QString describeItem(const LessonDocument& document, const TimelineScene& scene, int item,
                     const QLocale& locale);

/// "“Roast the thighs”: from 5:10 to 5:55 PM, collides: ..."
QString describeProposal(const LessonDocument& document, const Proposal& proposal,
                         const ProposalLook& look, const QLocale& locale);

/// The name of the undo step: "move “Roast the thighs”".
QString describeAction(const LessonDocument& document, const Proposal& proposal, ActionKind kind,
                       const QLocale& locale);

/// The name of a placement as a sentence has it.
QString nameOf(const LessonDocument& document, const PlacementKey& key, const QLocale& locale);

}  // namespace rangeline
