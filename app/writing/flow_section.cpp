#include "writing/flow_section.h"

#include <QSignalBlocker>
#include <algorithm>

#include "text/words.h"
#include "writing/dish_changes.h"
#include "writing/field_keys.h"
#include "writing/field_values.h"

namespace rangeline {
namespace {

constexpr Storage storages[] = {Storage::Room, Storage::Cold, Storage::HotOnBurner,
                                Storage::HotInOven};

}  // namespace

FlowSection::FlowSection(Units units, QWidget* parent)
    : StepSection(tr("Before and after"), units, parent) {
    uses_ = new QListWidget(this);
    uses_->setAccessibleName(tr("What goes into it"));
    constexpr int high = 96;
    uses_->setFixedHeight(high);
    connect(uses_, &QListWidget::itemChanged, this, &StepSection::edited);
    atRoom_ = makeEdit(tr("Keeps at room temperature"), tr("as long as needed"));
    cold_ = makeEdit(tr("Keeps cold"), tr("as long as needed"));
    hot_ = makeEdit(tr("Keeps hot"), tr("as long as needed"));
    storage_ = new QComboBox(this);
    storage_->setAccessibleName(tr("Waits"));
    for (const Storage storage : storages) {
        storage_->addItem(storageText(storage));
    }
    connect(storage_, &QComboBox::activated, this, &StepSection::edited);
    ahead_ = new QCheckBox(tr("can be done before the lesson, also the day before"), this);
    plates_ = new QCheckBox(tr("ends on the plate"), this);
    afterServing_ = new QCheckBox(tr("washing-up after serving"), this);
    setFieldKey(*uses_, "uses");
    setFieldKey(*atRoom_, "after.atRoom");
    setFieldKey(*cold_, "after.cold");
    setFieldKey(*hot_, "after.hot");
    setFieldKey(*storage_, "after");
    form().addRow(tr("What goes into it"), uses_);
    addLine(tr("Keeps: room, cold, hot"), {atRoom_, cold_, hot_});
    form().addRow(tr("Waits"), storage_);
    for (QCheckBox* tick : {ahead_, plates_, afterServing_}) {
        connect(tick, &QCheckBox::clicked, this, &StepSection::edited);
        form().addRow(QString(), tick);
    }
}

void FlowSection::fillUses(const Dish& dish, const Step& step) {
    const QSignalBlocker quiet(uses_);
    uses_->clear();
    for (const StepId& id : mayUse(dish, step.id)) {
        const Step& other = *findStep(dish, id);
        auto* tick = new QListWidgetItem(QString::fromStdString(other.name), uses_);
        tick->setData(Qt::UserRole, QString::fromStdString(id.text));
        const bool used = std::ranges::find(step.uses, id, &Use::step) != step.uses.end();
        tick->setCheckState(used ? Qt::Checked : Qt::Unchecked);
    }
}

void FlowSection::showStep(const Dish& dish, const Step& step) {
    fillUses(dish, step);
    atRoom_->setText(fieldText(step.after.atRoom));
    cold_->setText(fieldText(step.after.cold));
    hot_->setText(fieldText(step.after.hot));
    storage_->setCurrentIndex(static_cast<int>(step.after.storage));
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
    return takeKeeping(step);
}

}  // namespace rangeline
