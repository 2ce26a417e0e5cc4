#include "writing/allergen_hint.h"

#include <QHBoxLayout>
#include <algorithm>

#include "safety/allergen_words.h"
#include "safety/allergens.h"
#include "text/names.h"
#include "text/words.h"

namespace rangeline {

AllergenHint::AllergenHint(QWidget* parent) : QWidget(parent), says_(new QLabel(this)) {
    says_->setWordWrap(true);
    says_->setTextFormat(Qt::PlainText);
    auto* note = new QPushButton(tr("Note them"), this);
    note->setAccessibleName(tr("Note the suggested allergens"));
    auto* leave = new QPushButton(tr("Not these"), this);
    leave->setAccessibleName(tr("Leave the suggested allergens out"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(says_, 1);
    for (QPushButton* button : {note, leave}) {
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    connect(note, &QPushButton::clicked, this, &AllergenHint::accept);
    connect(leave, &QPushButton::clicked, this, &AllergenHint::decline);
    hide();
}

std::vector<std::string> AllergenHint::suggestedFor(const Ingredient& ingredient) const {
    std::vector<std::string> suggested;
    if (declined_.contains(ingredient.name)) {
        return suggested;
    }
    for (const std::string_view key : usuallyContains(ingredient.name)) {
        const bool noted = std::ranges::any_of(
            ingredient.allergens,
            [key](const std::string& contained) { return allergenCovers(key, contained); });
        if (!noted) {
            suggested.emplace_back(key);
        }
    }
    return suggested;
}

void AllergenHint::showFor(const std::vector<Ingredient>& ingredients) {
    ingredients_ = ingredients;
    QStringList found;
    for (const Ingredient& ingredient : ingredients_) {
        QStringList words;
        for (const std::string& key : suggestedFor(ingredient)) {
            words << allergenText(key);
        }
        if (!words.isEmpty()) {
            found << tr("%1 (%2)").arg(QString::fromStdString(ingredient.name), listText(words));
        }
    }
    says_->setText(tr("Suggested by the names, not known: %1. Go by the label and note what it "
                      "says under Contains.")
                       .arg(listText(found)));
    setVisible(!found.isEmpty());
}

void AllergenHint::accept() {
    std::vector<Ingredient> noted = ingredients_;
    for (Ingredient& ingredient : noted) {
        for (std::string& key : suggestedFor(ingredient)) {
            ingredient.allergens.push_back(std::move(key));
        }
    }
    Q_EMIT accepted(noted);
}

void AllergenHint::decline() {
    for (const Ingredient& ingredient : ingredients_) {
        if (!suggestedFor(ingredient).empty()) {
            declined_.insert(ingredient.name);
        }
    }
    showFor(ingredients_);
}

}  // namespace rangeline
