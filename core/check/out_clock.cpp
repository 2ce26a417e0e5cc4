#include "check/out_clock.h"

#include <algorithm>
#include <map>

#include "analysis/at.h"
#include "model/equipment_kinds.h"
#include "safety/foods.h"

namespace rangeline {
namespace {

bool isHeated(const Step& step) {
    return !std::holds_alternative<std::monostate>(step.heat);
}

bool isInTheCold(const Step& step, const Kitchen& kitchen) {
    return std::ranges::any_of(step.pools, [&](const PoolNeed& need) {
        const int item = poolItem(kitchen, need.pool);
        const auto* kind = item < 0 ? nullptr : findEquipmentKind(at(kitchen.pools, item).kind);
        return kind != nullptr && kind->keepsCold;
    });
}

bool contains(const std::vector<int>& tasks, int task) {
    return std::ranges::find(tasks, task) != tasks.end();
}

/// Of a step in batches, the one whose food is out first, and the one that takes it up last.
int firstToEnd(const UseIndex& index, const std::vector<int>& tasks) {
    return *std::ranges::min_element(tasks, {},
                                     [&](int task) { return index.placed(task).interval.end; });
}
int lastToStart(const UseIndex& index, const std::vector<int>& tasks) {
    return *std::ranges::max_element(tasks, {},
                                     [&](int task) { return index.placed(task).interval.begin; });
}

class OutSince {
  public:
    struct Found {
        Instant since;
        int made = 0;
        bool fromHeat = false;
    };

    explicit OutSince(const UseIndex& index) : index_(index) {}

    bool isOutDuring(int task) const {
        const Step& step = index_.step(task);
        return !isHeated(step) && !isInTheCold(step, index_.kitchen());
    }

    bool arePlaced(const std::vector<int>& tasks) const {
        return std::ranges::all_of(tasks, [&](int task) { return bool(index_.placed(task)); });
    }

    const Wait& wait(int number) const { return at(index_.expanded().waits, number); }

    bool isUse(int number) const {
        return wait(number).origin == WaitOrigin::Uses && !wait(number).from.tasks.empty();
    }

    const Step& maker(int number) const { return index_.step(wait(number).from.tasks.front()); }

    /// Nothing where the food of the task needs no control.
    std::optional<Found> of(int task) {
        if (const auto known = known_.find(task); known != known_.end()) {
            return known->second;
        }
        const std::optional<Found> found = find(task);
        known_.emplace(task, found);
        return found;
    }

    bool goesOutFurther(int user) const {
        const auto& waits = index_.touches().of(user).waits;
        return isOutDuring(user) && std::ranges::any_of(waits, [&](int number) {
                   return isUse(number) && contains(wait(number).from.tasks, user) &&
                          (maker(number).after.storage == Storage::Room ||
                           maker(number).after.storage == Storage::Cold) &&
                          arePlaced(wait(number).to.tasks);
               });
    }

  private:
    std::optional<Found> find(int task) {
        const Step& step = index_.step(task);
        const Food* food = findFood(step.hazards.food);
        const Interval& during = index_.placed(task).interval;
        std::optional<Found> first;
        if (food != nullptr && food->controlled) {
            const bool out = isOutDuring(task);
            first = Found{out ? during.begin : during.end, task, isHeated(step)};
        }
        if (!isOutDuring(task)) {
            return first;
        }
        for (const int number : index_.touches().of(task).waits) {
            if (isUse(number) && contains(wait(number).to.tasks, task) &&
                arePlaced(wait(number).from.tasks)) {
                const auto before = sinceTaken(number, task);
                if (before && (!first || before->since < first->since)) {
                    first = before;
                }
            }
        }
        return first;
    }

    /// Food that waited at room temperature has been out before; from the cold or the hot it is out
    /// once the task takes it up.
    std::optional<Found> sinceTaken(int number, int task) {
        std::optional<Found> before = of(firstToEnd(index_, wait(number).from.tasks));
        if (before && maker(number).after.storage != Storage::Room) {
            const bool hot = maker(number).after.storage != Storage::Cold;
            before = Found{index_.placed(task).interval.begin, task, hot};
        }
        return before;
    }

    const UseIndex& index_;
    std::map<int, std::optional<Found>> known_;
};

}  // namespace

std::optional<OutClock> outClock(const UseIndex& index, int number) {
    OutSince since(index);
    if (!since.isUse(number)) {
        return std::nullopt;
    }
    const Wait& uses = since.wait(number);
    if (!since.arePlaced(uses.from.tasks) || !since.arePlaced(uses.to.tasks)) {
        return std::nullopt;
    }
    const int made = firstToEnd(index, uses.from.tasks);
    const auto found = since.of(made);
    if (!found) {
        return std::nullopt;
    }
    const Storage storage = since.maker(number).after.storage;
    if (storage == Storage::Room) {
        const int used = lastToStart(index, uses.to.tasks);
        if (since.goesOutFurther(used)) {
            return std::nullopt;
        }
        return OutClock{found->made,
                        used,
                        {found->since, index.placed(used).interval.begin},
                        found->fromHeat,
                        false};
    }
    const auto& waits = index.touches().of(made).waits;
    const bool first = std::ranges::none_of(waits, [&](int other) {
        return other < number && since.isUse(other) && contains(since.wait(other).from.tasks, made);
    });
    if (storage != Storage::Cold || !first || !since.isOutDuring(made)) {
        return std::nullopt;
    }
    return OutClock{
        found->made, made, {found->since, index.placed(made).interval.end}, found->fromHeat, true};
}

}  // namespace rangeline
