// Starts, ends and staffing of steps: who works, who watches, at whose pace.

#include <algorithm>

#include "arrange/rules/formulation.h"
#include "arrange/rules/staffing.h"

namespace rangeline::rules {
namespace {

bool hasHands(const Task& task) {
    return std::ranges::any_of(task.segments, [](const Segment& segment) {
        return segment.attention == Attention::Hands;
    });
}

class Staffer {
  public:
    Staffer(Formulation& f, const Task& task, TaskVars& vars)
        : f_(f), task_(task), step_(stepOf(f.lesson, task)), vars_(vars) {}

    void staff() {
        if (f_.isLeftOut(task_.key)) {
            vars_.staffings.push_back({});
        } else if (!hasHands(task_)) {
            add({}, {});
        } else if (vars_.pinned != nullptr && !vars_.pinned->hands.empty()) {
            addPinned();
        } else {
            addAll();
        }
        choose();
    }

  private:
    std::vector<int> able() const {
        std::vector<int> cooks = f_.crewOf(task_.key.group);
        std::erase_if(cooks, [this](int unit) {
            const auto& can = f_.cook(unit).can;
            return !step_.needsAbility.empty() && std::ranges::count(can, step_.needsAbility) == 0;
        });
        return cooks;
    }

    void addAll() {
        const bool shared = step_.mayBeShared && step_.cooks == 1;
        const Sharings sharings =
            shared ? splitsOfPieces(able(), task_.pieces) : setsOfCooks(able(), step_.cooks);
        for (const Sharing& sharing : sharings.ways) {
            add(sharing.cooks, sharing.pieces);
        }
        f_.hasAllWays = f_.hasAllWays && sharings.all;
    }

    void addPinned() {
        std::vector<int> cooks;
        std::vector<int> pieces;
        for (const Share& share : vars_.pinned->hands) {
            const int item = cookItem(f_.lesson.kitchen, share.cook);
            if (item >= 0) {
                cooks.push_back(f_.expanded.stations.cooks.unitOf(item, task_.key.group));
                pieces.push_back(share.pieces);
            }
        }
        add(cooks, pieces);
    }

    void add(const std::vector<int>& cooks, const std::vector<int>& pieces) {
        Staffing staffing;
        staffing.cooks = cooks;
        std::vector<HandShare> shares;
        for (std::size_t i = 0; i < cooks.size(); ++i) {
            staffing.shares.push_back({f_.cook(cooks[i]).id, pieces[i]});
            shares.push_back({f_.cook(cooks[i]).pacePercent, pieces[i]});
        }
        staffing.timing =
            timingOf(task_, shares, vars_.pinned != nullptr ? vars_.pinned->lasts : std::nullopt);
        vars_.staffings.push_back(std::move(staffing));
    }

    void choose() {
        if (vars_.staffings.size() == 1) {
            vars_.staffings.front().chosen = f_.yes();
            return;
        }
        std::vector<Literal> literals;
        for (Staffing& staffing : vars_.staffings) {
            staffing.chosen = f_.boolean(true);
            literals.push_back(staffing.chosen);
        }
        f_.exactlyOne(literals, f_.yes());
    }

