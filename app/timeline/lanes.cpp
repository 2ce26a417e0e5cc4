#include "timeline/lanes.h"

#include <QCoreApplication>
#include <array>

#include "analysis/at.h"
#include "analysis/unit_table_of.h"
#include "text/names.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Timeline)
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

bool isShared(const UnitTable& table, int unit, int groups) {
    return groups > 1 && table.unitOf(table[unit].item, 0) == table.unitOf(table[unit].item, 1);
}

/// The name inside its section, where neither the group nor the sort needs saying.
QString nameOf(const UseIndex& index, EquipmentSort sort, int unit) {
    switch (sort) {
        case EquipmentSort::Burner:
            return q(index.burnerOf(unit).name);
        case EquipmentSort::Oven:
            return q(index.ovenOf(unit).name);
        case EquipmentSort::Ware: {
            const Ware& ware = index.wareOfUnit(unit);
            const int number = index.stations().wares[unit].number + 1;
            return ware.count == 1 ? q(ware.name) : q(ware.name) + u' ' + QString::number(number);
        }
        case EquipmentSort::Pool:
            return q(index.poolOf(unit).name);
        case EquipmentSort::Cook:
            return q(index.cookOf(unit).name);
        case EquipmentSort::None:
            break;
    }
    return {};
}

bool isInCrew(const UseIndex& index, int unit) {
    return index.cookUnit(index.cookOf(unit).id, index.stations().cooks[unit].group) == unit;
}

}  // namespace

struct Lanes::Kind {
    EquipmentSort sort;
    LaneKind lane;
    const char* title;
};

Lanes::Lanes(const UseIndex& index) : index_(index) {
    constexpr std::array kinds = {
        Kind{EquipmentSort::Oven, LaneKind::OvenSlot, QT_TRANSLATE_NOOP("Timeline", "Oven")},
        Kind{EquipmentSort::Burner, LaneKind::Burner, QT_TRANSLATE_NOOP("Timeline", "Burners")},
        Kind{EquipmentSort::Ware, LaneKind::Ware, QT_TRANSLATE_NOOP("Timeline", "Pans and boards")},
        Kind{EquipmentSort::Cook, LaneKind::Cook, QT_TRANSLATE_NOOP("Timeline", "Cooks")},
        Kind{EquipmentSort::Pool, LaneKind::Pool,
             QT_TRANSLATE_NOOP("Timeline", "Sink and shelves")}};
    const int groups = index.lesson().head.groups.count;
    for (int group = groups > 1 ? -1 : 0; group < groups; ++group) {
        for (const Kind& kind : kinds) {
            const QString title = Text::tr(kind.title);
            const QString whose =
                group < 0
                    ? Text::tr("%1 (shared)").arg(title)
                    : Text::tr("Group %1: %2").arg(QString::number(group + 1), title.toLower());
            addSection(groups > 1 ? whose : title, std::max(group, 0), group < 0, kind);
        }
        if (group >= 0) {
            counters_.push_back(static_cast<int>(lanes_.size()));
            addLane(LaneKind::Counter, {}, -1, Text::tr("At hand"));
        }
    }
}

void Lanes::addSection(const QString& title, int group, bool shared, const Kind& kind) {
    const UnitTable& table = unitTableOf(index_.stations(), kind.sort);
    const std::size_t before = lanes_.size();
    sections_.push_back({title, group});
    for (int unit = 0; unit < table.size(); ++unit) {
        const bool here = isShared(table, unit, index_.lesson().head.groups.count)
                              ? shared
                              : !shared && table[unit].group == group;
        if (here && (kind.sort != EquipmentSort::Cook || isInCrew(index_, unit))) {
            addUnit(kind, unit);
        }
    }
    // The last section stays: the lane for steps that need nothing belongs to it.
    if (lanes_.size() == before && (shared || kind.sort != EquipmentSort::Pool)) {
        sections_.pop_back();
    }
}

void Lanes::addUnit(const Kind& kind, int unit) {
    const EquipmentRef ref{kind.sort, unit};
    const QString name = sentenceCase(nameOf(index_, kind.sort, unit));
    first_[ref] = static_cast<int>(lanes_.size());
    if (kind.sort != EquipmentSort::Oven) {
        addLane(kind.lane, ref, -1, name);
        return;
    }
    addLane(LaneKind::OvenHeat, ref, -1, name);
    for (int slot = 0; slot < index_.ovenOf(unit).slots; ++slot) {
        addLane(kind.lane, ref, slot, Text::tr("Slot %1").arg(QString::number(slot + 1)));
    }
}

void Lanes::addLane(LaneKind kind, const EquipmentRef& ref, int slot, const QString& name) {
    lanes_.push_back({kind, ref, slot, static_cast<int>(sections_.size()) - 1, name});
}

int Lanes::heatOf(int ovenUnit) const {
    return first_.at({EquipmentSort::Oven, ovenUnit});
}

int Lanes::slotOf(int ovenUnit, int slot) const {
    return heatOf(ovenUnit) + 1 + slot;
}

int Lanes::laneOf(const EquipmentRef& ref) const {
    return first_.at(ref);
}

int Lanes::counterOf(int group) const {
    return at(counters_, group);
}

}  // namespace rangeline
