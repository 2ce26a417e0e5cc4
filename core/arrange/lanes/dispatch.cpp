#include "arrange/lanes/dispatch.h"

#include <algorithm>

namespace rangeline::lanes {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

}  // namespace

Dispatch::Dispatch(rules::Formulation& formulation, const rules::Previous& previous,
                   std::function<bool()> keepGoing)
    : f_(formulation),
      keepGoing_(std::move(keepGoing)),
      planned_(2 * formulation.engine.variables()),
      chosen_(previous.chosen) {
    for (const auto& start : previous.starts) {
        planned_[at(start.view)] = start.value;
    }
}

bool Dispatch::run(std::int64_t conflictLimit) {
    std::int64_t conflicts = 0;
    std::vector<int> touched;
    while (keepGoing_()) {
        if (!f_.engine.propagate()) {
            touched.clear();
            if (++conflicts > conflictLimit || !f_.engine.learn(touched)) {
                return false;
            }
            continue;
        }
        const auto decision = next();
        if (!decision) {
            return true;
        }
        f_.engine.decide(*decision);
    }
    return false;
}

bool Dispatch::isOpen(Literal literal) const {
    return !f_.engine.isTrue(literal) && !f_.engine.isFalse(literal);
}

/// What was chosen stays; then the next that is due is begun, neither sooner than planned nor later
/// than it can be.
std::optional<engine::Literal> Dispatch::next() const {
    const auto kept =
        std::ranges::find_if(chosen_, [this](Literal literal) { return isOpen(literal); });
    if (kept != chosen_.end()) {
        return *kept;
    }
    const engine::Group* group = nextDue();
    if (group == nullptr) {
        return std::nullopt;
    }
    if (const auto choice = choiceOf(*group)) {
        return choice;
    }
    const Value when = timeFor(*group);
    const Literal fromThen{group->start.view, when};
    return isOpen(fromThen) ? fromThen : Literal{engine::opposite(group->start.view), -when};
}

engine::Value Dispatch::timeFor(const engine::Group& group) const {
    const engine::View start = group.start.view;
    const Value low = f_.engine.low(start);
    return std::clamp(planned_[at(start)].value_or(low), low, f_.engine.high(start));
}

/// What is there and not begun, in the order of its time in the plan or of the first at which it
/// can begin.
const engine::Group* Dispatch::nextDue() const {
    const engine::Group* due = nullptr;
    for (const engine::Group& group : f_.groups) {
        const bool open = !f_.engine.fixed(group.start.view) || choiceOf(group);
        if (open && isTrue(group.start.relevant) &&
            (due == nullptr || timeFor(group) < timeFor(*due))) {
            due = &group;
        }
    }
    return due;
}

/// The first open one of a set of which none is true.
std::optional<engine::Literal> Dispatch::choiceOf(const engine::Group& group) const {
    for (const std::vector<Literal>& set : group.sets) {
        const bool made = std::ranges::any_of(set, [this](Literal l) { return isTrue(l); });
        const auto open = std::ranges::find_if(set, [this](Literal l) { return isOpen(l); });
        if (!made && open != set.end()) {
            return *open;
        }
    }
    return std::nullopt;
}

}  // namespace rangeline::lanes