    Formulation& f_;
    const Task& task_;
    const Step& step_;
    TaskVars& vars_;
};

/// The end follows from the start, or from the start and who works.
void linkEnd(Formulation& f, TaskVars& vars) {
    Value shortest = f.latest;
    Value longest = 0;
    for (const Staffing& staffing : vars.staffings) {
        shortest = std::min(shortest, toValue(staffing.timing.length));
        longest = std::max(longest, toValue(staffing.timing.length));
    }
    const TimePoint start{vars.start, 0};
    if (shortest >= longest) {
        vars.end = {vars.start, longest};
        return;
    }
    vars.end = {f.variable(f.engine.low(start) + shortest, f.engine.high(start) + longest, 1, false,
                           f.yes()),
                0};
    f.order(start, vars.end, shortest, f.yes());
    f.order(vars.end, start, -longest, f.yes());
    for (const Staffing& staffing : vars.staffings) {
        f.order(start, vars.end, toValue(staffing.timing.length), staffing.chosen);
        f.order(vars.end, start, -toValue(staffing.timing.length), staffing.chosen);
    }
}

void workHands(Formulation& f, const TaskVars& vars) {
    for (const Staffing& staffing : vars.staffings) {
        for (const TimedSegment& segment : staffing.timing.segments) {
            for (std::size_t i = 0; i < segment.shares.size(); ++i) {
                const Value begin = toValue(segment.offset);
                const Value end = begin + toValue(segment.shares[i]);
                if (begin < end) {
                    f.handsOf[static_cast<std::size_t>(staffing.cooks[i])].push_back(
                        {{vars.start, begin}, {vars.start, end}, 1, staffing.chosen});
                }
            }
        }
    }
}

Watching chooseWatcher(Formulation& f, const Task& task, const TaskVars& vars, std::size_t index) {
    Watching watching;
    watching.cooks = f.crewOf(task.key.group);
    if (vars.pinned != nullptr && index < vars.pinned->watchers.size()) {
        const int item = cookItem(f.lesson.kitchen, vars.pinned->watchers[index]);
        if (item >= 0) {
            watching.cooks = {f.expanded.stations.cooks.unitOf(item, task.key.group)};
        }
    }
    if (watching.cooks.size() == 1) {
        watching.chosen = {f.yes()};
        return watching;
    }
    for (std::size_t i = 0; i < watching.cooks.size(); ++i) {
        watching.chosen.push_back(f.boolean(true));
    }
    f.exactlyOne(watching.chosen, f.yes());
    return watching;
}

/// Whether the segment lies in the same place whoever works.
bool sameEverywhere(const TaskVars& vars, std::size_t segment) {
    return std::ranges::all_of(vars.staffings, [&](const Staffing& staffing) {
        const TimedSegment& here = staffing.timing.segments[segment];
        const TimedSegment& first = vars.staffings.front().timing.segments[segment];
        return here.offset == first.offset && here.length == first.length;
    });
}

void watch(Formulation& f, const TaskVars& vars, const Watching& watching, std::size_t segment) {
    const std::size_t ways = sameEverywhere(vars, segment) ? 1 : vars.staffings.size();
    for (std::size_t way = 0; way < ways; ++way) {
        const TimedSegment& timed = vars.staffings[way].timing.segments[segment];
        const Literal staffed = ways == 1 ? f.yes() : vars.staffings[way].chosen;
        const TimePoint begin{vars.start, toValue(timed.offset)};
        const TimePoint end{vars.start, toValue(timed.offset + timed.length)};
        for (std::size_t i = 0; i < watching.cooks.size() && timed.length > Duration(); ++i) {
            f.watchesOf[static_cast<std::size_t>(watching.cooks[i])].push_back(
                {begin, end, 1, f.both(staffed, watching.chosen[i])});
        }
    }
}

void addTask(Formulation& f, const Task& task) {
    TaskVars& vars = f.tasks.emplace_back();
    vars.pinned = f.pinnedPlacement(task.key);
    const std::size_t self = f.tasks.size() - 1;
    vars.start = f.startVariable(task.key, RequirementKind::Pinned, static_cast<int>(self));
    Staffer(f, task, vars).staff();
    if (vars.staffings.empty()) {
        f.lack(RequirementKind::NobodyCan, self);
        vars.end = {vars.start, 0};
        f.groups.push_back({vars.end, {vars.start, true, f.yes()}, {}});
        return;
    }
    linkEnd(f, vars);
    workHands(f, vars);
    for (std::size_t i = 0; i < vars.staffings.front().timing.segments.size(); ++i) {
        if (task.segments[i].attention == Attention::Watch) {
            vars.watchings.push_back(chooseWatcher(f, task, vars, vars.watchings.size()));
            watch(f, vars, vars.watchings.back(), i);
        }
    }
    // Washing up comes straight after serving, what is left once cooking has begun at once;
    // everything else as late as can be.
    const bool late = !stepOf(f.lesson, task).afterServing && f.underway == nullptr;
    engine::Group group{vars.end, {vars.start, late, f.yes()}, {}};
    std::vector<Literal>& staffings = group.sets.emplace_back();
    for (const Staffing& staffing : vars.staffings) {
        staffings.push_back(staffing.chosen);
    }
    for (const Watching& watching : vars.watchings) {
        group.sets.push_back(watching.chosen);
    }
    f.groups.push_back(std::move(group));
}

}  // namespace

void addTasks(Formulation& f) {
    f.tasks.reserve(f.expanded.tasks.size());
    for (const Task& task : f.expanded.tasks) {
        addTask(f, task);
    }
    for (const WatchedWait& wait : f.expanded.watchedWaits) {
        const std::vector<Watching>& all = f.tasks[static_cast<std::size_t>(wait.task)].watchings;
        if (all.empty()) {
            continue;  // nobody can do the step: that is said already
        }
        const Watching& watching = all.back();
        for (std::size_t i = 0; i < watching.cooks.size(); ++i) {
            f.watchesOf[static_cast<std::size_t>(watching.cooks[i])].push_back(
                {f.endOf(wait.task), f.startOf(wait.next), 1, watching.chosen[i]});
        }
    }
}

}  // namespace rangeline::rules
