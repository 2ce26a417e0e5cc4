#include "arrange/brute_force.h"

#include <algorithm>
#include <functional>

#include "check/check.h"

namespace rangeline::test {
namespace {

class BruteForce {
  public:
    BruteForce(const Lesson& lesson, Instant earliest, Instant latest, const Overlook& overlook,
               bool firstIsEnough)
        : lesson_(lesson),
          expanded_(expand(lesson)),
          earliest_(earliest),
          latest_(latest),
          overlook_(overlook),
          firstIsEnough_(firstIsEnough) {
        lesson_.placements.clear();
        for (const Oven& oven : lesson.kitchen.ovens) {
            optional_.push_back(TurnOnKey{oven.id, 0});
        }
        for (const Chain& chain : expanded_.chains) {
            optional_.push_back(chain.key);
        }
    }

    std::optional<Instant> run() {
        placeOptional(0);
        return best_;
    }

    std::optional<std::int64_t> least(const Measure& measure) {
        measure_ = &measure;
        placeOptional(0);
        return least_;
    }

  private:
    void eachStart(const std::function<void(Instant)>& visit) const {
        for (Instant at = latest_; at >= earliest_; at = at - lesson_.head.grain) {
            if (!best_ || (!firstIsEnough_ && at > *best_)) {
                visit(at);
            }
        }
    }

    /// Washes and turning on come first, so that what they cure is never judged without them.
    void placeOptional(std::size_t i) {
        if (i == optional_.size()) {
            placeTask(0);
            return;
        }
        placeOptional(i + 1);
        for (const CookId& cook : lesson_.head.crew) {
            eachStart([&](Instant start) {
                for (const auto& setting : settingsOf(optional_[i])) {
                    Placement& placement = lesson_.placements[optional_[i]];
                    placement = Placement{};
                    placement.start = start;
                    placement.hands = {{cook, 0}};
                    placement.oven = setting;
                    placeOptional(i + 1);
                }
            });
        }
        lesson_.placements.erase(optional_[i]);
    }

    /// What an oven may be turned on to; nothing for a wash.
    std::vector<std::optional<OvenSpot>> settingsOf(const PlacementKey& key) const {
        const auto* turnOn = std::get_if<TurnOnKey>(&key);
        if (turnOn == nullptr) {
            return {std::nullopt};
        }
        const int item = ovenItem(lesson_.kitchen, turnOn->oven);
        const Oven& oven = lesson_.kitchen.ovens[static_cast<std::size_t>(item)];
        std::vector<std::optional<OvenSpot>> settings;
        for (const OvenLoad& load : expanded_.ovenLoads) {
            for (const Temperature t : oven.settingsWithin(load.heat.lowest, load.heat.highest)) {
                settings.push_back(OvenSpot{oven.id, 0, t, load.heat.mode});
            }
        }
        return settings;
    }

    void placeTask(std::size_t i) {
        if (i == expanded_.tasks.size()) {
            judge();
            return;
        }
        const PlacementKey key{expanded_.tasks[i].key};
        eachStart([&](Instant start) {
            Placement placement;
            placement.start = start;
            withCook(i, placement, [&] {
                withEquipment(i, placement, [&] {
                    lesson_.placements[key] = placement;
                    if (hopeful()) {
                        placeTask(i + 1);
                    }
                });
            });
        });
        lesson_.placements.erase(key);
    }

    void withCook(std::size_t task, Placement& placement, const std::function<void()>& next) const {
        const bool hands = std::ranges::any_of(
            expanded_.tasks[task].segments,
            [](const Segment& segment) { return segment.attention == Attention::Hands; });
        if (!hands) {
            next();
            return;
        }
        for (const CookId& cook : lesson_.head.crew) {
            placement.hands = {{cook, 0}};
            next();
        }
    }

    void withEquipment(std::size_t task, Placement& placement,
                       const std::function<void()>& next) const {
        const Step& step = stepOf(lesson_, expanded_.tasks[task]);
        std::vector<std::optional<WareSpot>> wares;
        for (const Ware& ware : lesson_.kitchen.wares) {
            for (int number = 0;
                 number < ware.count && !step.wares.empty() && !step.wares.front().carriesOn &&
                 ware.kind == step.wares.front().kind;
                 ++number) {
                wares.push_back(WareSpot{ware.id, number});
            }
        }
        if (wares.empty()) {
            wares.push_back(std::nullopt);
        }
        for (const auto& ware : wares) {
            placement.wares = ware ? std::vector{*ware} : std::vector<WareSpot>();
            withHeat(step, placement, next);
        }
    }

    void withHeat(const Step& step, Placement& placement, const std::function<void()>& next) const {
        if (std::holds_alternative<BurnerHeat>(step.heat)) {
            for (const Burner& burner : lesson_.kitchen.burners) {
                placement.burners = {burner.id};
                next();
            }
        } else if (const auto* heat = std::get_if<OvenHeat>(&step.heat)) {
            for (const Oven& oven : lesson_.kitchen.ovens) {
                for (const Temperature setting : oven.settingsWithin(heat->lowest, heat->highest)) {
                    for (int slot = 0; slot < oven.slots; ++slot) {
                        placement.oven = OvenSpot{oven.id, slot, setting, heat->mode};
                        next();
                    }
                }
            }
        } else {
            next();
        }
    }

    bool matters(const Finding& finding) const {
        return finding.severity != Severity::Caution && !(overlook_ && overlook_(finding));
    }

    /// Nothing is wrong but what a placement still to come can cure.
    bool hopeful() const {
        const std::vector<Finding> findings = checkLesson(lesson_, expanded_);
        return std::ranges::all_of(findings, [this](const Finding& finding) {
            return finding.code == FindingCode::NotPlaced || !matters(finding);
        });
    }

    void judge() {
        const std::vector<Finding> findings = checkLesson(lesson_, expanded_);
        const bool fine = std::ranges::none_of(
            findings, [this](const Finding& finding) { return matters(finding); });
        if (fine && measure_ != nullptr) {
            const std::int64_t cost = (*measure_)(lesson_, expanded_);
            least_ = std::min(least_.value_or(cost), cost);
        } else if (fine) {
            Instant start = latest_;
            for (const auto& [key, placement] : lesson_.placements) {
                start = std::min(start, placement.start);
            }
            best_ = best_ ? std::max(*best_, start) : start;
        }
    }

    Lesson lesson_;
    Expanded expanded_;
    Instant earliest_;
    Instant latest_;
    const Overlook& overlook_;
    bool firstIsEnough_;
    std::vector<PlacementKey> optional_;
    std::optional<Instant> best_;
    const Measure* measure_ = nullptr;  ///< instead of the latest start
    std::optional<std::int64_t> least_;
};

}  // namespace

std::optional<Instant> latestStartByBruteForce(const Lesson& lesson, Instant earliest,
                                               Instant latest) {
    const Overlook overlookNothing;
    return BruteForce(lesson, earliest, latest, overlookNothing, false).run();
}

bool possibleByBruteForce(const Lesson& lesson, Instant earliest, Instant latest,
                          const Overlook& overlook) {
    return BruteForce(lesson, earliest, latest, overlook, true).run().has_value();
}

std::optional<std::int64_t> leastByBruteForce(const Lesson& lesson, Instant earliest,
                                              Instant latest, const Measure& measure) {
    const Overlook overlookNothing;
    return BruteForce(lesson, earliest, latest, overlookNothing, false).least(measure);
}

}  // namespace rangeline::test
