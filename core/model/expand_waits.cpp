#include <algorithm>

#include "model/expander.h"

namespace rangeline {

/// The food of an earlier step: its order and its keeping limit, as a whole or batch by batch.
void Expander::addUse(const StepId& user, const Use& use, int group) {
    const int serving = places_.at(use.step).serving;
    const DoneAhead* ahead = doneAhead(use.step);
    const auto* firstAhead = lesson_.choices.doneAhead.data();
    const int source = ahead == nullptr ? -1 : static_cast<int>(ahead - firstAhead);
    const auto add = [&](StepPoint from, StepPoint to, const std::optional<Duration>& limit,
                         Storage storage, bool ordered) {
        if (ordered) {
            result_.waits.push_back(
                {from, to, Duration(), std::nullopt, WaitOrigin::Uses, serving, -1, Storage::Room});
        }
        if (limit) {
            result_.waits.push_back({std::move(from), std::move(to), std::nullopt, limit,
                                     WaitOrigin::Keeping, serving, source, storage});
        }
    };
    const Keeping& after = step(use.step).after;
    if (ahead != nullptr) {
        const bool cold = ahead->storage == Storage::Cold;
        add({{}, StepEnd::End, Instant::serving() - ahead->before},
            {tasksOf(user, group), StepEnd::Start, {}}, cold ? after.cold : after.atRoom,
            cold ? Storage::Cold : Storage::Room, false);
    } else if (!exists(use.step) || swappedIn(use.step)) {
        return;
    } else if (use.each) {
        for (const auto& [from, to] : batchPairs(use.step, user, group)) {
            add({{from}, StepEnd::End, {}}, {{to}, StepEnd::Start, {}}, after.limit(),
                after.storage, true);
        }
    } else {
        const std::vector<int> makers = tasksOf(use.step, group);
        const StepPoint taken{tasksOf(user, group), StepEnd::Start, {}};
        add({makers, StepEnd::End, {}}, taken, std::nullopt, after.storage, true);
        for (const int batch : makers) {  // each keeps only so long
            add({{batch}, StepEnd::End, {}}, taken, after.limit(), after.storage, false);
        }
    }
}

void Expander::addLink(const Link& link, int serving, int source, int group) {
    const bool fromTwin = swappedIn(link.from.step) && link.from.end == StepEnd::End;
    if (!exists(link.from.step) || !exists(link.to.step) || fromTwin) {
        return;
    }
    const auto add = [&](std::vector<int> from, std::vector<int> to) {
        result_.waits.push_back({{std::move(from), link.from.end, {}},
                                 {std::move(to), link.to.end, {}},
                                 link.least,
                                 link.most,
                                 WaitOrigin::Link,
                                 serving,
                                 source,
                                 Storage::Room});
    };
    if (link.each) {
        for (const auto& [from, to] : batchPairs(link.from.step, link.to.step, group)) {
            add({from}, {to});
        }
    } else {
        add(tasksOf(link.from.step, group), tasksOf(link.to.step, group));
    }
}

void Expander::makeWaits() {
    for (int group = 0; group < groups(); ++group) {
        for (const StepId& id : order_) {
            for (const Use& use : step(id).uses) {
                addUse(id, use, group);
            }
        }
        for (std::size_t s = 0; s < lesson_.servings.size(); ++s) {
            const auto& links = lesson_.servings[s].dish.links;
            for (std::size_t i = 0; i < links.size(); ++i) {
                addLink(links[i], static_cast<int>(s), static_cast<int>(i), group);
            }
        }
    }
    for (const Chain& chain : result_.chains) {
        for (std::size_t i = 1; i < chain.tasks.size(); ++i) {
            const Task& before = result_.tasks[static_cast<std::size_t>(chain.tasks[i - 1])];
            const Task& after = result_.tasks[static_cast<std::size_t>(chain.tasks[i])];
            const auto& uses = step(after.key.step).uses;
            if (std::ranges::find(uses, before.key.step, &Use::step) == uses.end()) {
                result_.waits.push_back({{{chain.tasks[i - 1]}, StepEnd::End, {}},
                                         {{chain.tasks[i]}, StepEnd::Start, {}},
                                         Duration(),
                                         std::nullopt,
                                         WaitOrigin::CarriesOn,
                                         before.serving,
                                         -1,
                                         Storage::Room});
            }
        }
    }
    for (const DoneAhead& ahead : lesson_.choices.doneAhead) {
        const bool partsLeft = std::ranges::any_of(
            step(ahead.step).uses, [&](const Use& use) { return exists(use.step); });
        if (partsLeft) {
            result_.aheadBeforeParts.push_back(ahead.step);
        }
    }
}

/// Whether its first steps are done by the serving because those that wait for them are.
bool Expander::isBeforeWhatIsServed(const Wait& wait) const {
    const bool bySomethingLater = wait.from.end == StepEnd::End && wait.least &&
                                  *wait.least >= Duration() && !wait.to.tasks.empty();
    return bySomethingLater && std::ranges::all_of(wait.to.tasks, [this](int task) {
               return !stepOf(lesson_, result_.tasks[static_cast<std::size_t>(task)]).afterServing;
           });
}

void Expander::makeWindows() {
    const Head& head = lesson_.head;
    std::vector<bool> leads(result_.tasks.size(), false);
    for (const Wait& wait : result_.waits) {
        if (isBeforeWhatIsServed(wait)) {
            for (const int task : wait.from.tasks) {
                leads[static_cast<std::size_t>(task)] = true;
            }
        }
    }
    const auto add = [this](int task, StepEnd end, std::optional<Instant> earliest,
                            std::optional<Instant> latest, WindowOrigin origin) {
        result_.windows.push_back({task, end, earliest, latest, origin});
    };
    for (int i = 0; i < static_cast<int>(result_.tasks.size()); ++i) {
        const Task& task = result_.tasks[static_cast<std::size_t>(i)];
        const Step& here = stepOf(lesson_, task);
        const Instant serving = servingOf(lesson_, task);
        if (head.kitchenOpens) {
            add(i, StepEnd::Start, head.kitchenOpens, {}, WindowOrigin::KitchenOpens);
        }
        if (head.cookingMayStart && !std::holds_alternative<std::monostate>(here.heat)) {
            add(i, StepEnd::Start, head.cookingMayStart, {}, WindowOrigin::CookingMayStart);
        }
        if (here.plates) {
            const auto& dish = lesson_.servings[static_cast<std::size_t>(task.serving)].dish;
            add(i, StepEnd::End, serving - dish.platesHold, {}, WindowOrigin::PlateKeeps);
        }
        if (here.afterServing) {
            add(i, StepEnd::Start, serving, {}, WindowOrigin::AfterServing);
        } else if (here.plates || !leads[static_cast<std::size_t>(i)]) {
            add(i, StepEnd::End, {}, serving, WindowOrigin::Serving);
        }
        if (head.everyoneOut) {
            add(i, StepEnd::End, {}, head.everyoneOut, WindowOrigin::EveryoneOut);
        }
    }
}

}  // namespace rangeline
