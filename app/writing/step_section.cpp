#include "writing/step_section.h"

#include <QHBoxLayout>
#include <QLabel>

namespace rangeline {

StepSection::StepSection(const QString& title, Units units, QWidget* parent)
    : QGroupBox(title, parent), form_(new QFormLayout(this)), units_(units) {
    form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
}

QLineEdit* StepSection::makeEdit(const QString& name, const QString& hint) {
    auto* edit = new QLineEdit(this);
    edit->setAccessibleName(name);
    edit->setPlaceholderText(hint);
    connect(edit, &QLineEdit::editingFinished, this, &StepSection::edited);
    return edit;
}

void StepSection::addLine(const QString& label, std::initializer_list<QWidget*> widgets) {
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    for (QWidget* widget : widgets) {
        row->addWidget(widget, 1);
    }
    form_->addRow(label, line);
}

}  // namespace rangeline
