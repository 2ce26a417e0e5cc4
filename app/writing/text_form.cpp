#include "writing/text_form.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include "writing/field_keys.h"

namespace rangeline {

TextForm::TextForm(const std::vector<FieldLook>& fields, int pairs, QWidget* parent)
    : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    fields_.resize(fields.size());
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        const int row = static_cast<int>(i) / pairs;
        const int column = static_cast<int>(i) % pairs * 2;
        QWidget* field = makeField(i, fields[i]);
        fields_[i].widget = field;
        setFieldKey(*field, fields[i].key);
        field->setToolTip(fields[i].wanted);
        field->setAccessibleName(fields[i].title);
        if (fields[i].yesNo) {
            grid->addWidget(field, row, column, 1, 2);
        } else {
            auto* label = new QLabel(fields[i].title, this);
            label->setBuddy(field);
            grid->addWidget(label, row, column);
            grid->addWidget(field, row, column + 1);
        }
        grid->setColumnStretch(column + 1, 1);
    }
}

QWidget* TextForm::makeField(std::size_t number, const FieldLook& look) {
    if (look.yesNo) {
        auto* box = new QCheckBox(look.title, this);
        connect(box, &QCheckBox::clicked, this,
                [this, number](bool on) { typed(number, on ? yesText() : QString()); });
        return box;
    }
    auto* line = new QLineEdit(this);
    connect(line, &QLineEdit::editingFinished, this,
            [this, number, line] { typed(number, line->text()); });
    return line;
}

void TextForm::typed(std::size_t number, const QString& text) {
    Row& row = fields_[number];
    if (text != row.shown) {
        row.shown = text;
        row.marked = false;
        row.widget->setStyleSheet({});
        Q_EMIT written(static_cast<int>(number), text);
    }
}

void TextForm::setTexts(const QStringList& texts) {
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        Row& row = fields_[i];
        if (row.marked) {
            continue;
        }
        const QSignalBlocker still(row.widget);
        row.shown = texts.value(static_cast<qsizetype>(i));
        if (auto* box = qobject_cast<QCheckBox*>(row.widget)) {
            box->setChecked(!row.shown.isEmpty());
        } else if (auto* line = qobject_cast<QLineEdit*>(row.widget)) {
            if (line->text() != row.shown) {
                line->setText(row.shown);
            }
        }
    }
}

void TextForm::mark(int field) {
    Row& row = fields_[static_cast<std::size_t>(field)];
    row.marked = true;
    row.widget->setStyleSheet(QStringLiteral("font-style: italic; font-weight: bold;"));
}

void TextForm::forgetMarks() {
    for (Row& row : fields_) {
        row.marked = false;
        row.widget->setStyleSheet({});
    }
}

}  // namespace rangeline
