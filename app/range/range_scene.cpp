#include "range/range_scene.h"

#include <QCoreApplication>
#include <algorithm>

#include "analysis/at.h"
#include "check/find.h"
#include "timeline/oven_heat.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(RangeScene)
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

/// The use that takes a unit at that instant; null if none does. Where several collide, the later.
template <class Use>
const Use* useAt(std::span<const Use> uses, Instant at) {
    const Use* found = nullptr;
    for (const Use& use : uses) {
        if (use.interval.contains(at)) {
            found = &use;
        }
    }
    return found;
}

class SceneMaker {
  public:
    SceneMaker(const UseIndex& index, const TextContext& text, Instant at, int group)
        : index_(index), text_(text), names_(text), at_(at), group_(group) {}

    RangeScene run() {
        RangeScene scene;
        const Clock clock(text_);
        scene.clock = clock.at(at_);
        scene.toPlating = distance();
        scene.width = index_.kitchen().rangeWidth;
        for (const int unit : unitsOf(index_.stations().burners)) {
            scene.burners.push_back(burner(unit));
        }
        for (const int unit : unitsOf(index_.stations().ovens)) {
            scene.ovens.push_back(oven(unit));
        }
        for (const int unit : unitsOf(index_.stations().wares)) {
            addElsewhere(unit, scene.elsewhere);
        }
        layOut(scene);
        return scene;
    }

  private:
    QString distance() const {
        const Duration left = Instant::serving() - at_;
        return left >= Duration()
                   ? Text::tr("%1 to plating").arg(durationText(left, text_.locale))
                   : Text::tr("%1 after plating").arg(durationText(-left, text_.locale));
    }

    /// Those of the group, and what all groups share.
    std::vector<int> unitsOf(const UnitTable& table) const {
        std::vector<int> units;
        for (int unit = 0; unit < table.size(); ++unit) {
            if (table.unitOf(table[unit].item, group_, table[unit].number) == unit) {
                units.push_back(unit);
            }
        }
        return units;
    }

    QString stepText(const PlacementKey& key) const { return sentenceCase(names_.plainStep(key)); }

    StandingVessel vessel(int chain, const PlacementKey& key) {
        StandingVessel standing;
        if (const Ware* ware = index_.wareOf(chain)) {
            shown_.push_back(index_.wareUnit(chain));
            standing.name = names_.equipment({EquipmentSort::Ware, index_.wareUnit(chain)});
            standing.width = ware->width;
            standing.depth = ware->depth.value_or(ware->width);
        }
        standing.step = stepText(key);
        const int node = index_.nodeOf(key);
        standing.waiting = node < 0 || !index_.placed(node).interval.contains(at_);
        standing.key = key;
        return standing;
    }

    BurnerScene burner(int unit) {
        const Burner& burner = index_.burnerOf(unit);
        BurnerScene scene{names_.equipment({EquipmentSort::Burner, unit}),
                          burner.widestVessel,
                          burner.fromLeft,
                          burner.fromFront,
                          {},
                          {}};
        const BurnerUse* use = useAt(index_.burnerUses(unit), at_);
        if (use == nullptr) {
            return scene;
        }
        const BurnerHold& hold = at(index_.expanded().burnerHolds, use->hold);
        const int task = taskThen(index_, hold.tasks, at_, hold.owner);
        const PlacementKey key = index_.keyOf(task);
        if (const auto* heat = std::get_if<BurnerHeat>(&index_.step(task).heat)) {
            scene.level = q(heat->level);
        }
        for (const int chain : hold.chains) {
            scene.vessels.push_back(vessel(chain, key));
        }
        if (scene.vessels.empty()) {
            scene.vessels.push_back({{}, {}, {}, stepText(key), hold.kept, key});
        }
        return scene;
    }

    OvenScene oven(int unit) {
        OvenScene scene;
        scene.name = names_.equipment({EquipmentSort::Oven, unit});
        scene.slots = index_.ovenOf(unit).slots;
        readHeat(unit, scene);
        for (const OvenUse& use : index_.ovenUses(unit)) {
            if (use.interval.contains(at_)) {
                scene.loads.emplace_back(use.firstSlot, load(use));
            }
        }
        return scene;
    }

    OvenSlotScene load(const OvenUse& use) {
        const OvenLoad& load = at(index_.expanded().ovenLoads, use.load);
        const PlacementKey key = index_.keyOf(load.owner);
        QStringList vessels;
        for (const int chain : load.chains) {
            vessels << vessel(chain, key).name;
        }
        return {listText(vessels), stepText(key), key, use.slots};
    }

