// Which vessel, board or tool a chain takes, one chain at a time in each, and the washing between.

#include <algorithm>
#include <map>

#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

class WareRules {
  public:
    explicit WareRules(Formulation& f) : f_(f), stations_(f.expanded.stations) {}

    void add() {
        for (const Chain& chain : f_.expanded.chains) {
            f_.chainTaken.push_back(f_.taken(chain.span, chain.tasks));
            tellWhatIsHeld(chain);
            f_.wareOfChain.push_back(candidates(chain));
            f_.washes.emplace_back();
            if (f_.wareOfChain.back().units.empty()) {
                f_.lack(RequirementKind::NoWare, f_.wareOfChain.size() - 1);
            }
        }
        if (f_.underway == nullptr) {  // then each stays in what it was planned in
            spreadWhereThereIsPlenty();
        }
        for (std::size_t c = 0; c < f_.wareOfChain.size(); ++c) {
            choose(c);
        }
        separateAll();
        askForWashes();
    }

  private:
    const Ware& wareOf(int unit) const {
        return f_.lesson.kitchen.wares[at(stations_.wares[unit].item)];
    }

    bool fits(const Chain& chain, const Ware& ware) const {
        return ware.kind == chain.kind && ware.width >= chain.leastWidth &&
               (!chain.leastMillilitres ||
                (ware.millilitres && *ware.millilitres >= *chain.leastMillilitres));
    }

    std::optional<WareSpot> statedSpot(const Chain& chain) const {
        if (chain.fixedSpot) {
            return chain.fixedSpot;
        }
        const Placement* pinned = f_.tasks[at(chain.owner)].pinned;
        if (pinned != nullptr && at(chain.key.spot) < pinned->wares.size()) {
            return pinned->wares[at(chain.key.spot)];
        }
        return std::nullopt;
    }

    /// From each of its tasks until the next and until its food is used.
    void tellWhatIsHeld(const Chain& chain) {
        for (std::size_t i = 0; i < chain.tasks.size(); ++i) {
            std::vector<engine::View>& held = f_.groups[at(chain.tasks[i])].heldUntil;
            for (std::size_t next = i + 1; next < chain.tasks.size(); ++next) {
                held.push_back(f_.startOf(chain.tasks[next]).view);
            }
            for (const int user : chain.span.untilStartOf) {
                held.push_back(f_.startOf(user).view);
            }
        }
    }

    UnitChoice candidates(const Chain& chain) const {
        UnitChoice choice;
        if (const auto spot = statedSpot(chain)) {
            const int item = wareItem(f_.lesson.kitchen, spot->ware);
            if (item >= 0 && spot->number >= 0 && spot->number < stations_.wares.countOf(item)) {
                choice.units = {stations_.wares.unitOf(item, chain.group, spot->number)};
            }
            return choice;
        }
        for (std::size_t item = 0; item < f_.lesson.kitchen.wares.size(); ++item) {
            const Ware& ware = f_.lesson.kitchen.wares[item];
            for (int number = 0; fits(chain, ware) && number < ware.count; ++number) {
                choice.units.push_back(
                    stations_.wares.unitOf(static_cast<int>(item), chain.group, number));
            }
        }
        return choice;
    }

    /// Where no more chains can want the units of a connected set than it has, each chain gets one
    /// of its own and nothing is left to decide.
    void spreadWhereThereIsPlenty() {
        std::map<std::vector<int>, std::vector<std::size_t>> byCandidates;
        std::vector<int> wanted(at(stations_.wares.size()), 0);
        for (std::size_t c = 0; c < f_.wareOfChain.size(); ++c) {
            byCandidates[f_.wareOfChain[c].units].push_back(c);
            for (const int unit : f_.wareOfChain[c].units) {
                ++wanted[at(unit)];
            }
        }
        for (const auto& [units, chains] : byCandidates) {
            const bool alone = std::ranges::all_of(units, [&, count = chains.size()](int unit) {
                return wanted[at(unit)] == static_cast<int>(count);
            });
            for (std::size_t i = 0; alone && chains.size() <= units.size() && i < chains.size();
                 ++i) {
                f_.wareOfChain[chains[i]].units = {units[i]};
            }
        }
    }

    void choose(std::size_t c) {
        UnitChoice& choice = f_.wareOfChain[c];
        if (choice.units.size() == 1) {
            choice.chosen = {f_.yes()};
            return;
        }
        const int owner = f_.expanded.chains[c].owner;
        for (std::size_t i = 0; i < choice.units.size(); ++i) {
            choice.chosen.push_back(f_.boolean(true));
        }
        f_.groups[at(owner)].sets.push_back(choice.chosen);
        f_.exactlyOne(choice.chosen, f_.yes());
    }

    void separateAll() {
        const auto count = static_cast<int>(f_.expanded.chains.size());
        before_.assign(at(count), std::vector<Literal>(at(count), f_.no(f_.yes())));
        for (int a = 0; a < count; ++a) {
            for (int b = a + 1; b < count; ++b) {
                separate(a, b);
            }
        }
    }

