#include "arrange/lanes/dispatch.h"

#include <algorithm>

namespace rangeline::lanes {
namespace {

template <class Index>
std::size_t at(Index index) {
    return static_cast<std::size_t>(index);
}

/// So often something is put off by a little more before it is given up.
constexpr int mostDelays = 200;
/// So often each is looked at, on an average.
constexpr std::size_t mostRounds = 6;
/// So often it begins anew, with something put off by so many seconds more.
constexpr int mostAnew = 30;
constexpr engine::Value putOffBy = 120;

}  // namespace

Dispatch::Dispatch(rules::Formulation& formulation, const rules::Previous& previous,
                   std::function<bool()> keepGoing)
    : f_(formulation),
      keepGoing_(std::move(keepGoing)),
      planned_(2 * formulation.engine.variables()),
      preferred_(2 * formulation.engine.variables(), false),
      keepsFor_(formulation.tasks.size()) {
    for (const auto& start : previous.starts) {
        planned_[at(start.view)] = start.value;
    }
    for (const Literal literal : previous.chosen) {
        preferred_[at(literal.view)] = true;
    }
    for (const Wait& wait : f_.expanded.waits) {
        for (const int to : wait.to.tasks) {
            if (wait.most) {
                auto& before = keepsFor_[at(to)];
                before.insert(before.end(), wait.from.tasks.begin(), wait.from.tasks.end());
            }
        }
    }
}

bool Dispatch::run() {
    if (!f_.engine.propagate()) {
        return false;
    }
    keepChoices();
    const int level = f_.engine.level();
    for (int anew = 0; anew < mostAnew; ++anew) {
        f_.engine.backtrackTo(level);
        const auto stuck = goThrough();
        if (!stuck) {
            return true;
        }
        if (*stuck >= f_.tasks.size() || !putOffBefore(*stuck, putOffBy)) {
            return false;
        }
    }
    return false;
}

/// The group for which there is no place left, or a number beyond; none if all
/// are placed.
std::optional<std::size_t> Dispatch::goThrough() {
    std::size_t last = f_.groups.size();
    for (std::size_t round = 0; round < mostRounds * f_.groups.size() && keepGoing_(); ++round) {
        const auto due = nextDue();
        if (!due) {
            return std::nullopt;
        }
        last = due->group;
        const engine::Group& group = f_.groups[last];
        // What was chosen may ask for a wash that is due before.
        const bool fits = allChosen(group) ? begin(*due) : choose(group);
        if (!fits) {
            return last;
        }
    }
    return f_.groups.size();
}

void Dispatch::keepChoices() {
    for (const engine::Group& group : f_.groups) {
        for (const auto& set : group.sets) {
            for (const Literal literal : set) {
                if (preferred_[at(literal.view)] && isOpen(literal)) {
                    attempt(literal);
                }
            }
        }
    }
}

/// What is there and not begun, in the order of its time in the plan or of the
/// first at which it can begin.
std::optional<Dispatch::Due> Dispatch::nextDue() const {
    std::optional<Due> next;
    for (std::size_t i = 0; i < f_.groups.size(); ++i) {
        const engine::View start = f_.groups[i].start.view;
        if ((f_.engine.fixed(start) && allChosen(f_.groups[i])) ||
            !f_.engine.isTrue(f_.groups[i].start.relevant)) {
            continue;
        }
        const Value first = f_.engine.low(start);
        const Value planned = std::min(planned_[at(start)].value_or(first), f_.engine.high(start));
        if (!next || std::max(first, planned) < next->at) {
            next = {i, std::max(first, planned)};
        }
    }
    return next;
}

bool Dispatch::isOpen(Literal literal) const {
    return !f_.engine.isTrue(literal) && !f_.engine.isFalse(literal);
}

/// Decides it if nothing speaks against it.
bool Dispatch::attempt(Literal literal) {
    const int level = f_.engine.level();
    f_.engine.decide(literal);
    if (f_.engine.propagate()) {
        return true;
    }
    f_.engine.backtrackTo(level);
    return false;
}

bool Dispatch::allChosen(const engine::Group& group) const {
    return std::ranges::all_of(group.sets, [this](const std::vector<Literal>& set) {
        return set.empty() ||
               std::ranges::any_of(set, [this](Literal l) { return f_.engine.isTrue(l); });
    });
}

/// Who, where and in what: as planned, or else the first that can be had.
bool Dispatch::choose(const engine::Group& group) {
    for (const std::vector<Literal>& set : group.sets) {
        bool made = set.empty() ||
                    std::ranges::any_of(set, [this](Literal l) { return f_.engine.isTrue(l); });
        for (std::size_t i = 0; i < set.size() && !made; ++i) {
            made = f_.engine.isTrue(set[i]) || (isOpen(set[i]) && attempt(set[i]));
        }
        if (!made) {
            return false;
        }
    }
    return true;
}

bool Dispatch::begin(const Due& due) {
    const engine::View start = f_.groups[due.group].start.view;
    Value when = due.at;
    for (int delay = 0; delay < mostDelays; ++delay) {
        // Neither sooner than planned nor later than it can be.
        const Literal fromThen{start, when};
        if (isOpen(fromThen)) {
            attempt(fromThen);
        }
        when = std::max(when, f_.engine.low(start));
        const Literal byThen{engine::opposite(start), -when};
        if (f_.engine.isTrue(byThen) || (isOpen(byThen) && attempt(byThen))) {
            return true;
        }
        when += f_.engine.stepOf(start);
    }
    return false;
}

/// What the task may not come too long after comes later, too, and what that
/// may not ... False if there is nothing that can still be put off.
bool Dispatch::putOffBefore(std::size_t task, Value by) {
    std::vector<std::size_t> later;
    const auto addBefore = [&](std::size_t of) {
        for (const int from : keepsFor_[of]) {
            const bool known = std::ranges::count(later, at(from)) > 0;
            if (!known && !f_.hasBegun(from)) {
                later.push_back(at(from));
            }
        }
    };
    addBefore(task);
    for (std::size_t i = 0; i < later.size(); ++i) {
        addBefore(later[i]);
    }
    for (const std::size_t one : later) {
        auto& planned = planned_[at(f_.tasks[one].start)];
        planned = std::max(planned.value_or(f_.earliest), f_.engine.low(f_.tasks[one].start)) + by;
    }
    return !later.empty();
}

}  // namespace rangeline::lanes
