#pragma once
// Rows of what suffers in a rehearsal, and of what would help, for tables.

#include "rehearse/help.h"
#include "text/rehearsal_text.h"

namespace rangeline {

/// Something that goes on for too long in some of the rehearsals.
struct SufferingRow {
    QString who;   ///< the step whose food waits, or the cook who is waited for
    QString step;  ///< the one that comes too late for it, or that waits
    int percent = 0;
    QString by;  ///< "4 min", on average where it does
    Excess excess;
};

/// The most frequent first; those below one in a hundred are left out.
std::vector<SufferingRow> waitingFoodRows(const Rehearsal& rehearsal, const Network& network,
                                          const UseIndex& index, const TextContext& context);
std::vector<SufferingRow> shortHandsRows(const Rehearsal& rehearsal, const Network& network,
                                         const UseIndex& index, const TextContext& context);

/// A change that was tried.
struct HelpRow {
    QString change;  ///< "One more sauté pan"
    int percent = 0;
    QString earlier;  ///< "Begin 6 min earlier", for 90 of 100; or "As planned"
};
/// What helps most first.
std::vector<HelpRow> helpRows(const Helps& helps, const TextContext& context);
/// "One more sauté pan helps most: plating is on time in 81 of 100 then, instead of 63."
QString helpsMostText(const Helps& helps, const TextContext& context);

}  // namespace rangeline
