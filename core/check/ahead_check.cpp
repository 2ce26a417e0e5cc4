// Food made before the lesson needs somewhere to be, and everything that goes into it made before.

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"
#include "model/equipment_kinds.h"

namespace rangeline {
namespace {

bool stored(const Kitchen& kitchen, const DoneAhead& ahead) {
    if (!ahead.storage) {
        return false;
    }
    if (*ahead.storage != Storage::Cold) {
        return true;
    }
    const int pool = ahead.place ? poolItem(kitchen, ahead.place->pool) : -1;
    const auto* kind = pool < 0 ? nullptr : findEquipmentKind(at(kitchen.pools, pool).kind);
    return kind != nullptr && kind->keepsCold;
}

}  // namespace

void checkAhead(const UseIndex& index, int, std::vector<Finding>& findings) {
    const Lesson& lesson = index.lesson();
    const auto add = [&](FindingCode code, const StepId& step) {
        findings.push_back(collision(code, {}, {}, {}, {stepName(lesson, step)}));
    };
    for (const DoneAhead& ahead : lesson.choices.doneAhead) {
        if (!stored(lesson.kitchen, ahead)) {
            add(FindingCode::AheadWithoutStorage, ahead.step);
        }
    }
    for (const StepId& step : index.expanded().aheadBeforeParts) {
        add(FindingCode::AheadBeforeParts, step);
    }
}

}  // namespace rangeline
