#pragma once
// A plan as a list in order of start: when, what, where, who, how long, until what.

#include <QString>
#include <vector>

#include "analysis/use_index.h"
#include "text/names.h"

namespace rangeline {

/// One placement in words; empty texts where there is nothing to say.
struct PlanRow {
    PlacementKey key;
    Interval interval;
    QString clock;
    QString toPlating;  ///< from its start to the main serving instant: "1 h 20 min"
    QString step;
    QString
        where;    ///< burner, or oven with slot and setting, and the pans: "front left burner, pot"
    QString who;  ///< "Robin", "Robin watches"
    QString length;
    QString cue;
};

/// In order of start. The context belongs to the index.
std::vector<PlanRow> planRows(const UseIndex& index, const TextContext& context);

/// The rows in aligned columns, wrapped to `width` character cells.
QString planText(const std::vector<PlanRow>& rows, int width);

}  // namespace rangeline
