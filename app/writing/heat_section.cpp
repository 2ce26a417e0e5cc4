#include "writing/heat_section.h"

#include <QCompleter>

#include "model/equipment_kinds.h"
#include "model/quantity_text.h"
#include "text/words.h"
#include "writing/field_keys.h"
#include "writing/field_values.h"

namespace rangeline {
namespace {

enum On : int { WithoutHeat, OnBurner, InOven };
constexpr OvenMode modes[] = {OvenMode::Bake, OvenMode::Convection, OvenMode::Broil};

QString kindText(std::string_view key) {
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size())).replace(u'-', u' ');
}

}  // namespace

HeatSection::HeatSection(Units units, QWidget* parent)
    : StepSection(tr("Heat and pan"), units, parent) {
    const auto makeChoice = [this](const QString& name) {
        auto* choice = new QComboBox(this);
        choice->setAccessibleName(name);
        connect(choice, &QComboBox::activated, this, &StepSection::edited);
        return choice;
    };
    on_ = makeChoice(tr("Cooked"));
    on_->addItems({tr("without heat"), tr("on a burner"), tr("in the oven")});
    level_ = makeChoice(tr("Heat of the burner"));
    level_->setEditable(true);
    // Completed in the line, "medium" would become "medium-low".
    level_->completer()->setCompletionMode(QCompleter::PopupCompletion);
    level_->addItems(
        {{}, tr("low"), tr("medium-low"), tr("medium"), tr("medium-high"), tr("high")});
    connect(level_->lineEdit(), &QLineEdit::editingFinished, this, &StepSection::edited);
    power_ = makeEdit(tr("Least power of the burner"), tr("any power"));
    lowest_ =
        makeEdit(tr("Oven, at least"), units == Units::UsCustomary ? tr("375 °F") : tr("190 °C"));
    highest_ = makeEdit(tr("Oven, at most"), tr("the same"));
    mode_ = makeChoice(tr("Oven mode"));
    for (const OvenMode mode : modes) {
        mode_->addItem(modeText(mode));
    }
    shut_ = new QCheckBox(tr("its door stays shut"), this);
    ware_ = makeChoice(tr("In or on"));
    ware_->addItem(tr("nothing"), QString());
    for (const EquipmentKind& kind : equipmentKinds()) {
        if (kind.role == EquipmentRole::Ware) {
            ware_->addItem(kindText(kind.key), QString::fromStdString(std::string(kind.key)));
        }
    }
    width_ = makeEdit(tr("At least so wide"), tr("any width"));
    carriesOn_ = makeChoice(tr("Goes on in the one of"));
    turnedOut_ = new QCheckBox(tr("turned out at the end, it is free then"), this);
    for (QCheckBox* tick : {shut_, turnedOut_}) {
        connect(tick, &QCheckBox::clicked, this, &StepSection::edited);
    }
    setFieldKey(*ware_, "burner");  // a burner asks for a pan
    setFieldKey(*level_, "burner.level");
    setFieldKey(*power_, "burner.leastPower");
    setFieldKey(*lowest_, "oven");
    setFieldKey(*width_, "wares[0].leastWidth");
    setFieldKey(*carriesOn_, "wares[0].carriesOn");
    form().addRow(tr("Cooked"), on_);
    addLine(tr("Burner, of at least"), {level_, power_});
    addLine(tr("Oven from, to"), {lowest_, highest_, mode_});
    form().addRow(QString(), shut_);
    addLine(tr("In or on, at least wide"), {ware_, width_});
    form().addRow(tr("Goes on in the one of"), carriesOn_);
    form().addRow(QString(), turnedOut_);
    connect(on_, &QComboBox::currentIndexChanged, this, &HeatSection::offerWhatFits);
    connect(ware_, &QComboBox::currentIndexChanged, this, &HeatSection::offerWhatFits);
}

void HeatSection::offerWhatFits() {
    for (QWidget* field : std::initializer_list<QWidget*>{level_, power_}) {
        field->setEnabled(on_->currentIndex() == OnBurner);
    }
    for (QWidget* field : std::initializer_list<QWidget*>{lowest_, highest_, mode_, shut_}) {
        field->setEnabled(on_->currentIndex() == InOven);
    }
    const bool any = !ware_->currentData().toString().isEmpty();
    for (QWidget* field : std::initializer_list<QWidget*>{width_, carriesOn_, turnedOut_}) {
        field->setEnabled(any);
    }
}