    bool sameFamily(int a, int b) const {
        const Chain& first = f_.expanded.chains[at(a)];
        return first.family >= 0 && first.family == f_.expanded.chains[at(b)].family;
    }

    /// Two chains in one ware follow each other.
    void separate(int a, int b) {
        if (isNeverUsed(a) || isNeverUsed(b)) {
            return;
        }
        const UnitChoice& first = f_.wareOfChain[at(a)];
        const UnitChoice& second = f_.wareOfChain[at(b)];
        struct Meeting {
            Literal one, other, apart;  ///< the last: where they are to be kept apart
        };
        std::vector<Meeting> meetings;
        for (std::size_t i = 0; i < first.units.size(); ++i) {
            if (const auto other = second.of(first.units[i])) {
                const int item = stations_.wares[first.units[i]].item;
                meetings.push_back(
                    {first.chosen[i], *other, f_.asked(RequirementKind::Wares, item)});
            }
        }
        if (meetings.empty()) {
            return;
        }
        const bool batchesInOrder = sameFamily(a, b) && !f_.hasBegun(f_.chainTaken[at(b)].begin);
        before_[at(a)][at(b)] = follows(a, b);
        before_[at(b)][at(a)] = batchesInOrder ? f_.no(f_.yes()) : follows(b, a);
        for (const Meeting& meeting : meetings) {
            f_.clause({f_.no(meeting.apart), f_.no(meeting.one), f_.no(meeting.other),
                       before_[at(a)][at(b)], before_[at(b)][at(a)]});
        }
    }

    /// A literal that puts b after a, in the same ware.
    Literal follows(int a, int b) {
        const Literal literal = f_.boolean();
        f_.order(f_.chainTaken[at(a)].end, f_.chainTaken[at(b)].begin, 0, literal);
        const UnitChoice& first = f_.wareOfChain[at(a)];
        const UnitChoice& second = f_.wareOfChain[at(b)];
        for (std::size_t i = 0; i < first.units.size(); ++i) {
            const auto other = second.of(first.units[i]);
            f_.clause({f_.no(literal), f_.no(first.chosen[i]), other.value_or(f_.no(f_.yes()))});
        }
        f_.chainOrders.push_back({a, b, literal});
        return literal;
    }

    bool needsWash(int chain) const {
        return std::ranges::any_of(f_.wareOfChain[at(chain)].units, [this](int unit) {
            return wareOf(unit).cleaning.takes > Duration();
        });
    }

    void askForWashes() {
        const auto count = static_cast<int>(f_.expanded.chains.size());
        for (int a = 0; a < count; ++a) {
            if (!needsWash(a)) {
                continue;
            }
            if (hasWashBegun(a)) {
                f_.washes[at(a)] = makeWash(a);
            }
            const bool washable = canStillBeWashed(a);
            for (int b = 0; b < count; ++b) {
                if (washable && !f_.engine.isFalse(before_[at(a)][at(b)]) && !sameFamily(a, b)) {
                    washBetween(a, b);
                }
            }
        }
    }

    bool isNeverUsed(int chain) const { return f_.allLeftOut(f_.expanded.chains[at(chain)].tasks); }

    PlacementKey washKey(int chain) const { return f_.expanded.chains[at(chain)].key; }

    /// Its wash has been begun.
    bool hasWashBegun(int chain) const {
        const Placement* pinned = f_.pinnedPlacement(washKey(chain));
        return f_.underway != nullptr && pinned != nullptr && pinned->started;
    }

    /// Neither skipped by the cook nor, where the next food is in it already, too late.
    bool canStillBeWashed(int chain) const {
        return !f_.isLeftOut(washKey(chain)) && (hasWashBegun(chain) || !wasUsedAgain(chain));
    }

    bool wasUsedAgain(int chain) const {
        for (int next = 0; next < static_cast<int>(f_.chainTaken.size()); ++next) {
            const TimePoint begin = f_.chainTaken[at(next)].begin;
            if (next != chain && !sameFamily(chain, next) && f_.hasBegun(begin) &&
                f_.hasBegun(f_.chainTaken[at(chain)].begin) &&
                f_.engine.low(begin) >= f_.engine.low(f_.chainTaken[at(chain)].begin) &&
                isSurelyInSameWare(chain, next)) {
                return true;
            }
        }
        return false;
    }

