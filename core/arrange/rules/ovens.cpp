// What the loads of one oven ask of each other: one set temperature and mode at a time, slots,
// change-over and warm-up, shut doors, turning on.

#include <algorithm>
#include <map>

#include "arrange/rules/formulation.h"
#include "arrange/rules/oven_choice.h"

namespace rangeline::rules {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

class OvenRules {
  public:
    explicit OvenRules(Formulation& f) : f_(f), loads_(f.expanded.ovenLoads) {}

    void add() {
        addOvenChoices(f_);
        for (const OvenLoad& load : loads_) {
            taken_.push_back(f_.taken(load.span));
        }
        for (int oven = 0; oven < f_.expanded.stations.ovens.size(); ++oven) {
            addOven(oven);
        }
    }

  private:
    struct Member {
        std::size_t load = 0;
        Literal in;
    };

    Literal asked(RequirementKind kind, int unit) const {
        return f_.asked(kind, f_.expanded.stations.ovens[unit].item);
    }

    const Oven& ovenOf(int unit) const {
        return f_.lesson.kitchen.ovens[at(f_.expanded.stations.ovens[unit].item)];
    }

    /// The literal that the load is in this oven; none if it cannot be.
    std::optional<Literal> inOven(std::size_t load, int oven) {
        std::vector<Literal> spots;
        bool elsewhere = false;
        for (const auto& spot : f_.ovenOfLoad[load].spots) {
            if (spot.oven == oven) {
                spots.push_back(spot.chosen);
            } else {
                elsewhere = true;
            }
        }
        if (spots.empty()) {
            return std::nullopt;
        }
        if (!elsewhere) {
            return f_.yes();
        }
        const Literal in = f_.boolean();
        for (const Literal spot : spots) {
            f_.clause({f_.no(spot), in});
        }
        spots.push_back(f_.no(in));
        f_.clause(std::move(spots));
        return in;
    }

    /// Food that is not made needs no oven.
    bool isNeverUsed(const OvenLoad& load) const { return f_.allLeftOut({load.owner}); }

    void addOven(int oven) {
        members_.clear();
        std::vector<CumulativeTask> slots;
        for (std::size_t load = 0; load < loads_.size(); ++load) {
            if (isNeverUsed(loads_[load])) {
                continue;
            }
            if (const auto in = inOven(load, oven)) {
                members_.push_back({load, *in});
                for (const auto& spot : f_.ovenOfLoad[load].spots) {
                    if (spot.oven == oven) {
                        slots.push_back(
                            {taken_[load].begin, taken_[load].end, spot.slots, spot.chosen});
                    }
                }
            }
        }
        f_.limit(std::move(slots), ovenOf(oven).slots, asked(RequirementKind::OvenSlots, oven));
        after_.clear();
        for (std::size_t a = 0; a < members_.size(); ++a) {
            for (std::size_t b = a + 1; b < members_.size(); ++b) {
                pair(oven, members_[a].load, members_[b].load);
            }
        }
        turnOn(oven);
    }

    /// A literal that puts the second load at least `gap` after the first; in this oven.
    Literal afterBy(std::size_t first, std::size_t second, Value gap) {
        auto& known = after_[{first, second}];
        const auto found = known.find(gap);
        if (found != known.end()) {
            return found->second;
        }
        const Literal literal = f_.boolean();
        f_.order(taken_[first].end, taken_[second].begin, gap, literal);
        known.emplace(gap, literal);
        return literal;
    }

    void pair(int oven, std::size_t a, std::size_t b) {
        const OvenMode modeA = modeOf(a);
        const OvenMode modeB = modeOf(b);
        for (const auto& one : f_.ovenOfLoad[a].settings) {
            for (const auto& other : f_.ovenOfLoad[b].settings) {
                if (one.oven != oven || other.oven != oven ||
                    (one.setTo == other.setTo && modeA == modeB)) {
                    continue;
                }
                const Oven& kind = ovenOf(oven);
                const Value there = toValue(kind.changeOver(one.setTo, modeA, other.setTo, modeB));
                const Value back = toValue(kind.changeOver(other.setTo, modeB, one.setTo, modeA));
                f_.clause({f_.no(asked(RequirementKind::OvenSettings, oven)), f_.no(one.chosen),
                           f_.no(other.chosen), afterBy(a, b, there), afterBy(b, a, back)});
            }
        }
        pairSlots(oven, a, b);
        keepDoorShut(a, b);
        keepDoorShut(b, a);
    }

    OvenMode modeOf(std::size_t load) const {
        const OvenSpot* stated = statedSpot(f_, loads_[load]);
        return stated != nullptr ? stated->mode : loads_[load].heat.mode;
    }

    void pairSlots(int oven, std::size_t a, std::size_t b) {
        for (const auto& one : f_.ovenOfLoad[a].spots) {
            for (const auto& other : f_.ovenOfLoad[b].spots) {
                const bool meet = one.oven == oven && other.oven == oven &&
                                  one.first < other.first + other.slots &&
                                  other.first < one.first + one.slots;
                if (meet) {
                    f_.clause({f_.no(asked(RequirementKind::OvenSlots, oven)), f_.no(one.chosen),
                               f_.no(other.chosen), afterBy(a, b, 0), afterBy(b, a, 0)});
                }
            }
        }
    }

    /// No other load comes or goes strictly inside the shut one's time.
    void keepDoorShut(std::size_t shut, std::size_t other) {
        if (!loads_[shut].heat.doorShut) {
            return;
        }
        const Literal shutIn = memberLiteral(shut);
        const Literal otherIn = memberLiteral(other);
        const Literal keeps = f_.asked(RequirementKind::DoorShut, static_cast<int>(shut));
        for (const TimePoint moment : {taken_[other].begin, taken_[other].end}) {
            const Literal before = f_.boolean();
            const Literal afterwards = f_.boolean();
            f_.order(moment, taken_[shut].begin, 0, before);
            f_.order(taken_[shut].end, moment, 0, afterwards);
            f_.clause({f_.no(keeps), f_.no(shutIn), f_.no(otherIn), before, afterwards});
        }
    }

