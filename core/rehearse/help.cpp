#include "rehearse/help.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "analysis/at.h"
#include "model/done_ahead.h"

namespace rangeline {
namespace {

/// What something is waited for: the item of the kitchen, and whose.
struct Sort {
    HelpKind kind;
    int item;
    int group;

    friend auto operator<=>(const Sort&, const Sort&) = default;
};

std::optional<Sort> sortOf(const UseIndex& index, const Following& following) {
    const auto& [sort, unit] = following.equipment;
    if (sort == EquipmentSort::Ware) {
        const Unit& ware = index.stations().wares[unit];
        return Sort{HelpKind::Ware, ware.item, ware.group};
    }
    if (sort == EquipmentSort::Burner) {
        return Sort{HelpKind::Burner, -1, index.stations().burners[unit].group};
    }
    if (sort == EquipmentSort::Cook) {
        return Sort{HelpKind::Helper, -1, index.stations().cooks[unit].group};
    }
    return std::nullopt;
}

class Trying {
  public:
    Trying(const UseIndex& index, const RehearsalOptions& options, std::stop_token stop,
           const std::function<void(std::int64_t, std::int64_t)>& progress)
        : index_(index),
          options_(options),
          stop_(std::move(stop)),
          progress_(progress),
          network_(networkOf(index)) {
        options_.onlyLateness = true;
    }

    Helps run() {
        collect();
        const Rehearsal asPlanned = rehearsed(network_);
        Helps helps{asPlanned.chanceOnTime(), asPlanned.earlierFor(ninety), {}, false};
        for (const auto& [kind, item] : candidates_) {
            if (stop_.stop_requested()) {
                break;
            }
            ++turn_;
            const auto with = kind == HelpKind::DoneAhead ? doneAhead(item) : oneMore(kind, item);
            const Rehearsal it = with ? rehearsed(*with) : Rehearsal();
            if (it.runs == options_.runs) {
                helps.tried.push_back({kind, item, it.chanceOnTime(), it.earlierFor(ninety)});
            }
        }
        helps.all = !stop_.stop_requested();
        std::ranges::stable_sort(helps.tried, {}, [](const Help& help) {
            return std::tuple(-help.onTime, help.earlier);
        });
        return helps;
    }

  private:
    static constexpr double ninety = 0.9;

    void collect() {
        std::set<std::pair<HelpKind, int>> sorts;
        for (const Following& following : network_.followings) {
            if (const auto sort = mayBeSpared(following)) {
                sorts.emplace(sort->kind, sort->item);
            }
        }
        candidates_.assign(sorts.begin(), sorts.end());
        const auto& tasks = index_.expanded().tasks;
        for (std::size_t i = 0; i < tasks.size(); ++i) {
            const bool first = tasks[i].key.batch == 0 && tasks[i].key.group == 0;
            if (first && index_.step(static_cast<int>(i)).after.mayBeDoneAhead) {
                candidates_.emplace_back(HelpKind::DoneAhead, static_cast<int>(i));
            }
        }
    }

    /// Cleaning waits for the very vessel, and what the class watches keeps all of it from work.
    std::optional<Sort> mayBeSpared(const Following& following) const {
        const auto node = [this](int activity) { return at(network_.activities, activity).node; };
        const bool hands = following.by == HeldBy::Cook;
        const auto talks = [&](int activity) {
            return index_.isTask(node(activity)) && index_.step(node(activity)).classWatches;
        };
        const bool bound = hands ? talks(following.from) || talks(following.to)
                                 : index_.isWash(node(following.to));
        return bound ? std::nullopt : sortOf(index_, following);
    }

    /// Only the last user before it has to be waited for, or the spare: who came before that one
    /// gave way already.
    Network oneMore(HelpKind kind, int item) const {
        Network with = network_;
        std::map<Sort, int> spares;
        std::map<std::pair<int, EquipmentRef>, int> last;
        for (Following& following : with.followings) {
            const auto sort = mayBeSpared(following);
            if (sort && sort->kind == kind && sort->item == item) {
                following.spare =
                    spares.try_emplace(*sort, static_cast<int>(spares.size())).first->second;
                int& turn = last.try_emplace({following.to, following.equipment}, -1).first->second;
                turn = std::max(turn, following.turn);
            }
        }
        std::erase_if(with.followings, [&](const Following& following) {
            return following.spare >= 0 && following.turn >= 0 &&
                   following.turn < last.at({following.to, following.equipment});
        });
        with.spares = static_cast<int>(spares.size());
        return with;
    }

    /// Nothing where it cannot be, or where what it needs when it is taken out has no place.
    std::optional<Network> doneAhead(int task) const {
        const auto ahead = doneAheadWith(index_.lesson(), index_.expanded(),
                                         at(index_.expanded().tasks, task).key.step);
        if (!ahead) {
            return std::nullopt;
        }
        Lesson lesson = index_.lesson();
        lesson.choices = std::move(*ahead);
        const Expanded expanded = expand(lesson);
        const UseIndex index(lesson, expanded);
        for (int i = 0; i < index.tasks(); ++i) {
            if (!index.placed(i)) {
                return std::nullopt;
            }
        }
        return networkOf(index);
    }

    Rehearsal rehearsed(const Network& network) const {
        const auto runs = static_cast<std::int64_t>(options_.runs);
        const std::int64_t of = runs * static_cast<std::int64_t>(candidates_.size() + 1);
        return rehearse(network, options_, stop_, [&](int done) {
            if (progress_) {
                progress_(turn_ * runs + done, of);
            }
        });
    }

    const UseIndex& index_;
    RehearsalOptions options_;
    std::stop_token stop_;
    const std::function<void(std::int64_t, std::int64_t)>& progress_;
    Network network_;
    std::vector<std::pair<HelpKind, int>> candidates_;
    int turn_ = 0;
};

}  // namespace

Helps whatHelps(const UseIndex& index, const RehearsalOptions& options, std::stop_token stop,
                const std::function<void(std::int64_t, std::int64_t)>& progress) {
    return Trying(index, options, std::move(stop), progress).run();
}

}  // namespace rangeline
