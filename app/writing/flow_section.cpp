#include "writing/flow_section.h"

#include <QSignalBlocker>
#include <algorithm>
#include <utility>

#include "text/words.h"
#include "writing/dish_changes.h"
#include "writing/field_keys.h"
#include "writing/field_values.h"
#include "writing/more_fields.h"
#include "writing/ties.h"

namespace rangeline {
namespace {

constexpr Storage storages[] = {Storage::Room, Storage::Cold, Storage::HotOnBurner,
                                Storage::HotInOven};

/// Above the 135 °F of the Food Code 3-501.16 for food held hot, without cooking on; the figures
/// themselves are common practice, no source.
OvenHeat usualHolding(Units units) {
    OvenHeat heat;
    const bool us = units == Units::UsCustomary;
    heat.lowest = us ? Temperature::fahrenheit(170) : Temperature::celsius(80);
    heat.highest = us ? Temperature::fahrenheit(200) : Temperature::celsius(90);
    return heat;
}

}  // namespace

FlowSection::FlowSection(Units units, QWidget* parent)
    : StepSection(tr("Before and after"), units, parent) {
    uses_ = new QListWidget(this);
    uses_->setAccessibleName(tr("What goes into it"));
    const int high = 6 * fontMetrics().lineSpacing();
    uses_->setFixedHeight(high);
    uses_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(uses_, &QListWidget::itemChanged, this, &StepSection::edited);
    setFieldKey(*uses_, "uses");
    form().addRow(tr("What goes into it"), uses_);
    addKeeping();
    addTicks();
}

void FlowSection::addKeeping() {
    atRoom_ = makeEdit(tr("Keeps at room temperature"), tr("as long as needed"));
    cold_ = makeEdit(tr("Keeps cold"), tr("as long as needed"));
    hot_ = makeEdit(tr("Keeps hot"), tr("as long as needed"));
    storage_ = new QComboBox(this);
    storage_->setAccessibleName(tr("Waits"));
    for (const Storage storage : storages) {
        storage_->addItem(storageText(storage));
    }
    place_ = new QComboBox(this);
    place_->setAccessibleName(tr("What it takes up while it waits"));
    place_->addItem(tr("nothing"), QString());
    for (const Vocabulary words = poolWords(); const std::string& key : words.keys) {
        place_->addItem(words.wordOf(key), QString::fromStdString(key));
    }
    amount_ = new QSpinBox(this);
    amount_->setAccessibleName(tr("How much of it"));
    constexpr int most = 100;
    amount_->setRange(1, most);
    lowest_ = makeEdit(tr("Oven that keeps it hot, at least"));
    highest_ = makeEdit(tr("Oven that keeps it hot, at most"));
    for (QComboBox* choice : {storage_, place_}) {
        connect(choice, &QComboBox::activated, this, &StepSection::edited);
        connect(choice, &QComboBox::currentIndexChanged, this, &FlowSection::offerWhatFits);
    }
    connect(amount_, &QSpinBox::editingFinished, this, &StepSection::edited);
    setFieldKey(*atRoom_, "after.atRoom");
    setFieldKey(*cold_, "after.cold");
    setFieldKey(*hot_, "after.hot");
    setFieldKey(*storage_, "after");
    setFieldKey(*place_, "after.place");
    setFieldKey(*lowest_, "after.holdingHeat");
    addLine(tr("Keeps: room, cold, hot"), {atRoom_, cold_, hot_});
    form().addRow(tr("Waits"), storage_);
    addLine(tr("Takes up then"), {place_, amount_});
    addLine(tr("Oven for it from, to"), {lowest_, highest_});
}

void FlowSection::addTicks() {
    ahead_ = new QCheckBox(tr("can be done before the lesson, also the day before"), this);
    plates_ = new QCheckBox(tr("ends on the plate"), this);
    plates_->setToolTip(
        tr("The plating itself: what ends on the plate can wait there for a few minutes only."));
    afterServing_ = new QCheckBox(tr("washing-up after serving"), this);
    for (QCheckBox* tick : {ahead_, plates_, afterServing_}) {
        connect(tick, &QCheckBox::clicked, this, &StepSection::edited);
        form().addRow(QString(), tick);
    }
    onlyIfAhead_ = new QComboBox(this);
    onlyIfAhead_->setAccessibleName(tr("Only where this step was done before"));
    connect(onlyIfAhead_, &QComboBox::activated, this, &StepSection::edited);
    setFieldKey(*onlyIfAhead_, "onlyIfAhead");
    form().addRow(tr("Only where done before"), onlyIfAhead_);
}

/// A place for what waits cold or at room temperature, an oven for what waits in one.
void FlowSection::offerWhatFits() {
    const Storage storage = storages[std::max(0, storage_->currentIndex())];
    const bool stands = storage == Storage::Room || storage == Storage::Cold;
    place_->setEnabled(stands);
    amount_->setEnabled(stands && !place_->currentData().toString().isEmpty());
    for (QLineEdit* field : {lowest_, highest_}) {
        field->setEnabled(storage == Storage::HotInOven);
    }
}

void FlowSection::fillUses(const Dish& dish, const Step& step) {
    const QSignalBlocker quiet(uses_);
    const std::vector<StepId> ids = mayUse(dish, step.id);
    // Lines that are there already stay, and with them where the keyboard is.
    while (uses_->count() > static_cast<int>(ids.size())) {
        delete uses_->takeItem(uses_->count() - 1);
    }
    for (std::size_t i = 0; i < ids.size(); ++i) {
        const auto line = static_cast<int>(i);
        auto* tick = line < uses_->count() ? uses_->item(line) : new QListWidgetItem(uses_);
        tick->setText(QString::fromStdString(findStep(dish, ids[i])->name));
        tick->setToolTip(tick->text());
        tick->setData(Qt::UserRole, QString::fromStdString(ids[i].text));
        const bool used = std::ranges::find(step.uses, ids[i], &Use::step) != step.uses.end();
        tick->setCheckState(used ? Qt::Checked : Qt::Unchecked);
    }
    if (std::exchange(shown_, step.id) != step.id) {
        scrollToWhatIsUsed();
    }
}

void FlowSection::scrollToWhatIsUsed() {
    uses_->scrollToTop();
    for (int line = 0; line < uses_->count(); ++line) {
        if (uses_->item(line)->checkState() == Qt::Checked) {
            uses_->scrollToItem(uses_->item(line));
            return;
        }
    }
}

void FlowSection::fillAheads(const Dish& dish, const Step& step) {
    onlyIfAhead_->clear();
    onlyIfAhead_->addItem(tr("always"), QString());
    const StepNames others = otherSteps(dish, step.id);
    for (std::size_t i = 0; i < others.ids.size(); ++i) {
        onlyIfAhead_->addItem(QString::fromStdString(others.names[i]),
                              QString::fromStdString(others.ids[i].text));
    }
    const QString id =
        step.onlyIfAhead ? QString::fromStdString(step.onlyIfAhead->text) : QString();
    onlyIfAhead_->setCurrentIndex(std::max(0, onlyIfAhead_->findData(id)));
}

void FlowSection::showKeeping(const Keeping& after) {
    atRoom_->setText(fieldText(after.atRoom));
    cold_->setText(fieldText(after.cold));
    hot_->setText(fieldText(after.hot));
    storage_->setCurrentIndex(static_cast<int>(after.storage));
    const QString pool = after.place ? QString::fromStdString(after.place->pool.text) : QString();
    if (place_->findData(pool) < 0) {
        place_->addItem(pool, pool);  // of a kitchen that names it so
    }
    place_->setCurrentIndex(place_->findData(pool));
    amount_->setValue(after.place ? after.place->amount : 1);
    lowest_->setText(after.holdingHeat ? fieldText(after.holdingHeat->lowest, units()) : QString());
    highest_->setText(after.holdingHeat ? fieldText(after.holdingHeat->highest, units())
                                        : QString());
    offerWhatFits();
}

void FlowSection::showStep(const Dish& dish, const Step& step) {
    fillUses(dish, step);
    fillAheads(dish, step);
    showKeeping(step.after);
    ahead_->setChecked(step.after.mayBeDoneAhead);
    plates_->setChecked(step.plates);
    afterServing_->setChecked(step.afterServing);
}

QString FlowSection::takeKeeping(Step& step) const {
    const auto atRoom = durationOrNone(atRoom_->text());
    const auto cold = durationOrNone(cold_->text());
    const auto hot = durationOrNone(hot_->text());
    if (!atRoom || !cold || !hot) {
        return tr("How long does it keep? Write a time, or nothing for as long as needed.");
    }
    step.after.atRoom = *atRoom;
    step.after.cold = *cold;
    step.after.hot = *hot;
    step.after.storage = storages[std::max(0, storage_->currentIndex())];
    step.after.mayBeDoneAhead = ahead_->isChecked();
    return takePlace(step.after);
}

QString FlowSection::takePlace(Keeping& after) const {
    const std::string pool = place_->currentData().toString().toStdString();
    const bool stands = after.storage == Storage::Room || after.storage == Storage::Cold;
    after.place = stands && !pool.empty() ? std::optional(PoolNeed{PoolId{pool}, amount_->value()})
                                          : std::nullopt;
    if (after.storage != Storage::HotInOven) {
        after.holdingHeat.reset();
        return {};
    }
    OvenHeat heat = after.holdingHeat.value_or(usualHolding(units()));
    const bool empty = lowest_->text().trimmed().isEmpty() && highest_->text().trimmed().isEmpty();
    const auto lowest = temperatureIn(lowest_->text(), units(), heat.lowest);
    const auto highest = temperatureIn(highest_->text(), units(), heat.highest);
    if (!empty && (!lowest || !highest || *highest < *lowest)) {
        return tr("How hot is the oven that keeps it hot? Write degrees, the lower first.");
    }
    heat.lowest = empty ? heat.lowest : *lowest;
    heat.highest = empty ? heat.highest : *highest;
    after.holdingHeat = heat;
    return {};
}

QString FlowSection::takeInto(Step& step) const {
    std::vector<Use> uses;
    for (int row = 0; row < uses_->count(); ++row) {
        const QListWidgetItem* tick = uses_->item(row);
        const StepId id{tick->data(Qt::UserRole).toString().toStdString()};
        if (tick->checkState() == Qt::Checked) {
            const auto before = std::ranges::find(step.uses, id, &Use::step);
            uses.push_back(before == step.uses.end() ? Use{id, false} : *before);
        }
    }
    step.uses = std::move(uses);
    step.plates = plates_->isChecked();
    step.afterServing = afterServing_->isChecked();
    const std::string ahead = onlyIfAhead_->currentData().toString().toStdString();
    step.onlyIfAhead = ahead.empty() ? std::nullopt : std::optional(StepId{ahead});
    return takeKeeping(step);
}

}  // namespace rangeline
