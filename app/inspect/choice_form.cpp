#include "inspect/choice_form.h"

#include <QSignalBlocker>

#include "analysis/at.h"

namespace rangeline {

ChoiceForm::ChoiceForm(QWidget* parent) : QWidget(parent), layout_(new QGridLayout(this)) {
    layout_->setContentsMargins(0, 0, 0, 0);
    layout_->setColumnStretch(1, 1);
}

void ChoiceForm::addRow() {
    const int number = static_cast<int>(rows_.size());
    const Row row{new QLabel(this), new QComboBox(this)};
    constexpr int fewestLetters = 10;
    row.list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    row.list->setMinimumContentsLength(fewestLetters);
    row.name->setBuddy(row.list);
    layout_->addWidget(row.name, number, 0);
    layout_->addWidget(row.list, number, 1);
    connect(row.list, &QComboBox::activated, this, [this, number](int option) {
        const EquipmentChoice choice = at(choices_, number);
        if (option >= 0 && option < std::ssize(choice.options) && option != choice.current) {
            Q_EMIT chosen(choice, option);
        }
    });
    rows_.push_back(row);
}

void ChoiceForm::fill(const Row& row, const EquipmentChoice& choice) {
    const QSignalBlocker quiet(row.list);
    row.name->setText(choice.need);
    row.list->setAccessibleName(choice.need);
    row.list->clear();
    for (const EquipmentOption& option : choice.options) {
        row.list->addItem(option.name);
    }
    row.list->setPlaceholderText(tr("choose"));
    row.list->setCurrentIndex(choice.current);
    row.list->setToolTip(row.list->currentText());
}

void ChoiceForm::setChoices(std::vector<EquipmentChoice> choices) {
    choices_ = std::move(choices);
    while (rows_.size() < choices_.size()) {
        addRow();
    }
    for (std::size_t number = 0; number < rows_.size(); ++number) {
        const bool used = number < choices_.size();
        if (used) {
            fill(rows_[number], choices_[number]);
        }
        rows_[number].name->setVisible(used);
        rows_[number].list->setVisible(used);
    }
}

}  // namespace rangeline
