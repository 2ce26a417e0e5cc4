#include "writing/portion_section.h"

#include <algorithm>

#include "model/quantity_text.h"
#include "safety/foods.h"
#include "text/words.h"
#include "writing/field_values.h"

namespace rangeline {

PortionSection::PortionSection(Units units, QWidget* parent)
    : StepSection(tr("How much, and what to mind"), units, parent) {
    perCover_ = makeEdit(tr("Pieces for each cover"), tr("not counted in pieces"));
    perBatch_ = new QSpinBox(this);
    perBatch_->setAccessibleName(tr("Pieces at a time"));
    perBatch_->setRange(0, 1000);
    perBatch_->setSpecialValueText(tr("all at once"));
    timePer_ = new QComboBox(this);
    timePer_->setAccessibleName(tr("The time is for"));
    timePer_->addItems({tr("each load"), tr("each piece")});
    cooks_ = new QSpinBox(this);
    cooks_->setAccessibleName(tr("Cooks at once"));
    cooks_->setRange(1, 10);
    food_ = new QComboBox(this);
    food_->setAccessibleName(tr("Food"));
    food_->addItem(tr("nothing to watch over"), QString());
    for (const Food& food : foods()) {
        food_->addItem(foodText(food.key), QString::fromStdString(std::string(food.key)));
    }
    core_ = makeEdit(tr("Cooked to, in the thickest part"), tr("not measured"));
    connect(perBatch_, &QSpinBox::editingFinished, this, &StepSection::edited);
    connect(cooks_, &QSpinBox::editingFinished, this, &StepSection::edited);
    connect(timePer_, &QComboBox::activated, this, &StepSection::edited);
    connect(food_, &QComboBox::activated, this, &StepSection::edited);
    addLine(tr("Pieces per cover, at a time"), {perCover_, perBatch_});
    form().addRow(tr("The time is for"), timePer_);
    form().addRow(tr("Cooks at once"), cooks_);
    form().addRow(tr("Food"), food_);
    form().addRow(tr("Cooked to"), core_);
}

void PortionSection::showStep(const Dish&, const Step& step) {
    const bool counted = step.piecesPerCover > Rational(0);
    perCover_->setText(counted ? QString::fromStdString(toText(step.piecesPerCover)) : QString());
    perBatch_->setValue(step.piecesPerBatch.value_or(0));
    timePer_->setCurrentIndex(static_cast<int>(step.timePer));
    cooks_->setValue(step.cooks);
    food_->setCurrentIndex(std::max(0, food_->findData(QString::fromStdString(step.hazards.food))));
    core_->setText(step.hazards.target ? fieldText(*step.hazards.target, units()) : QString());
}

QString PortionSection::takeInto(Step& step) const {
    const QString pieces = perCover_->text().trimmed();
    const auto perCover = pieces.isEmpty() ? std::optional(Rational(0)) : rationalIn(pieces);
    if (!perCover) {
        return tr("How many pieces does each cover get? Write a number, or nothing.");
    }
    const QString degrees = core_->text().trimmed();
    const auto core = temperatureIn(degrees, units());
    if (!degrees.isEmpty() && !core) {
        return tr("How hot in the thickest part? Write degrees, or nothing.");
    }
    step.piecesPerCover = *perCover;
    step.piecesPerBatch = perBatch_->value() > 0 ? std::optional(perBatch_->value()) : std::nullopt;
    step.timePer = timePer_->currentIndex() == 1 ? TimePer::Piece : TimePer::Load;
    step.cooks = cooks_->value();
    step.hazards.food = food_->currentData().toString().toStdString();
    step.hazards.target = degrees.isEmpty() ? std::nullopt : core;
    return {};
}

}  // namespace rangeline
