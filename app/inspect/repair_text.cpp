#include "inspect/repair_text.h"

#include <QCoreApplication>

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Repairs)
};

}  // namespace

QString repairText(const Repair& repair, const TextContext& text) {
    const Names names(text);
    const QString step = names.step(repair.key);
    const Clock clock(text);
    const QString at = repair.at ? clock.at(*repair.at) : QString();
    switch (repair.code) {
        case RepairCode::AddWash:
            return at.isEmpty() ? Text::tr("Add the wash") : Text::tr("Add the wash at %1").arg(at);
        case RepairCode::OtherEquipment:
            return Text::tr("Use %1 for %2").arg(names.equipment(repair.equipment), step);
        case RepairCode::MoveToFree:
            return Text::tr("Move %1 to %2").arg(step, at);
        case RepairCode::PinOff:
            return Text::tr("Take the pin off %1").arg(step);
        case RepairCode::TurnOnOven:
            return at.isEmpty() ? sentenceCase(step)
                                : Text::tr("%1 at %2").arg(sentenceCase(step), at);
        case RepairCode::TimeAllByPiece:
            return Text::tr("Time all of it by the piece");
        case RepairCode::TimeByPiece:
            return Text::tr("Time %1 by the piece").arg(step);
        case RepairCode::PlaceIt:
            break;
    }
    return Text::tr("Place %1 at %2").arg(step, at);
}

}  // namespace rangeline