void HeatSection::fillCarriers(const Dish& dish, const Step& step) {
    carriesOn_->clear();
    carriesOn_->addItem(tr("none: a clean one"), QString());
    for (const Component& component : dish.components) {
        for (const Step& other : component.steps) {
            const bool has = !other.wares.empty() && !step.wares.empty() && other.id != step.id &&
                             other.wares.front().kind == step.wares.front().kind;
            if (has) {
                carriesOn_->addItem(QString::fromStdString(other.name),
                                    QString::fromStdString(other.id.text));
            }
        }
    }
    const bool carries = !step.wares.empty() && step.wares.front().carriesOn;
    const QString id =
        carries ? QString::fromStdString(step.wares.front().carriesOn->text) : QString();
    carriesOn_->setCurrentIndex(std::max(0, carriesOn_->findData(id)));
}

void HeatSection::showStep(const Dish& dish, const Step& step) {
    const auto* burner = std::get_if<BurnerHeat>(&step.heat);
    const auto* oven = std::get_if<OvenHeat>(&step.heat);
    on_->setCurrentIndex(burner != nullptr ? OnBurner : oven != nullptr ? InOven : WithoutHeat);
    level_->setEditText(burner != nullptr ? QString::fromStdString(burner->level) : QString());
    power_->setText(burner != nullptr && burner->leastPower
                        ? QString::fromStdString(toText(*burner->leastPower))
                        : QString());
    lowest_->setText(oven != nullptr ? fieldText(oven->lowest, units()) : QString());
    const bool range = oven != nullptr && oven->highest != oven->lowest;
    highest_->setText(range ? fieldText(oven->highest, units()) : QString());
    mode_->setCurrentIndex(oven != nullptr ? static_cast<int>(oven->mode) : 0);
    shut_->setChecked(oven != nullptr && oven->doorShut);
    const WareNeed none;
    const WareNeed& need = step.wares.empty() ? none : step.wares.front();
    ware_->setCurrentIndex(std::max(0, ware_->findData(QString::fromStdString(need.kind))));
    width_->setText(fieldText(need.leastWidth, units()));
    turnedOut_->setChecked(need.turnedOut);
    fillCarriers(dish, step);
    offerWhatFits();
}

QString HeatSection::takeBurner(Step& step) const {
    const auto* before = std::get_if<BurnerHeat>(&step.heat);
    BurnerHeat heat = before == nullptr ? BurnerHeat{} : *before;
    heat.level = level_->currentText().trimmed().toStdString();
    const std::string typed = power_->text().trimmed().toStdString();
    const auto power = parsePower(typed);
    if (!typed.empty() && !power.ok()) {
        return tr(
            "How strong must the burner be at least? Write a power such as 9000 Btu/h or "
            "2000 W, or nothing.");
    }
    heat.leastPower = typed.empty() ? std::nullopt : std::optional(power.value());
    step.heat = heat;
    return {};
}

QString HeatSection::takeOven(Step& step) const {
    const auto* before = std::get_if<OvenHeat>(&step.heat);
    OvenHeat heat = before == nullptr ? OvenHeat{} : *before;
    const auto lowest = temperatureIn(lowest_->text(), units(), heat.lowest);
    const auto highest = highest_->text().trimmed().isEmpty()
                             ? lowest
                             : temperatureIn(highest_->text(), units(), heat.highest);
    if (!lowest || !highest || *highest < *lowest) {
        return tr("How hot is the oven? Write degrees, the lower first.");
    }
    heat.lowest = *lowest;
    heat.highest = *highest;
    heat.mode = modes[std::max(0, mode_->currentIndex())];
    heat.doorShut = shut_->isChecked();
    step.heat = heat;
    return {};
}

QString HeatSection::takeHeat(Step& step) const {
    if (on_->currentIndex() == InOven) {
        return takeOven(step);
    }
    if (on_->currentIndex() == OnBurner) {
        return takeBurner(step);
    }
    step.heat = std::monostate();
    return {};
}

QString HeatSection::takeWare(Step& step) const {
    const std::string kind = ware_->currentData().toString().toStdString();
    if (kind.empty()) {
        if (!step.wares.empty()) {
            step.wares.erase(step.wares.begin());
        }
        return {};
    }
    const Length before = step.wares.empty() ? Length() : step.wares.front().leastWidth;
    const auto width = width_->text().trimmed().isEmpty()
                           ? std::optional(Length())
                           : lengthIn(width_->text(), units(), before);
    if (!width) {
        return tr("How wide at least? Write a width, or nothing.");
    }
    if (step.wares.empty()) {
        step.wares.emplace_back();
    }
    WareNeed& need = step.wares.front();
    const bool sameKind = need.kind == kind;
    need.kind = kind;
    need.leastWidth = *width;
    need.turnedOut = turnedOut_->isChecked();
    const std::string from = carriesOn_->currentData().toString().toStdString();
    need.carriesOn = from.empty() || !sameKind ? std::nullopt : std::optional<StepId>(StepId{from});
    return {};
}

QString HeatSection::takeInto(Step& step) const {
    const QString why = takeHeat(step);
    return why.isEmpty() ? takeWare(step) : why;
}

}  // namespace rangeline
