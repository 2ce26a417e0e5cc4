#include "text/names.h"

#include <QCoreApplication>

#include "analysis/unit_table_of.h"

namespace rangeline {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Names)
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

/// A burner is called one even where its name only says where it is.
QString burnerName(const std::string& name) {
    const QString text = q(name);
    return text.contains(Text::tr("burner"), Qt::CaseInsensitive) ? text
                                                                  : Text::tr("%1 burner").arg(text);
}

const Component& componentOf(const Lesson& lesson, const Task& task) {
    return lesson.servings[static_cast<std::size_t>(task.serving)]
        .dish.components[static_cast<std::size_t>(task.component)];
}

}  // namespace

QString sentenceCase(QString text) {
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i].isLetterOrNumber()) {
            text[i] = text[i].toUpper();
            break;
        }
    }
    return text;
}

QString listText(const QStringList& items) {
    if (items.size() < 2) {
        return items.join(QString());
    }
    return Text::tr("%1 and %2")
        .arg(items.sliced(0, items.size() - 1).join(Text::tr(", ")), items.last());
}

Names::Names(const TextContext& context) : context_(context) {
    for (const Serving& serving : context.lesson.servings) {
        for (const Component& component : serving.dish.components) {
            for (const Step& step : component.steps) {
                ++stepsNamed_[step.name];
            }
        }
    }
}

const Task* Names::taskOf(const StepKey& key) const {
    const int task = context_.expanded.taskOf(key);
    return task < 0 ? nullptr : &context_.expanded.tasks[static_cast<std::size_t>(task)];
}

QString Names::qualifiers(const Task& task) const {
    QStringList parts;
    if (stepsNamed_.at(stepOf(context_.lesson, task).name) > 1) {
        parts << q(componentOf(context_.lesson, task).name);
    }
    if (task.batches > 1) {
        parts << Text::tr("batch %1 of %2")
                     .arg(context_.locale.toString(task.key.batch + 1),
                          context_.locale.toString(task.batches));
    }
    if (context_.lesson.head.groups.count > 1) {
        parts << Text::tr("group %1").arg(context_.locale.toString(task.key.group + 1));
    }
    return parts.join(Text::tr(", "));
}

QString Names::step(const PlacementKey& key) const {
    const auto* stepKey = std::get_if<StepKey>(&key);
    if (stepKey == nullptr) {
        return plainStep(key);
    }
    const QString name = Text::tr("“%1”").arg(plainStep(key));
    const Task* task = taskOf(*stepKey);
    const QString more = task == nullptr ? QString() : qualifiers(*task);
    return more.isEmpty() ? name : Text::tr("%1 (%2)").arg(name, more);
}

QString Names::plainStep(const PlacementKey& key) const {
    if (const auto* stepKey = std::get_if<StepKey>(&key)) {
        const Task* task = taskOf(*stepKey);
        return task == nullptr ? nameWithoutTask(stepKey->step)
                               : q(stepOf(context_.lesson, *task).name);
    }
    if (const auto* wash = std::get_if<WashKey>(&key)) {
        return Text::tr("washing %1").arg(washedWare(*wash));
    }
    const auto& turnOn = std::get<TurnOnKey>(key);
    const int item = ovenItem(context_.lesson.kitchen, turnOn.oven);
    const EquipmentRef ref{
        EquipmentSort::Oven,
        item < 0 ? -1 : context_.expanded.stations.ovens.unitOf(item, turnOn.group)};
    return Text::tr("turning on %1").arg(item < 0 ? q(turnOn.oven.text) : withArticle(ref));
}

/// Steps that are done ahead have no task.
QString Names::nameWithoutTask(const StepId& id) const {
    for (const Serving& serving : context_.lesson.servings) {
        for (const Component& component : serving.dish.components) {
            for (const Step& step : component.steps) {
                if (step.id == id) {
                    return q(step.name);
                }
            }
        }
    }
    return q(id.text);
}

QString Names::component(const StepKey& key) const {
    const Task* task = taskOf(key);
    return task == nullptr ? QString() : q(componentOf(context_.lesson, *task).name);
}

QString Names::washedWare(const WashKey& key) const {
    const auto placed = context_.lesson.placements.find(key.after);
    const auto spot = static_cast<std::size_t>(key.spot);
    if (placed != context_.lesson.placements.end() && spot < placed->second.wares.size()) {
        return ware(placed->second.wares[spot], key.after.group);
    }
    return Text::tr("what was used for %1").arg(step(key.after));
}

QString Names::itemText(EquipmentSort sort, const Unit& unit) const {
    const Kitchen& kitchen = context_.lesson.kitchen;
    const auto item = static_cast<std::size_t>(unit.item);
    switch (sort) {
        case EquipmentSort::Burner:
            return burnerName(kitchen.burners[item].name);
        case EquipmentSort::Oven:
            return q(kitchen.ovens[item].name);
        case EquipmentSort::Pool:
            return q(kitchen.pools[item].name);
        case EquipmentSort::Cook:
            return q(kitchen.cooks[item].name);
        case EquipmentSort::Ware: {
            const Ware& ware = kitchen.wares[item];
            return ware.count == 1 ? q(ware.name)
                                   : Text::tr("%1 %2").arg(
                                         q(ware.name), context_.locale.toString(unit.number + 1));
        }
        case EquipmentSort::None:
            break;
    }
    return {};
}

QString Names::unitName(EquipmentSort sort, int number) const {
    const UnitTable& table = unitTableOf(context_.expanded.stations, sort);
    if (sort == EquipmentSort::None || number < 0 || number >= table.size()) {
        return {};
    }
    const Unit& unit = table[number];
    const QString name = itemText(sort, unit);
    // Shared things are there once and belong to no group.
    const bool perGroup = context_.lesson.head.groups.count > 1 &&
                          table.unitOf(unit.item, 0) != table.unitOf(unit.item, 1);
    return perGroup ? Text::tr("%1 of group %2").arg(name, context_.locale.toString(unit.group + 1))
                    : name;
}

QString Names::equipment(const EquipmentRef& ref) const {
    return unitName(ref.sort, ref.unit);
}

QString Names::withArticle(const EquipmentRef& ref) const {
    const QString name = equipment(ref);
    const bool named = ref.sort == EquipmentSort::Cook || name.isEmpty() || name.back().isDigit() ||
                       context_.lesson.head.groups.count > 1;
    return named ? name : Text::tr("the %1").arg(name);
}

QString Names::byId(EquipmentSort sort, int item, int group, const std::string& id) const {
    return item < 0
               ? q(id)
               : unitName(sort, unitTableOf(context_.expanded.stations, sort).unitOf(item, group));
}

QString Names::burner(const BurnerId& id, int group) const {
    return byId(EquipmentSort::Burner, burnerItem(context_.lesson.kitchen, id), group, id.text);
}

QString Names::oven(const OvenId& id, int group) const {
    return byId(EquipmentSort::Oven, ovenItem(context_.lesson.kitchen, id), group, id.text);
}

QString Names::cook(const CookId& id, int group) const {
    return byId(EquipmentSort::Cook, cookItem(context_.lesson.kitchen, id), group, id.text);
}

QString Names::ware(const WareSpot& spot, int group) const {
    const int item = wareItem(context_.lesson.kitchen, spot.ware);
    const UnitTable& table = context_.expanded.stations.wares;
    if (item < 0 || spot.number < 0 || spot.number >= table.countOf(item)) {
        return q(spot.ware.text);
    }
    return unitName(EquipmentSort::Ware, table.unitOf(item, group, spot.number));
}

}  // namespace rangeline
