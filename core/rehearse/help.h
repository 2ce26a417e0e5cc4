#pragma once
// Which one change would help a plan most, without arranging anew: it is rehearsed with it.

#include "rehearse/simulate.h"

namespace rangeline {

enum class HelpKind : std::uint8_t {
    Ware,      ///< one more of a ware; index: of Kitchen::wares
    Burner,    ///< one more burner
    Helper,    ///< one more pair of hands, as quick as who is waited for
    DoneAhead  ///< a step done ahead with all that goes into it; index: of Expanded::tasks
};

struct Help {
    HelpKind kind = HelpKind::Ware;
    int index = -1;
    double onTime = 0;  ///< the chance with it
    Duration earlier;   ///< how much earlier to begin for 90 of 100 with it
};

struct Helps {
    double onTime = 0;  ///< as planned
    Duration earlier;
    std::vector<Help> tried;  ///< what helps most first
    bool all = false;         ///< false: stopped before all were tried
};

/// Tries what somebody waits for in the plan, and what may be done ahead. One thing more serves
/// whoever would wait for one of its sort in the plan's order, wherever it has to fit; nothing
/// begins before it is due. Every change meets the same lengths, so that small differences count.
/// `progress` is told from any thread how many runs of how many are done.
Helps whatHelps(const UseIndex& index, const RehearsalOptions& options, std::stop_token stop = {},
                const std::function<void(std::int64_t done, std::int64_t of)>& progress = {});

}  // namespace rangeline
