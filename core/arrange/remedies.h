#pragma once
// What would help: single changes that would each make a lesson possible, or let it start later,
// every one tried by planning the changed lesson.

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "arrange/explain.h"
#include "model/edit.h"

namespace rangeline {

enum class RemedyKind : std::uint8_t {
    ServeLater,        ///< by `by`; the clock of everything else stays
    OpenEarlier,       ///< the kitchen opens earlier by `by`
    CookEarlier,       ///< cooking may start earlier by `by`
    LeaveLater,        ///< everyone is out later by `by`
    WaitLess,          ///< the least wait is shorter by `by`; index: of Expanded::waits
    WaitLonger,        ///< the most wait is longer by `by`; index: of Expanded::waits
    KeepLonger,        ///< the food keeps longer by `by`; index: of Expanded::waits
    PlatesWaitLonger,  ///< plates wait longer by `by`; index: of Expanded::windows
    Unpin,             ///< index: of Expanded::tasks
    DoAhead,           ///< with all that goes into it; index: of Expanded::tasks, its first batch
    TurnOut,           ///< food leaves its vessel when it is done; index: of Kitchen::wares
    AnotherWare,       ///< one more; index: of Kitchen::wares
    MoreRoom,          ///< a pool holds one more; index: of Kitchen::pools
    AnotherBurner,     ///< one like the strongest
    AnotherOven,       ///< one like the first
    AnotherCook,       ///< a helper at the pace on the card
};

struct Remedy {
    RemedyKind kind{};
    int index = 0;               ///< into the lesson as it is; see RemedyKind
    std::optional<Duration> by;  ///< of the kinds that have an amount; a multiple of the grain
    bool least = true;           ///< less than `by` was shown not to be enough
    /// When the best plan found with it starts, from the serving instant then.
    Instant start;
    std::vector<Edit> edits;  ///< one after the other
};

struct RemedyOptions {
    ExplainOptions explain;             ///< its limits hold for the remedies
    std::string helperName = "Helper";  ///< what a further cook is called
};

/// Only what loosens the explanation can help, so that is what is tried. Small changes of time come
/// first, the smallest first; then the others, those that let the plan start latest first. Requires
/// an explanation of this very lesson. Limits and stop leave out what was not tried yet.
std::vector<Remedy> whatMakesItPossible(const Lesson& lesson, const Explanation& explanation,
                                        const RemedyOptions& options = {},
                                        std::stop_token stop = {});

/// The same for a placed lesson and what decides its plating: what lets it start later, the latest
/// first. Amounts are tried at ten minutes, or the whole of a shorter wait.
std::vector<Remedy> whatStartsLater(const Lesson& placed, const Explanation& explanation,
                                    const RemedyOptions& options = {}, std::stop_token stop = {});

}  // namespace rangeline
