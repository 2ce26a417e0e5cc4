// What makes one plan better than another. Each aim is a view that is the smaller the better; but
// for the earliest start it is added only when it is wanted, since knowing it costs propagation.

#include <algorithm>

#include "arrange/engine/linear.h"
#include "arrange/engine/squares.h"
#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

constexpr Value most = 1'000'000'000;

/// Food that has been made waits for its use: weighted seconds, over all uses. Ovens that are on
/// early count like food that waits, so that nothing stands on longer than it must.
class Waiting {
  public:
    explicit Waiting(Formulation& f) : f_(f) {}

    View add() {
        for (const Wait& wait : f_.expanded.waits) {
            if (wait.origin == WaitOrigin::Uses) {
                addUses(wait);
            }
        }
        for (const TurnOnVars& turnOn : f_.turnOns) {
            if (!turnOn.ways.empty()) {
                terms_.push_back({engine::opposite(turnOn.start), 1});
                // Until serving; where it may stay off, off must not be the longest of all.
                constant_ += f_.engine.isTrue(turnOn.presence) ? 0 : f_.latest;
            }
        }
        const View total = f_.engine.newVariable(-most, most);
        engine::addLinearAtMost(f_.engine, std::move(terms_), constant_, total);
        return total;
    }

  private:
    void addUses(const Wait& wait) {
        const Value least = wait.least ? std::max(toValue(*wait.least), 0) : 0;
        for (const int from : wait.from.tasks) {
            const int weight = stepOf(f_.lesson, f_.expanded.tasks[static_cast<std::size_t>(from)])
                                   .after.waitingWeight;
            for (const int to : wait.to.tasks) {
                if (weight > 0) {
                    addOne(f_.endOf(from), f_.startOf(to), least, weight);
                }
            }
        }
    }

    /// The wait by itself, so that it is never thought shorter than the link allows.
    void addOne(TimePoint from, TimePoint to, Value least, int weight) {
        const View wait = f_.engine.newVariable(least, 2 * (f_.latest - f_.earliest));
        engine::addLinearAtMost(f_.engine, {{to.view, 1}, {engine::opposite(from.view), 1}},
                                to.offset - from.offset, wait);
        terms_.push_back({wait, weight});
    }

    Formulation& f_;
    std::vector<engine::Term> terms_;
    std::int64_t constant_ = 0;
};

/// Seconds that hands work at least, whoever does it.
std::int64_t leastWork(const Formulation& f) {
    std::int64_t total = 0;
    for (const TaskVars& task : f.tasks) {
        std::int64_t least = most;
        for (const Staffing& staffing : task.staffings) {
            std::int64_t work = 0;
            for (const TimedSegment& segment : staffing.timing.segments) {
                for (const Duration share : segment.shares) {
                    work += share.inSeconds();
                }
            }
            least = std::min(least, work);
        }
        total += task.staffings.empty() ? 0 : least;
    }
    return total;
}

/// Hands at work at once, squared, over time; in cook-minutes. At best never two at once.
View addUnevenness(Formulation& f) {
    std::vector<engine::SquaresTask> work;
    for (const auto& hands : f.handsOf) {
        for (const CumulativeTask& task : hands) {
            work.push_back({task.start, task.end, task.presence});
        }
    }
    const View total = f.engine.newVariable(static_cast<Value>(leastWork(f) / 60), most);
    engine::addSquaresAtMost(f.engine, std::move(work), 60, total);
    return total;
}

/// Vessels that anything is in.
View addVesselCount(Formulation& f) {
    const auto units = static_cast<std::size_t>(f.expanded.stations.wares.size());
    std::vector<Literal> used(units, f.no(f.yes()));
    std::vector<engine::Term> terms;
    for (const UnitChoice& choice : f.wareOfChain) {
        for (std::size_t i = 0; i < choice.units.size(); ++i) {
            Literal& unit = used[static_cast<std::size_t>(choice.units[i])];
            if (f.engine.isFalse(unit)) {
                unit = f.engine.newBoolean();
                terms.push_back({unit.view, 1});
            }
            f.clause({f.no(choice.chosen[i]), unit});
        }
    }
    const View total = f.engine.newVariable(0, most);
    engine::addLinearAtMost(f.engine, std::move(terms), 0, total);
    return total;
}

}  // namespace

void addEarliestStart(Formulation& f) {
    const bool pinsOnGrain = std::ranges::all_of(f.lesson.placements, [&](const auto& entry) {
        return toValue(entry.second.start) % f.grain() == 0;
    });
    f.earliestStart =
        f.variable(-f.latest, -f.earliest, pinsOnGrain ? f.grain() : 1, false, f.yes());
    const auto include = [&f](View start, Literal presence) {
        f.engine.addDifference(engine::opposite(start), 0, f.earliestStart, presence);
    };
    for (const TaskVars& task : f.tasks) {
        include(task.start, f.yes());
    }
    for (const auto& wash : f.washes) {
        if (wash) {
            include(wash->start, wash->presence);
        }
    }
    for (const TurnOnVars& turnOn : f.turnOns) {
        if (!turnOn.ways.empty()) {
            include(turnOn.start, turnOn.presence);
        }
    }
}

View addAim(Formulation& f, Aim aim) {
    switch (aim) {
        case Aim::StartLate:
            return f.earliestStart;
        case Aim::Fresh:
            return Waiting(f).add();
        case Aim::Calm:
            return addUnevenness(f);
        case Aim::FewPans:
            return addVesselCount(f);
    }
    return f.earliestStart;
}

}  // namespace rangeline::rules
