#include "document/complete.h"

#include <algorithm>

#include "analysis/at.h"
#include "document/suitable.h"

namespace rangeline {
namespace {

/// Fills what a task needs and does not have yet.
class Completer {
  public:
    Completer(const UseIndex& index, int task, Instant start)
        : index_(index), task_(task), needs_(index.touches().of(task)) {
        if (index.placed(task)) {
            placement_ = *index.placed(task).placement;
        }
        placement_.start = start;
    }

    Placement run() {
        addWares();
        addHands();
        addWatchers();
        addBurners();
        addOven();
        return std::move(placement_);
    }

  private:
    Duration length() const {
        std::vector<HandShare> shares;
        for (const Share& share : placement_.hands) {
            const int unit = index_.cookUnit(share.cook, index_.groupOf(task_));
            shares.push_back({unit < 0 ? 100 : index_.cookOf(unit).pacePercent, share.pieces});
        }
        return timingOf(at(index_.expanded().tasks, task_), shares, placement_.lasts).length;
    }

    Proposed proposed() const { return {task_, {placement_.start, placement_.start + length()}}; }

    bool has(Attention attention) const { return countOf(attention) > 0; }
    std::size_t countOf(Attention attention) const {
        const auto& segments = at(index_.expanded().tasks, task_).segments;
        return static_cast<std::size_t>(
            std::ranges::count(segments, attention, &Segment::attention));
    }

    void addWares() {
        for (const int chain : needs_.chains) {
            const Chain& it = at(index_.expanded().chains, chain);
            const auto spot = static_cast<std::size_t>(it.key.spot);
            if (it.owner != task_ || spot < placement_.wares.size()) {
                continue;
            }
            for (const int unit : wareUnitsFor(index_, chain, proposed())) {
                const WareSpot ware{index_.wareOfUnit(unit).id,
                                    index_.stations().wares[unit].number};
                if (std::ranges::find(placement_.wares, ware) == placement_.wares.end()) {
                    placement_.wares.push_back(ware);
                    break;
                }
            }
        }
    }

    void addHands() {
        if (!has(Attention::Hands)) {
            return;
        }
        const auto wanted = static_cast<std::size_t>(index_.step(task_).cooks);
        for (const CookId& cook : cooksFor(index_, task_, proposed().interval)) {
            if (placement_.hands.size() < wanted && !isAtWork(cook)) {
                placement_.hands.push_back({cook, 0});
            }
        }
    }

    bool isAtWork(const CookId& cook) const {
        return std::ranges::find(placement_.hands, cook, &Share::cook) != placement_.hands.end();
    }

    /// Whoever works at the step watches it, or else who has least to do.
    void addWatchers() {
        if (placement_.watchers.size() >= countOf(Attention::Watch)) {
            return;
        }
        const std::vector<CookId> cooks = cooksFor(index_, task_, proposed().interval);
        if (!placement_.hands.empty()) {
            placement_.watchers.resize(countOf(Attention::Watch), placement_.hands.front().cook);
        } else if (!cooks.empty()) {
            placement_.watchers.resize(countOf(Attention::Watch), cooks.front());
        }
    }

    /// Those of the chains whose ware is known, after this placement.
    std::vector<const Ware*> waresOf(const std::vector<int>& chains) const {
        std::vector<const Ware*> wares;
        for (const int chain : chains) {
            const Chain& it = at(index_.expanded().chains, chain);
            const auto spot = static_cast<std::size_t>(it.key.spot);
            if (it.owner == task_ && spot < placement_.wares.size()) {
                const int item = wareItem(index_.kitchen(), placement_.wares[spot].ware);
                if (item >= 0) {
                    wares.push_back(&at(index_.kitchen().wares, item));
                }
            } else if (const Ware* ware = index_.wareOf(chain)) {
                wares.push_back(ware);
            }
        }
        return wares;
    }

    void addBurners() {
        for (const int hold : needs_.burnerHolds) {
            const BurnerHold& it = at(index_.expanded().burnerHolds, hold);
            auto& burners = it.kept ? placement_.keptOn : placement_.burners;
            if (it.owner != task_ || static_cast<std::size_t>(it.spot) < burners.size()) {
                continue;
            }
            if (it.kept && !placement_.burners.empty()) {
                burners.push_back(placement_.burners.front());
                continue;
            }
            for (const int unit : burnerUnitsFor(index_, hold, proposed(), waresOf(it.chains))) {
                const BurnerId id = index_.burnerOf(unit).id;
                if (std::ranges::find(burners, id) == burners.end()) {
                    burners.push_back(id);
                    break;
                }
            }
        }
    }

    void addOven() {
        for (const int load : needs_.ovenLoads) {
            const OvenLoad& it = at(index_.expanded().ovenLoads, load);
            auto& spot = it.kept ? placement_.keptIn : placement_.oven;
            if (it.owner != task_ || spot) {
                continue;
            }
            const auto spots = ovenSpotsFor(index_, load, proposed(), waresOf(it.chains));
            if (!spots.empty()) {
                spot = spots.front();
            }
        }
    }

    const UseIndex& index_;
    int task_;
    const Touches::OfTask& needs_;
    Placement placement_;
};

}  // namespace

Placement filledIn(const UseIndex& index, int task, Instant start) {
    return Completer(index, task, start).run();
}

}  // namespace rangeline
