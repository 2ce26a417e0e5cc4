#include "live/gains.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "model/simpler_form.h"

namespace rangeline::live {
namespace {

constexpr Duration worthAWord = Duration::minutes(1);

class Offers {
  public:
    explicit Offers(const Service& service)
        : service_(service), expanded_(service.index().expanded()) {}

    /// Sets of steps to be skipped, without what they gain.
    std::vector<Gain> all() {
        addSimplerForms();
        for (std::size_t i = 0; i < expanded_.tasks.size(); ++i) {
            const Task& task = expanded_.tasks[i];
            if (isWaiting(task) && mayBeLeftOut(task) && isMissedByNone(static_cast<int>(i)) &&
                !worksOnFood(static_cast<int>(i))) {
                found_.push_back({GainBy::LeavingOutStep, {task.key}, {}});
            }
        }
        addComponents();
        for (std::size_t i = 0; i < expanded_.tasks.size(); ++i) {
            addTwin(static_cast<int>(i));
        }
        return std::move(found_);
    }

  private:
    const Step& step(const Task& task) const { return stepOf(service_.lesson(), task); }

    bool isIn(const Task& task, Stage stage) const {
        const auto known = service_.works().find(task.key);
        return known != service_.works().end() && known->second.stage == stage;
    }
    bool isWaiting(const Task& task) const { return isIn(task, Stage::Waiting); }

    bool mayBeLeftOut(const Task& task) const {
        const Step& it = step(task);
        return keptFor(it) == nullptr && std::holds_alternative<std::monostate>(it.heat);
    }

    /// Offered while all that falls away still waits: half of it would be another form.
    void addSimplerForms() {
        std::map<std::tuple<int, int, int>, Gain> forms;
        std::set<std::tuple<int, int, int>> begun;
        for (const Task& task : expanded_.tasks) {
            const auto& simpler = componentOf(task).simpler;
            if (!simpler || std::ranges::count(simpler->without, step(task).id) == 0) {
                continue;
            }
            const std::tuple which{task.key.group, task.serving, task.component};
            forms.try_emplace(which, Gain{GainBy::SimplerForm, {}, {}})
                .first->second.keys.emplace_back(task.key);
            if (!isWaiting(task)) {
                begun.insert(which);
            }
        }
        for (auto& [which, form] : forms) {
            if (!begun.contains(which)) {
                found_.push_back(std::move(form));
            }
        }
    }

    const Component& componentOf(const Task& task) const {
        const auto at = [](const auto& list, int number) -> const auto& {
            return list[static_cast<std::size_t>(number)];
        };
        return at(at(service_.lesson().servings, task.serving).dish.components, task.component);
    }

    static bool isFoodOf(const Wait& wait) {
        return wait.origin == WaitOrigin::Uses || wait.origin == WaitOrigin::CarriesOn;
    }

    /// What works on the food of another step would be missing on the plate.
    bool worksOnFood(int number) const {
        return std::ranges::any_of(expanded_.waits, [&](const Wait& wait) {
            return wait.origin == WaitOrigin::Uses && std::ranges::count(wait.to.tasks, number) > 0;
        });
    }

    /// What its food goes into has something else to go on with, or is the plate.
    bool isMissedByNone(int number) const {
        return std::ranges::all_of(expanded_.waits, [&](const Wait& wait) {
            return !isFoodOf(wait) || std::ranges::count(wait.from.tasks, number) == 0 ||
                   std::ranges::all_of(wait.to.tasks, [&](int user) {
                       return step(expanded_.tasks[static_cast<std::size_t>(user)]).plates ||
                              hasOther(user, number);
                   });
        });
    }

    bool hasOther(int user, int besides) const {
        return std::ranges::any_of(expanded_.waits, [&](const Wait& wait) {
            return isFoodOf(wait) && std::ranges::count(wait.to.tasks, user) > 0 &&
                   std::ranges::count(wait.from.tasks, besides) == 0;
        });
    }

    /// All that is left of a component that has neither plating nor anything cooked to a
    /// temperature.
    void addComponents() {
        std::map<std::tuple<int, int, int>, std::vector<const Task*>> components;
        for (const Task& task : expanded_.tasks) {
            components[{task.key.group, task.serving, task.component}].push_back(&task);
        }
        for (const auto& [which, tasks] : components) {
            const bool needed = std::ranges::any_of(tasks, [this](const Task* task) {
                const Step& it = step(*task);
                return keptFor(it) != nullptr || isIn(*task, Stage::Running);
            });
            Gain gain{GainBy::LeavingOutComponent, {}, {}};
            for (const Task* task : tasks) {
                if (isWaiting(*task)) {
                    gain.keys.emplace_back(task->key);
                }
            }
            if (!needed && gain.keys.size() > 1) {
                found_.push_back(std::move(gain));
            }
        }
    }

    bool isSwappedIn(const Step& step) const {
        const auto& swaps = service_.lesson().choices.swapIns;
        return std::ranges::any_of(swaps, [&](const SwapIn& one) { return one.step == step.id; });
    }

    /// The step whose food there may be a twin of, and what waits to be done for it alone.
    void addTwin(int number) {
        const Task& task = expanded_.tasks[static_cast<std::size_t>(number)];
        const bool open = isWaiting(task) || isIn(task, Stage::Running);
        if (!open || !step(task).after.mayBeSwappedIn || isSwappedIn(step(task))) {
            return;
        }
        std::vector<int> needless{number};
        for (std::size_t i = 0; i < needless.size(); ++i) {
            for (const int maker : makersOnlyFor(needless)) {
                needless.push_back(maker);
            }
        }
        Gain gain{GainBy::SwappingIn, {}, {}};
        for (const int one : needless) {
            gain.keys.emplace_back(expanded_.tasks[static_cast<std::size_t>(one)].key);
        }
        found_.push_back(std::move(gain));
    }

    /// What waits and is used by none but these; not these themselves.
    std::vector<int> makersOnlyFor(const std::vector<int>& users) const {
        std::map<int, bool> onlyFor;
        for (const Wait& wait : expanded_.waits) {
            if (!isFoodOf(wait)) {
                continue;
            }
            const bool inside = std::ranges::all_of(
                wait.to.tasks, [&](int to) { return std::ranges::count(users, to) > 0; });
            for (const int from : wait.from.tasks) {
                onlyFor.try_emplace(from, true).first->second &= inside;
            }
        }
        std::vector<int> makers;
        for (const auto& [task, only] : onlyFor) {
            if (only && isWaiting(expanded_.tasks[static_cast<std::size_t>(task)]) &&
                std::ranges::count(users, task) == 0) {
                makers.push_back(task);
            }
        }
        return makers;
    }

    const Service& service_;
    const Expanded& expanded_;
    std::vector<Gain> found_;
};

}  // namespace

std::vector<Gain> gains(const Service& service, Instant now, std::stop_token stop) {
    std::vector<Gain> found;
    const Duration behind = outlook(service, now).behind;
    for (Gain& offer : Offers(service).all()) {
        if (stop.stop_requested()) {
            break;
        }
        Service without = service.copy();
        for (const PlacementKey& key : offer.keys) {
            without.apply(Skipped{key}, now);
        }
        offer.by = behind - outlook(without, now).behind;
        if (offer.by >= worthAWord) {
            found.push_back(std::move(offer));
        }
    }
    std::ranges::stable_sort(found, std::greater<>(), &Gain::by);
    if (behind >= worthAWord) {
        found.push_back({GainBy::ServingLater, {}, behind});
    }
    return found;
}

}  // namespace rangeline::live
