#include "print/step_cells.h"

#include <algorithm>

#include "analysis/use_index.h"
#include "print/print_text.h"

namespace rangeline {

QString whereCell(const UseIndex& index, const PlanRow& row) {
    const int node = index.nodeOf(row.key);
    const BurnerHeat* heat =
        index.isTask(node) ? std::get_if<BurnerHeat>(&index.step(node).heat) : nullptr;
    return heat == nullptr || heat->level.empty()
               ? row.where
               : Printed::tr("%1, %2").arg(row.where, q(heat->level));
}

QString whatCell(const PlanRow& row, bool collides) {
    const QString what = collides ? Printed::tr("%1 (collision)").arg(row.step) : row.step;
    return row.cue.isEmpty() ? what : Printed::tr("%1: %2").arg(what, row.cue);
}

std::vector<NumberedRow> numberedRows(const TimelineModel& model,
                                      const std::vector<PlanRow>& plan) {
    std::map<PlacementKey, const PlanRow*> byKey;
    for (const PlanRow& row : plan) {
        byKey[row.key] = &row;
    }
    std::vector<NumberedRow> rows;
    for (const TimelineItem& item : model.items) {
        const auto row = byKey.find(item.key);
        if (row != byKey.end()) {
            rows.push_back({item, *row->second});
        }
    }
    return rows;
}

}  // namespace rangeline
