#pragma once
// Rows of a name and a list to choose from, which are kept while their contents change, so that the
// keyboard focus stays where it is.

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <vector>

#include "inspect/equipment_choices.h"

namespace rangeline {

class ChoiceForm : public QWidget {
    Q_OBJECT

  public:
    explicit ChoiceForm(QWidget* parent = nullptr);

    void setChoices(std::vector<EquipmentChoice> choices);

  Q_SIGNALS:
    /// An option that is not the current one.
    void chosen(const rangeline::EquipmentChoice& choice, int option);

  private:
    struct Row {
        QLabel* name = nullptr;
        QComboBox* list = nullptr;
    };
    void addRow();
    void fill(const Row& row, const EquipmentChoice& choice);

    QGridLayout* layout_;
    std::vector<Row> rows_;
    std::vector<EquipmentChoice> choices_;
};

}  // namespace rangeline