    Literal memberLiteral(std::size_t load) const {
        return std::ranges::find(members_, load, &Member::load)->in;
    }

    void turnOn(int oven) {
        TurnOnVars vars;
        vars.oven = oven;
        const Unit& unit = f_.expanded.stations.ovens[oven];
        const PlacementKey key{TurnOnKey{ovenOf(oven).id, unit.group}};
        const Placement* pinned = f_.pinnedPlacement(key);
        const bool begun = pinned != nullptr && pinned->started;
        if ((members_.empty() && pinned == nullptr) || f_.isLeftOut(key) ||
            (!begun && isHotAlready())) {
            vars.presence = f_.no(f_.yes());
            f_.turnOns.push_back(vars);
            return;
        }
        const bool sure = pinned != nullptr ||
                          std::ranges::any_of(
                              members_, [this](const Member& m) { return f_.engine.isTrue(m.in); });
        vars.presence = sure ? f_.yes() : f_.boolean();
        vars.start = f_.startVariable(key, RequirementKind::PinnedTurnOn, oven);
        const Literal warm = asked(RequirementKind::OvenWarmUp, oven);
        addWays(unit.group, pinned, vars);
        std::vector<Literal> used{pinned != nullptr ? f_.yes() : f_.no(vars.presence)};
        for (const Member& member : members_) {
            used.push_back(member.in);
            f_.clause({f_.no(member.in), vars.presence});
            f_.order(vars.end, taken_[member.load].begin, 0, f_.both(member.in, warm));
            warmUpBefore(oven, vars, member);
        }
        f_.clause(std::move(used));
        if (f_.lesson.head.kitchenOpens) {
            f_.order(f_.constant(toValue(*f_.lesson.head.kitchenOpens)), {vars.start, 0}, 0,
                     f_.both(vars.presence, f_.asked(RequirementKind::KitchenOpens)));
        }
        f_.turnOns.push_back(std::move(vars));
    }

    /// Something has been put in, whoever turned it on.
    bool isHotAlready() const {
        return std::ranges::any_of(
            members_, [this](const Member& m) { return f_.hasBegun(taken_[m.load].begin); });
    }

    /// Warm enough for this load from the room, or another load was in before it.
    void warmUpBefore(int oven, const TurnOnVars& vars, const Member& member) {
        for (const auto& setting : f_.ovenOfLoad[member.load].settings) {
            if (setting.oven != oven) {
                continue;
            }
            const Literal first = f_.boolean();
            f_.order(vars.end, taken_[member.load].begin,
                     toValue(ovenOf(oven).warmUpTo(setting.setTo)), first);
            turnDialBefore(oven, setting.setTo, member.load, first);
            std::vector<Literal> ways{f_.no(asked(RequirementKind::OvenWarmUp, oven)),
                                      f_.no(setting.chosen), first};
            for (const Member& other : members_) {
                if (other.load != member.load) {
                    ways.push_back(f_.both(other.in, afterBy(other.load, member.load, 0)));
                }
            }
            f_.clause(std::move(ways));
        }
    }

    /// It was turned on to something else: then the dial is turned now at the earliest.
    void turnDialBefore(int oven, Temperature setTo, std::size_t load, Literal first) {
        const PlacementKey key{TurnOnKey{ovenOf(oven).id, f_.expanded.stations.ovens[oven].group}};
        const Placement* pinned = f_.pinnedPlacement(key);
        if (f_.underway != nullptr && pinned != nullptr && pinned->started && pinned->oven) {
            const Duration change = ovenOf(oven).changeOver(pinned->oven->setTo, pinned->oven->mode,
                                                            setTo, modeOf(load));
            f_.order(f_.constant(toValue(f_.underway->now)), taken_[load].begin, toValue(change),
                     first);
        }
    }

    void addWays(int group, const Placement* pinned, TurnOnVars& vars) {
        std::vector<Literal> literals;
        Value longest = 0;
        for (const int cook : f_.crewOf(group)) {
            if (pinned != nullptr && !pinned->hands.empty() &&
                pinned->hands.front().cook != f_.cook(cook).id) {
                continue;
            }
            const Value takes = takesNow(pinned, atPace(turnOnTakes, f_.cook(cook).pacePercent));
            vars.ways.push_back({f_.boolean(true), cook, takes});
            literals.push_back(vars.ways.back().chosen);
            longest = std::max(longest, takes);
            f_.handsOf[at(cook)].push_back(
                {{vars.start, 0}, {vars.start, takes}, 1, literals.back()});
        }
        f_.exactlyOne(literals, vars.presence);
        vars.end = {f_.variable(f_.engine.low(vars.start), f_.engine.high(vars.start) + longest, 1,
                                false, vars.presence),
                    0};
        engine::Group choice{
            {vars.start, 0}, {vars.start, f_.underway == nullptr, vars.presence}, {literals}};
        for (const TurnOnVars::Way& way : vars.ways) {
            f_.order({vars.start, way.takes}, vars.end, 0, way.chosen);
        }
        f_.groups.push_back(std::move(choice));
    }

    Formulation& f_;
    const std::vector<OvenLoad>& loads_;
    std::vector<Taken> taken_;
    std::vector<Member> members_;  ///< of the oven being added
    std::map<std::pair<std::size_t, std::size_t>, std::map<Value, Literal>> after_;
};

}  // namespace

void addOvens(Formulation& f) {
    OvenRules(f).add();
}

}  // namespace rangeline::rules
