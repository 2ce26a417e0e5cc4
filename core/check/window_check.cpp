// Placements against the clock: opening, cooking, serving, and everyone out.

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

Finding tooEarly(const UseIndex& index, const Window& window, Instant then) {
    const Task& task = at(index.expanded().tasks, window.task);
    const Interval interval{then, *window.earliest};
    const std::vector<PlacementKey> keys{task.key};
    if (window.origin == WindowOrigin::PlateKeeps) {
        const Instant serving = servingOf(index.lesson(), task);
        return collision(FindingCode::PlatedTooEarly, keys, {}, interval,
                         {serving - then, serving - *window.earliest});
    }
    const FindingCode code =
        window.origin == WindowOrigin::KitchenOpens      ? FindingCode::BeforeOpening
        : window.origin == WindowOrigin::CookingMayStart ? FindingCode::BeforeCooking
                                                         : FindingCode::AfterServingTooEarly;
    return collision(code, keys, {}, interval, {*window.earliest});
}

Finding tooLate(const UseIndex& index, const Window& window, Instant then) {
    const Interval interval{*window.latest, then};
    const std::vector<PlacementKey> keys{index.keyOf(window.task)};
    if (window.origin == WindowOrigin::EveryoneOut) {
        return collision(FindingCode::NotFinished, keys, {}, interval, {*window.latest});
    }
    return {FindingCode::PlatingLate, Severity::Late, keys, {}, interval, {then - *window.latest}};
}

/// Washes and turning on have no windows of their own: they lie between opening and everyone out.
void whileOpen(const UseIndex& index, int node, std::vector<Finding>& findings) {
    const Placed& placed = index.placed(node);
    const Head& head = index.lesson().head;
    if (!placed) {
        return;
    }
    if (head.kitchenOpens && placed.interval.begin < *head.kitchenOpens) {
        findings.push_back(collision(FindingCode::BeforeOpening, {index.keyOf(node)}, {},
                                     {placed.interval.begin, *head.kitchenOpens},
                                     {*head.kitchenOpens}));
    }
    if (head.everyoneOut && placed.interval.end > *head.everyoneOut) {
        findings.push_back(collision(FindingCode::NotFinished, {index.keyOf(node)}, {},
                                     {*head.everyoneOut, placed.interval.end},
                                     {*head.everyoneOut}));
    }
}

}  // namespace

void checkWindow(const UseIndex& index, int window, std::vector<Finding>& findings) {
    const Window& wanted = at(index.expanded().windows, window);
    const Placed& placed = index.placed(wanted.task);
    if (!placed) {
        return;
    }
    const Instant then = wanted.end == StepEnd::Start ? placed.interval.begin : placed.interval.end;
    if (wanted.earliest && then < *wanted.earliest) {
        findings.push_back(tooEarly(index, wanted, then));
    }
    if (wanted.latest && then > *wanted.latest) {
        findings.push_back(tooLate(index, wanted, then));
    }
}

void checkWashWhileOpen(const UseIndex& index, int chain, std::vector<Finding>& findings) {
    whileOpen(index, index.washNode(chain), findings);
}

void checkTurnOnWhileOpen(const UseIndex& index, int ovenUnit, std::vector<Finding>& findings) {
    whileOpen(index, index.turnOnNode(ovenUnit), findings);
}

}  // namespace rangeline
