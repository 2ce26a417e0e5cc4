#pragma once
// What touched a ware, in order: for cautions about what is left on it.

#include "analysis/at.h"
#include "analysis/use_index.h"

namespace rangeline {

/// Calls touched(task, interval of its chain) for each task in the ware in order, and washed() for
/// each wash at a sink between them.
template <class Washed, class Touched>
void walkWare(const UseIndex& index, int wareUnit, Washed washed, Touched touched) {
    const bool atSink = index.wareOfUnit(wareUnit).cleaning.sink.has_value();
    for (const WareUse& use : index.wareUses(wareUnit)) {
        if (use.wash) {
            if (atSink) {
                washed();
            }
            continue;
        }
        for (const int task : at(index.expanded().chains, use.chain).tasks) {
            touched(task, use.interval);
        }
    }
}

}  // namespace rangeline
