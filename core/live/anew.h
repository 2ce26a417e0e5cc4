#pragma once
// The rest of a service arranged anew, once cooking has gone off plan: what has begun stays as it
// is, and as little as can be is changed so that plating is the least behind.

#include <optional>
#include <stop_token>
#include <vector>

#include "arrange/underway.h"
#include "check/finding.h"
#include "live/moves.h"
#include "live/outlook.h"

namespace rangeline::live {

struct AnewLimits {
    double seconds = 0.08;                    ///< for the search; may stop anywhere
    std::optional<std::int64_t> conflicts{};  ///< exact: the same answer every time
};

struct Anew {
    /// What PlanReplaced is to be told. No changes: nothing is better than to go on in the order of
    /// the plan that is followed, each step as soon as it can begin.
    SetPlacements change;
    Outlook outlook;              ///< with that change
    Moves moves;                  ///< what begins at another time with it, and what food waits
    std::vector<Finding> broken;  ///< rules that what is left cannot keep any more
};

/// So much time that the answer comes while the cook still looks at what was pressed: about a tenth
/// of a second for sixty steps, a quarter for a hundred and fifty.
AnewLimits limitsFor(const Service& service);

/// Judged by the checker, which never reads what the search thinks. Stopped, it answers at once
/// with what it has.
Anew rearrange(const Service& service, Instant now, const AnewLimits& limits = {},
               std::stop_token stop = {});

/// What a search has to know of a service.
Underway underwayOf(const Service& service, Instant now);

/// Whether a finding is about what is still to come: not all of it has begun or was skipped, and it
/// is not over.
bool concernsTheRest(const Finding& finding, const Lesson& lesson, const Underway& underway);

}  // namespace rangeline::live
