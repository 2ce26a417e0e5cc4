#pragma once
// The cautions: what a cook should know before the lesson, though nothing collides. Each is one
// check in a file of its own; the registry in checks.cpp says which subject it looks at.

#include <string>
#include <utility>
#include <vector>

#include "check/check.h"

namespace rangeline {

// ---- the lesson as written (Subject::Whole) ----
void cautionCore(const UseIndex& index, int whole, std::vector<Finding>& findings);
void cautionDepth(const UseIndex& index, int whole, std::vector<Finding>& findings);
void cautionDuration(const UseIndex& index, int whole, std::vector<Finding>& findings);
void cautionGuestAllergen(const UseIndex& index, int whole, std::vector<Finding>& findings);
void cautionHandwork(const UseIndex& index, int whole, std::vector<Finding>& findings);
// ---- placed ----
void cautionDanger(const UseIndex& index, int task, std::vector<Finding>& findings);
void cautionTimeOut(const UseIndex& index, int wait, std::vector<Finding>& findings);
void cautionAheadTimeOut(const UseIndex& index, int task, std::vector<Finding>& findings);
void cautionCrossContact(const UseIndex& index, int wareUnit, std::vector<Finding>& findings);
void cautionAllergenContact(const UseIndex& index, int wareUnit, std::vector<Finding>& findings);
void cautionOvenLimit(const UseIndex& index, int ovenUnit, std::vector<Finding>& findings);

// ---- what they share ----

/// Calls f(serving, component, step) for every step of the lesson in its order.
template <class F>
void forEachStep(const Lesson& lesson, F f) {
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            for (const Step& step : component.steps) {
                f(serving, component, step);
            }
        }
    }
}

/// A caution about a step as written: its key is the first batch of the first group.
inline Finding caution(FindingCode code, const Step& step, std::vector<Figure> figures) {
    return {code, Severity::Caution, {StepKey{step.id, 0, 0}}, {}, {}, std::move(figures)};
}

}  // namespace rangeline