    /// b after a in one ware: a's wash lies between, or that of a later batch of a's family.
    void washBetween(int a, int b) {
        if (!f_.washes[at(a)]) {
            f_.washes[at(a)] = makeWash(a);
        }
        const Literal own = f_.boolean();
        std::vector<Literal> ways{f_.no(f_.asked(RequirementKind::Wash, a)),
                                  f_.no(before_[at(a)][at(b)]), own};
        for (int sibling = a + 1; sibling < static_cast<int>(before_.size()); ++sibling) {
            if (sameFamily(a, sibling) && sibling != b) {
                ways.push_back(f_.both(before_[at(a)][at(sibling)], before_[at(sibling)][at(b)]));
            }
        }
        WashVars& wash = *f_.washes[at(a)];
        f_.clause({f_.no(own), wash.presence});
        for (const WashVars::Way& way : wash.ways) {
            f_.order({wash.start, way.takes}, f_.chainTaken[at(b)].begin, 0,
                     f_.both(own, way.chosen));
        }
        f_.clause(ways);  // now that it is known whether there is time for its own
    }

    WashVars makeWash(int chain) {
        WashVars wash;
        const PlacementKey key{f_.expanded.chains[at(chain)].key};
        const Placement* pinned = f_.pinnedPlacement(key);
        wash.presence = pinned != nullptr ? f_.yes() : f_.boolean();
        wash.start = f_.startVariable(key, RequirementKind::PinnedWash, chain);
        addWays(chain, pinned, wash);
        f_.order(f_.chainTaken[at(chain)].end, {wash.start, 0}, 0, wash.presence);
        if (f_.lesson.head.kitchenOpens) {
            f_.order(f_.constant(toValue(*f_.lesson.head.kitchenOpens)), {wash.start, 0}, 0,
                     f_.both(wash.presence, f_.asked(RequirementKind::KitchenOpens)));
        }
        keepApart(chain, wash);
        engine::Group group{
            {wash.start, 0}, {wash.start, f_.underway == nullptr, wash.presence}, {{}}};
        for (const WashVars::Way& way : wash.ways) {
            group.sets.front().push_back(way.chosen);
        }
        f_.groups.push_back(std::move(group));
        return wash;
    }

    bool isSurelyInSameWare(int a, int b) const {
        const std::vector<int>& units = f_.wareOfChain[at(a)].units;
        return units.size() == 1 && units == f_.wareOfChain[at(b)].units;
    }

    /// What has begun out of turn in that ware is not washed away.
    void keepApart(int chain, const WashVars& wash) {
        for (int other = 0; f_.underway != nullptr && other < static_cast<int>(before_.size());
             ++other) {
            const Taken& taken = f_.chainTaken[at(other)];
            if (other != chain && isSurelyInSameWare(chain, other) && f_.hasBegun(taken.begin)) {
                f_.order(taken.end, {wash.start, 0}, 0, wash.presence);
            }
        }
    }

    void addWays(int chain, const Placement* pinned, WashVars& wash) {
        std::vector<int> cooks = f_.crewOf(f_.expanded.chains[at(chain)].group);
        if (pinned != nullptr && !pinned->hands.empty()) {
            std::erase_if(cooks,
                          [&](int unit) { return f_.cook(unit).id != pinned->hands.front().cook; });
        }
        std::vector<int> items;
        for (const int unit : f_.wareOfChain[at(chain)].units) {
            items.push_back(stations_.wares[unit].item);
        }
        std::ranges::sort(items);
        const auto repeated = std::ranges::unique(items);
        items.erase(repeated.begin(), repeated.end());
        std::vector<Literal> literals;
        for (const int item : items) {
            for (const int cook : cooks) {
                addWay(chain, item, cook, pinned, wash);
                literals.push_back(wash.ways.back().chosen);
            }
        }
        f_.exactlyOne(literals, wash.presence);
    }

    void addWay(int chain, int item, int cook, const Placement* pinned, WashVars& wash) {
        const Cleaning& cleaning = f_.lesson.kitchen.wares[at(item)].cleaning;
        const Literal chosen = f_.boolean(true);
        const Value takes = takesNow(pinned, atPace(cleaning.takes, f_.cook(cook).pacePercent));
        wash.ways.push_back({chosen, cook, item, takes});
        std::vector<Literal> inThatWare{f_.no(chosen)};
        const UnitChoice& choice = f_.wareOfChain[at(chain)];
        for (std::size_t i = 0; i < choice.units.size(); ++i) {
            if (stations_.wares[choice.units[i]].item == item) {
                inThatWare.push_back(choice.chosen[i]);
            }
        }
        f_.clause(std::move(inThatWare));
        const CumulativeTask work{{wash.start, 0}, {wash.start, takes}, 1, chosen};
        if (takes > 0) {
            f_.handsOf[at(cook)].push_back(work);
        }
        if (cleaning.sink && takes > 0) {
            const int sink = poolItem(f_.lesson.kitchen, *cleaning.sink);
            const int group = f_.expanded.chains[at(chain)].group;
            f_.poolUse[at(stations_.pools.unitOf(sink, group))].push_back(work);
        }
    }

    Formulation& f_;
    const Stations& stations_;
    std::vector<std::vector<Literal>> before_;  ///< [a][b]: b follows a in one ware
};

}  // namespace

void addWares(Formulation& f) {
    WareRules(f).add();
}

}  // namespace rangeline::rules
