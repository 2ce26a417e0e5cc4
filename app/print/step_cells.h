#pragma once
// What tables on paper say of a step.

#include <map>

#include "text/plan_text.h"
#include "timeline/build_timeline.h"

namespace rangeline {

/// Places, and how hot the burner is.
QString whereCell(const UseIndex& index, const PlanRow& row);
/// The step, marked if it collides, and how to see that it is done.
QString whatCell(const PlanRow& row, bool collides);

/// The rows of the plan with the numbers that the station timeline gives them.
struct NumberedRow {
    const TimelineItem& item;
    const PlanRow& row;
};
std::vector<NumberedRow> numberedRows(const TimelineModel& model, const std::vector<PlanRow>& plan);

}  // namespace rangeline
