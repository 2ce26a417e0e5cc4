#include "writing/ingredient_table.h"

#include <QVBoxLayout>

#include "recipe/ingredient_line.h"
#include "text/names.h"
#include "writing/editors.h"
#include "writing/field_keys.h"
#include "writing/ingredient_fields.h"

namespace rangeline {

IngredientTable::IngredientTable(Units units, QWidget* parent)
    : QWidget(parent),
      units_(units),
      allergens_(new AllergenHint(this)),
      line_(new QLineEdit(this)),
      says_(new QLabel(this)) {
    table_ = std::make_unique<TableOf<Ingredient>>(
        tr("Ingredients"), ingredientFields({}, units_, locale()), this,
        [](const std::vector<Ingredient>&) { return Ingredient{}; },
        [this](std::vector<Ingredient> ingredients) { take(std::move(ingredients)); });
    table_->table().setWideColumn(ingredientNameColumn);
    setFieldKey(table_->table(), "ingredients");
    line_->setAccessibleName(tr("The next ingredient"));
    line_->setPlaceholderText(
        tr("Type the next ingredient, such as “2 tbsp butter, diced”, and press Enter"));
    says_->setWordWrap(true);
    says_->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(table_->widget(), 1);
    column->addWidget(allergens_);
    column->addWidget(line_);
    column->addWidget(says_);
    connect(line_, &QLineEdit::returnPressed, this, &IngredientTable::finishTyping);
    connect(allergens_, &AllergenHint::accepted, this, &IngredientTable::take);
}

IngredientTable::~IngredientTable() = default;

void IngredientTable::setTerms(const OwnTerms& terms) {
    table_->setFields(ingredientFields(terms, units_, locale()));
}

bool IngredientTable::giveUpLine() {
    const bool typing = line_->hasFocus() && !line_->text().isEmpty();
    if (typing) {
        line_->setText({});
    }
    return typing;
}

void IngredientTable::finishTyping() {
    if (!line_->text().trimmed().isEmpty()) {
        addLines(line_->text());
    }
}

void IngredientTable::showComponent(const Component& component) {
    if (component.id != component_) {
        table_->forgetMarks();  // what was not understood belongs to the other component
        says_->hide();
    }
    component_ = component.id;
    ingredients_ = component.ingredients;
    table_->show(ingredients_);
    allergens_->showFor(ingredients_);
}

void IngredientTable::take(std::vector<Ingredient> ingredients) {
    ingredients_ = std::move(ingredients);
    table_->show(ingredients_);
    allergens_->showFor(ingredients_);
    Q_EMIT edited(ingredients_);
}

void IngredientTable::addLines(const QString& text) {
    QStringList unread;
    std::vector<Ingredient> all = ingredients_;
    for (const QString& line : text.split(u'\n', Qt::SkipEmptyParts)) {
        IngredientLine read = readIngredientLine(line.toStdString());
        if (read.ingredient.name.empty()) {
            continue;
        }
        for (const std::string& piece : read.unread) {
            unread << QStringLiteral("“%1”").arg(QString::fromStdString(piece));
        }
        all.push_back(std::move(read.ingredient));
    }
    line_->setText({});  // unlike clear() nothing that could be taken back
    if (all.size() > ingredients_.size()) {
        take(std::move(all));
        table_->table().scrollToBottom();
    }
    says_->setText(tr("Not understood, look at it in the table: %1.").arg(listText(unread)));
    says_->setVisible(!unread.isEmpty());
}

}  // namespace rangeline