    void readHeat(int unit, OvenScene& scene) const {
        const OvenHeatLine line = makeHeatLine(index_, Lanes(index_), text_, unit);
        for (const HeatPiece& piece : line.pieces) {
            if (!piece.interval.contains(at_)) {
                continue;
            }
            const bool sloping = piece.from != piece.to;
            const bool first = &piece == &line.pieces.front();
            scene.state = !sloping ? OvenState::Holding
                          : first  ? OvenState::Warming
                                   : OvenState::Changing;
            scene.setting = temperatureText(piece.to, text_.units, text_.locale);
            if (!piece.label.isEmpty()) {
                scene.setting = piece.label;
            }
        }
    }

    /// Vessels that are neither on a burner nor in an oven.
    void addElsewhere(int unit, QStringList& lines) const {
        const WareUse* use = useAt(index_.wareUses(unit), at_);
        if (use == nullptr || std::ranges::find(shown_, unit) != shown_.end()) {
            return;
        }
        const PlacementKey key = use->wash ? index_.keyOf(index_.washNode(use->chain))
                                           : keyInWare(index_, use->chain, at_);
        const QString name = sentenceCase(names_.equipment({EquipmentSort::Ware, unit}));
        lines << (use->wash ? Text::tr("%1: being washed").arg(name)
                            : Text::tr("%1: %2").arg(name, stepText(key)));
    }

    /// A kitchen that does not say where its burners are gets them in two rows.
    static void layOut(RangeScene& scene) {
        std::int64_t widest = 1;
        std::int64_t depth = 0;
        bool stated = scene.width > Length();
        for (std::size_t i = 0; i < scene.burners.size(); ++i) {
            const BurnerScene& burner = scene.burners[i];
            widest = std::max(widest, burner.widest.inNanometres());
            for (std::size_t j = 0; j < i; ++j) {
                stated = stated && (burner.fromLeft != scene.burners[j].fromLeft ||
                                    burner.fromFront != scene.burners[j].fromFront);
            }
        }
        if (!stated) {
            inTwoRows(scene, widest);
        }
        for (const BurnerScene& burner : scene.burners) {
            depth = std::max(depth, burner.fromFront.inNanometres() + widest / 2);
        }
        scene.depth = Length::nanometres(depth + widest / 16);
    }

    static void inTwoRows(RangeScene& scene, std::int64_t widest) {
        const auto columns = static_cast<std::int64_t>((scene.burners.size() + 1) / 2);
        scene.width = Length::nanometres(std::max<std::int64_t>(columns, 1) * widest);
        std::int64_t number = 0;
        for (BurnerScene& burner : scene.burners) {
            burner.fromLeft = Length::nanometres((number % columns) * widest + widest / 2);
            burner.fromFront = Length::nanometres((number / columns) * widest + widest / 2);
            ++number;
        }
    }

    const UseIndex& index_;
    const TextContext& text_;
    Names names_;
    Instant at_;
    int group_;
    std::vector<int> shown_;  ///< units of wares on a burner or in an oven
};

QString burnerLine(const BurnerScene& burner) {
    const QString name = sentenceCase(burner.name);
    if (burner.vessels.empty()) {
        return Text::tr("%1: free").arg(name);
    }
    QStringList things;
    for (const StandingVessel& vessel : burner.vessels) {
        things << (vessel.name.isEmpty() ? vessel.step
                                         : Text::tr("%1 (%2)").arg(vessel.step, vessel.name));
    }
    return Text::tr("%1: %2").arg(name, listText(things));
}

QStringList ovenLines(const OvenScene& oven) {
    const QString name = sentenceCase(oven.name);
    QStringList lines{Text::tr("%1: %2").arg(name, ovenStateText(oven))};
    for (const auto& [slot, load] : oven.loads) {
        lines << Text::tr("%1, slot %2: %3").arg(name, QString::number(slot + 1), load.step);
    }
    return lines;
}

}  // namespace

QString ovenStateText(const OvenScene& oven) {
    switch (oven.state) {
        case OvenState::Off:
            return Text::tr("off");
        case OvenState::Warming:
            return Text::tr("warming up to %1").arg(oven.setting);
        case OvenState::Changing:
            return Text::tr("changing to %1").arg(oven.setting);
        case OvenState::Holding:
            break;
    }
    return Text::tr("at %1").arg(oven.setting);
}

RangeScene rangeScene(const UseIndex& index, const TextContext& text, Instant at, int group) {
    return SceneMaker(index, text, at, group).run();
}

QStringList sceneLines(const RangeScene& scene) {
    QStringList lines;
    for (const BurnerScene& burner : scene.burners) {
        lines << burnerLine(burner);
    }
    for (const OvenScene& oven : scene.ovens) {
        lines << ovenLines(oven);
    }
    return lines + scene.elsewhere;
}

}  // namespace rangeline
