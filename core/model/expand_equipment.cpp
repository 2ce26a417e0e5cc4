#include <algorithm>
#include <cassert>

#include "model/equipment_kinds.h"
#include "model/expander.h"

namespace rangeline {

// ---- chains ---------------------------------------------------------------------------------

/// Food made before the lesson that stands in wares: taken since the opening.
void Expander::storedChains(const StepId& id, const std::vector<WareSpot>& wares, int firstSpot,
                            int group) {
    auto& byGroup = stored_[id];
    byGroup.resize(static_cast<std::size_t>(groups()));
    for (std::size_t i = 0; i < wares.size(); ++i) {
        Chain chain;
        chain.key = {{id, 0, group}, firstSpot + static_cast<int>(i)};
        const int item = wareItem(lesson_.kitchen, wares[i].ware);
        chain.kind = lesson_.kitchen.wares[static_cast<std::size_t>(item)].kind;
        chain.group = group;
        chain.fixedSpot = wares[i];
        chain.span.begin = SpanBegin::Opening;
        byGroup[static_cast<std::size_t>(group)].push_back(static_cast<int>(result_.chains.size()));
        result_.chains.push_back(std::move(chain));
    }
}

/// Whether the ware that the step before used is there to go on in.
bool Expander::goesOn(const WareNeed& need) const {
    const auto& from = need.carriesOn;
    return from && (stored_.contains(*from) || (exists(*from) && !swappedIn(*from)));
}

int Expander::spotOf(const Step& step, std::size_t need, int copy) const {
    int spot = copy;
    for (std::size_t i = 0; i < need; ++i) {
        spot += goesOn(step.wares[i]) ? 0 : step.wares[i].count;
    }
    return spot;
}

void Expander::startFresh(const StepId& id, std::size_t need, int group) {
    const WareNeed& wanted = step(id).wares[need];
    const bool family = batchCount(id) > 1 && !step(id).batchesNeedWash;
    for (const int task : tasksOf(id, group)) {
        for (int copy = 0; copy < wanted.count; ++copy) {
            Chain chain;
            chain.key = {result_.tasks[static_cast<std::size_t>(task)].key,
                         spotOf(step(id), need, copy)};
            chain.kind = wanted.kind;
            chain.group = group;
            chain.owner = task;
            chain.span.beginTask = task;
            chain.family = family ? families_ : -1;
            const int index = static_cast<int>(result_.chains.size());
            result_.chains.push_back(std::move(chain));
            taskChains_[static_cast<std::size_t>(task)][need].push_back(index);
            continueChain(index, task, wanted);
        }
    }
    families_ += family ? 1 : 0;
}

void Expander::continueChain(int chain, int task, const WareNeed& wanted) {
    Chain& continued = result_.chains[static_cast<std::size_t>(chain)];
    const Task& load = result_.tasks[static_cast<std::size_t>(task)];
    const int covers = lesson_.servings[static_cast<std::size_t>(load.serving)].covers;
    const WareNeed need =
        loads_.needOf(step(load.key.step), wanted, covers, load.pieces, load.batches);
    continued.tasks.push_back(task);
    turnedOut_.resize(result_.chains.size());
    turnedOut_[static_cast<std::size_t>(chain)].push_back(wanted.turnedOut);
    continued.leastWidth = std::max(continued.leastWidth, need.leastWidth);
    if (need.leastMillilitres) {
        continued.leastMillilitres =
            std::max(continued.leastMillilitres.value_or(0), *need.leastMillilitres);
    }
}

/// The wares of the step before go on: batch with batch, or the last batch's where this has one.
void Expander::carryOn(const StepId& id, std::size_t need, int group) {
    const WareNeed& wanted = step(id).wares[need];
    const StepId& before = *wanted.carriesOn;
    const std::vector<int> tasks = tasksOf(id, group);
    for (std::size_t batch = 0; batch < tasks.size(); ++batch) {
        std::vector<int> chains;
        if (stored_.contains(before)) {
            chains = stored_.at(before)[static_cast<std::size_t>(group)];
        } else {
            const std::vector<int> earlier = tasksOf(before, group);
            const std::size_t from =
                tasks.size() == 1 ? earlier.size() - 1 : std::min(batch, earlier.size() - 1);
            const Step& from_step = step(before);
            for (std::size_t i = 0; i < from_step.wares.size(); ++i) {
                const auto& own = taskChains_[static_cast<std::size_t>(earlier[from])][i];
                chains.insert(chains.end(), own.begin(), own.end());
            }
        }
        std::erase_if(chains, [&](int chain) {
            return result_.chains[static_cast<std::size_t>(chain)].kind != wanted.kind;
        });
        chains.resize(std::min(chains.size(), static_cast<std::size_t>(wanted.count)));
        for (const int chain : chains) {
            taskChains_[static_cast<std::size_t>(tasks[batch])][need].push_back(chain);
            continueChain(chain, tasks[batch], wanted);
        }
    }
}

void Expander::chainsOfNeed(const StepId& id, std::size_t need, int group) {
    if (goesOn(step(id).wares[need])) {
        carryOn(id, need, group);
    } else {
        startFresh(id, need, group);
    }
}

void Expander::chainsOfStep(const StepId& id, int group) {
    const std::size_t done =
        static_cast<std::size_t>(group) * order_.size() + static_cast<std::size_t>(orderOf_.at(id));
    if (chained_[done]) {
        return;
    }
    chained_[done] = true;
    for (const WareNeed& need : step(id).wares) {
        if (need.carriesOn && exists(*need.carriesOn)) {
            chainsOfStep(*need.carriesOn, group);
        }
    }
    for (const int task : tasksOf(id, group)) {
        taskChains_[static_cast<std::size_t>(task)].resize(step(id).wares.size());
    }
    for (std::size_t need = 0; need < step(id).wares.size(); ++need) {
        chainsOfNeed(id, need, group);
    }
}

void Expander::makeChains() {
    chained_.assign(order_.size() * static_cast<std::size_t>(groups()), false);
    for (int group = 0; group < groups(); ++group) {
        for (const DoneAhead& ahead : lesson_.choices.doneAhead) {
            if (!ahead.wares.empty()) {
                storedChains(ahead.step, ahead.wares, 0, group);
            }
        }
        for (const SwapIn& swap : lesson_.choices.swapIns) {
            if (!swap.wares.empty()) {
                const Step& twin = step(swap.step);
                storedChains(swap.step, swap.wares, spotOf(twin, twin.wares.size(), 0), group);
            }
        }
    }
    for (int group = 0; group < groups(); ++group) {
        for (const StepId& id : order_) {
            chainsOfStep(id, group);
        }
    }
    endChains();
}

/// The tasks that take the food of this batch.
std::vector<int> Expander::usersOf(const StepId& id, int batch, int group) const {
    std::vector<int> tasks;
    const auto users = users_.find(id);
    if (users == users_.end()) {
        return tasks;
    }
    for (const Use& user : users->second) {
        if (user.each && exists(id)) {
            for (const auto& [from, to] : batchPairs(id, user.step, group)) {
                if (result_.tasks[static_cast<std::size_t>(from)].key.batch == batch) {
                    tasks.push_back(to);
                }
            }
        } else {
            const std::vector<int> all = tasksOf(user.step, group);
            tasks.insert(tasks.end(), all.begin(), all.end());
        }
    }
    return tasks;
}

/// Who takes the food that is still in the ware: what was turned out on the way does not count.
std::vector<int> Expander::usersOfChain(std::size_t number) const {
    const Chain& chain = result_.chains[number];
    std::vector<int> users;
    if (chain.span.begin == SpanBegin::Opening) {
        const StepId& id = chain.key.after.step;
        for (int batch = 0; batch < (exists(id) ? batchCount(id) : 1); ++batch) {
            const std::vector<int> own = usersOf(id, batch, chain.group);
            users.insert(users.end(), own.begin(), own.end());
        }
    }
    for (std::size_t i = 0; i < chain.tasks.size(); ++i) {
        const Task& task = result_.tasks[static_cast<std::size_t>(chain.tasks[i])];
        if (turnedOut_[number][i]) {
            users.clear();
        } else if (!swappedIn(task.key.step)) {
            const std::vector<int> own = usersOf(task.key.step, task.key.batch, chain.group);
            users.insert(users.end(), own.begin(), own.end());
        }
    }
    std::ranges::sort(users);
    const auto repeated = std::ranges::unique(users);
    users.erase(repeated.begin(), repeated.end());
    std::erase_if(users, [&](int user) { return std::ranges::count(chain.tasks, user) > 0; });
    return users;
}

void Expander::endChains() {
    turnedOut_.resize(result_.chains.size());
    for (std::size_t number = 0; number < result_.chains.size(); ++number) {
        Chain& chain = result_.chains[number];
        const bool out = !chain.tasks.empty() && turnedOut_[number].back();
        chain.span.untilStartOf = out ? std::vector<int>() : usersOfChain(number);
        chain.span.endOf = chain.tasks.empty() ? -1 : chain.tasks.back();
    }
}

// ---- heat -----------------------------------------------------------------------------------

/// The wares of a task that go on a burner, or in an oven.
std::vector<int> Expander::heatChains(int task, bool oven) const {
    std::vector<int> chains;
    for (const auto& need : taskChains_[static_cast<std::size_t>(task)]) {
        for (const int chain : need) {
            const auto* kind =
                findEquipmentKind(result_.chains[static_cast<std::size_t>(chain)].kind);
            if (kind != nullptr && (oven ? kind->goesInOven : kind->goesOnBurner)) {
                chains.push_back(chain);
            }
        }
    }
    return chains;
}

bool Expander::extendBurnerHolds(int task, const BurnerHeat& heat) {
    if (!heat.staysOnHeat) {
        return false;
    }
    const int before = stoodOnHeatBefore(task);
    if (before < 0) {
        return false;
    }
    for (const int hold : taskHolds_[static_cast<std::size_t>(before)]) {
        result_.burnerHolds[static_cast<std::size_t>(hold)].tasks.push_back(task);
        result_.burnerHolds[static_cast<std::size_t>(hold)].span.endOf = task;
        taskHolds_[static_cast<std::size_t>(task)].push_back(hold);
    }
    const auto& segments = result_.tasks[static_cast<std::size_t>(before)].segments;
    if (!segments.empty() && segments.back().attention == Attention::Watch) {
        result_.watchedWaits.push_back({before, task});
    }
    return true;
}

/// The task before it in the first of its vessels that was on the heat; -1: none was.
int Expander::stoodOnHeatBefore(int task) const {
    for (const int chain : heatChains(task, false)) {
        const auto& tasks = result_.chains[static_cast<std::size_t>(chain)].tasks;
        const auto self = std::ranges::find(tasks, task);
        if (self != tasks.begin() && !taskHolds_[static_cast<std::size_t>(*(self - 1))].empty()) {
            return *(self - 1);
        }
    }
    return -1;
}

/// Whether the pan is on its burner still when one of them goes on in it.
bool Expander::staysOnHeatFor(int task, const std::vector<int>& users) const {
    const auto& holds = taskHolds_[static_cast<std::size_t>(task)];
    return std::ranges::any_of(users, [&](int user) {
        return std::ranges::any_of(taskHolds_[static_cast<std::size_t>(user)], [&](int hold) {
            return std::ranges::find(holds, hold) != holds.end();
        });
    });
}

void Expander::burnerHolds(int task, const BurnerHeat& heat) {
    if (extendBurnerHolds(task, heat)) {
        return;
    }
    const std::vector<int> chains = heatChains(task, false);
    for (int spot = 0; spot < heat.burners; ++spot) {
        BurnerHold hold;
        hold.tasks = {task};
        hold.owner = task;
        hold.spot = spot;
        hold.group = result_.tasks[static_cast<std::size_t>(task)].key.group;
        hold.span = {SpanBegin::TaskStart, task, task, {}};
        // One vessel over several burners may be wider than each: its width is not judged.
        if (static_cast<int>(chains.size()) >= heat.burners) {
            hold.chains = {chains[static_cast<std::size_t>(spot)]};
        }
        taskHolds_[static_cast<std::size_t>(task)].push_back(
            static_cast<int>(result_.burnerHolds.size()));
        result_.burnerHolds.push_back(std::move(hold));
    }
}

/// Food that keeps hot takes a burner or a place in the oven until it is used.
void Expander::keptHot(int task) {
    const Task& made = result_.tasks[static_cast<std::size_t>(task)];
    const Keeping& after = stepOf(lesson_, made).after;
    const Span span{SpanBegin::TaskEnd, task, -1,
                    usersOf(made.key.step, made.key.batch, made.key.group)};
    if (span.untilStartOf.empty() || swappedIn(made.key.step)) {
        return;
    }
    if (after.storage == Storage::HotOnBurner && !staysOnHeatFor(task, span.untilStartOf)) {
        result_.burnerHolds.push_back(
            {{}, task, 0, true, heatChains(task, false), span, made.key.group});
    } else if (after.storage == Storage::HotInOven) {
        result_.ovenLoads.push_back({task, true, after.holdingHeat.value_or(OvenHeat{}),
                                     heatChains(task, true), span, made.key.group});
    }
}

void Expander::makeHeat() {
    for (const Chain& chain : result_.chains) {
        // Burners are taken in the order of each chain, so that staying on the heat finds the
        // step before already there.
        for (const int task : chain.tasks) {
            const Step& here = stepOf(lesson_, result_.tasks[static_cast<std::size_t>(task)]);
            const auto* heat = std::get_if<BurnerHeat>(&here.heat);
            if (heat != nullptr && taskHolds_[static_cast<std::size_t>(task)].empty()) {
                burnerHolds(task, *heat);
            }
        }
    }
    for (int task = 0; task < static_cast<int>(result_.tasks.size()); ++task) {
        const Step& here = stepOf(lesson_, result_.tasks[static_cast<std::size_t>(task)]);
        const auto* burner = std::get_if<BurnerHeat>(&here.heat);
        if (burner != nullptr && taskHolds_[static_cast<std::size_t>(task)].empty()) {
            burnerHolds(task, *burner);
        }
        if (const auto* oven = std::get_if<OvenHeat>(&here.heat)) {
            result_.ovenLoads.push_back({task,
                                         false,
                                         *oven,
                                         heatChains(task, true),
                                         {SpanBegin::TaskStart, task, task, {}},
                                         result_.tasks[static_cast<std::size_t>(task)].key.group});
        }
    }
    for (int task = 0; task < static_cast<int>(result_.tasks.size()); ++task) {
        keptHot(task);
    }
}

// ---- pools ----------------------------------------------------------------------------------

void Expander::makePools() {
    const auto add = [this](const PoolNeed& need, int group, int owner, const Span& span) {
        const int item = poolItem(lesson_.kitchen, need.pool);
        result_.poolHolds.push_back(
            {result_.stations.pools.unitOf(item, group), need.amount, owner, span});
    };
    for (int task = 0; task < static_cast<int>(result_.tasks.size()); ++task) {
        const StepKey key = result_.tasks[static_cast<std::size_t>(task)].key;
        for (const PoolNeed& need : step(key.step).pools) {
            add(need, key.group, task, {SpanBegin::TaskStart, task, task, {}});
        }
        const auto& place = step(key.step).after.place;
        const std::vector<int> users = usersOf(key.step, key.batch, key.group);
        if (place && !users.empty() && !swappedIn(key.step)) {
            add(*place, key.group, task, {SpanBegin::TaskEnd, task, -1, users});
        }
    }
    for (int group = 0; group < groups(); ++group) {
        for (const DoneAhead& ahead : lesson_.choices.doneAhead) {
            const std::vector<int> users = usersOf(ahead.step, 0, group);
            if (ahead.place && !users.empty()) {
                add(*ahead.place, group, -1, {SpanBegin::Opening, -1, -1, users});
            }
        }
    }
}

}  // namespace rangeline
