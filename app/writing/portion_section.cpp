#include "writing/portion_section.h"

#include <algorithm>

#include "model/packing.h"
#include "model/quantity_text.h"
#include "model/starting_kitchens.h"
#include "safety/foods.h"
#include "text/words.h"
#include "writing/field_keys.h"
#include "writing/field_values.h"

namespace rangeline {
namespace {

/// Such a ware as the step asks for, as wide as the first starting kitchen has it or as wide as it
/// must be; of no kind where the step has none that food lies in.
Ware usualWare(const Step& step) {
    if (step.wares.empty()) {
        return {};
    }
    const WareNeed& need = step.wares.front();
    const Kitchen kitchen = startingKitchens().front().make();
    const auto usual = std::ranges::find(kitchen.wares, need.kind, &Ware::kind);
    Ware ware = usual == kitchen.wares.end() ? Ware() : *usual;
    if (need.leastWidth > Length()) {
        ware.width = need.leastWidth;
    }
    return ware;
}

}  // namespace

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
    setFieldKey(*perCover_, "piecesPerCover");
    setFieldKey(*perBatch_, "piecesPerBatch");
    setFieldKey(*cooks_, "cooks");
    setFieldKey(*core_, "hazards.target");
    addLine(tr("Pieces per cover, at a time"), {perCover_, perBatch_});
    width_ = makeEdit(tr("Width of a piece"), tr("need not lie flat"));
    width_->setToolTip(tr("What does not lie in one layer is cooked in further loads"));
    volume_ = makeEdit(tr("Volume for each cover"), tr("goes in however much it is"));
    volume_->setToolTip(
        tr("What does not go into the pot, with room to boil, is cooked in further loads"));
    setFieldKey(*width_, "pieceWidth");
    setFieldKey(*volume_, "volumePerCover");
    form().addRow(tr("A piece is so wide"), width_);
    fits_ = new QLabel(this);
    fits_->setWordWrap(true);
    form().addRow(QString(), fits_);
    form().addRow(tr("Volume per cover"), volume_);
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
    ware_ = usualWare(step);
    width_->setText(step.pieceWidth ? fieldText(*step.pieceWidth, units()) : QString());
    volume_->setText(step.millilitresPerCover
                         ? QString::fromStdString(volumeText(*step.millilitresPerCover))
                         : QString());
    sayWhatFits(step);
    food_->setCurrentIndex(std::max(0, food_->findData(QString::fromStdString(step.hazards.food))));
    core_->setText(step.hazards.target ? fieldText(*step.hazards.target, units()) : QString());
}

void PortionSection::sayWhatFits(const Step& step) {
    fits_->setVisible(step.pieceWidth && !ware_.kind.empty());
    if (step.pieceWidth && !ware_.kind.empty()) {
        fits_->setText(tr("%n lie in one layer in “%1”, a finger’s width apart. In the kitchen of "
                          "the lesson its own pans count.",
                          "", piecesIn(ware_, *step.pieceWidth, Length::millimetres(13)))
                           .arg(QString::fromStdString(ware_.name)));
    }
}

/// The size of the food; why that cannot be, or nothing.
QString PortionSection::takeSize(Step& step) const {
    const QString width = width_->text().trimmed();
    const auto piece = lengthIn(width, units(), step.pieceWidth);
    if (!width.isEmpty() && (!piece || *piece == Length())) {
        return tr("How wide is a piece? Write a length, or nothing.");
    }
    const QString text = volume_->text().trimmed();
    const auto volume = volumeIn(text);
    if (!text.isEmpty() && volume.value_or(0) <= 0) {
        return tr(
            "How much is it for each cover? Write a volume such as 300 ml or 1 1/4 cups, or "
            "nothing.");
    }
    if (!width.isEmpty() && step.piecesPerCover == Rational(0)) {
        return tr("A piece is so wide: how many pieces does each cover get?");
    }
    if (step.wares.empty() && !(width.isEmpty() && text.isEmpty())) {
        return tr("In what does it lie? Give the step a pan, a pot or a sheet first.");
    }
    step.pieceWidth = width.isEmpty() ? std::nullopt : piece;
    step.millilitresPerCover = text.isEmpty() ? std::nullopt : volume;
    return {};
}

QString PortionSection::takeInto(Step& step) const {
    const QString pieces = perCover_->text().trimmed();
    const auto perCover = pieces.isEmpty() ? std::optional(Rational(0)) : rationalIn(pieces);
    if (!perCover) {
        return tr("How many pieces does each cover get? Write a number, or nothing.");
    }
    if (timePer_->currentIndex() == 1 && *perCover == Rational(0)) {
        return tr("The time is for each piece: how many pieces does each cover get?");
    }
    const QString degrees = core_->text().trimmed();
    const auto core = temperatureIn(degrees, units(), step.hazards.target);
    if (!degrees.isEmpty() && !core) {
        return tr("How hot in the thickest part? Write degrees, or nothing.");
    }
    step.piecesPerCover = *perCover;
    if (const QString why = takeSize(step); !why.isEmpty()) {
        return why;
    }
    step.piecesPerBatch = perBatch_->value() > 0 ? std::optional(perBatch_->value()) : std::nullopt;
    step.timePer = timePer_->currentIndex() == 1 ? TimePer::Piece : TimePer::Load;
    step.cooks = cooks_->value();
    step.hazards.food = food_->currentData().toString().toStdString();
    step.hazards.target = degrees.isEmpty() ? std::nullopt : core;
    return {};
}

}  // namespace rangeline
