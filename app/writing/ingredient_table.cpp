#include "writing/ingredient_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "model/quantity_text.h"
#include "recipe/ingredient_amount.h"
#include "recipe/ingredient_line.h"
#include "recipe/plain_words.h"
#include "safety/allergens.h"
#include "text/names.h"
#include "text/words.h"

namespace rangeline {
namespace {

enum Column : int { AmountColumn, Thing, Cut, Note, Contains, Kind, Usable, Columns };

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

QString allergensText(const std::vector<std::string>& keys) {
    QStringList words;
    for (const std::string& key : keys) {
        words << allergenText(key);
    }
    return words.join(QStringLiteral(", "));
}

/// Words that the table of allergens has, in either language of it, as keys; others stay as they
/// are.
std::vector<std::string> allergensIn(const QString& text) {
    std::vector<std::string> keys;
    for (const QString& word : text.split(u',', Qt::SkipEmptyParts)) {
        const QString wanted = word.trimmed();
        std::string key = wanted.toStdString();
        for (const Allergen& known : allergens()) {
            if (allergenText(known.key).compare(wanted, Qt::CaseInsensitive) == 0) {
                key = std::string(known.key);
            }
        }
        if (!key.empty()) {
            keys.push_back(std::move(key));
        }
    }
    return keys;
}

/// "1 1/2 tsp"; an empty text is no amount. False for anything else.
bool takeAmountFrom(const QString& text, Ingredient& ingredient) {
    const std::string plain = plainLine(text.toStdString());
    std::string_view rest = plain;
    const auto taken = takeAmount(rest);
    if (plain.empty()) {
        ingredient.amount.reset();
        return true;
    }
    if (!taken || !(trimmed(rest).empty() || taken->amount.unit.empty())) {
        return false;
    }
    ingredient.amount = taken->amount;
    if (!trimmed(rest).empty()) {
        ingredient.amount->unit = std::string(trimmed(rest));  // the cook's own unit
    }
    return true;
}

}  // namespace

IngredientTable::IngredientTable(QWidget* parent)
    : QWidget(parent),
      table_(new QTableWidget(0, Columns, this)),
      line_(new QLineEdit(this)),
      says_(new QLabel(this)) {
    table_->setAccessibleName(tr("Ingredients"));
    table_->setHorizontalHeaderLabels({tr("Amount"), tr("What"), tr("Cut"), tr("Note"),
                                       tr("Contains"), tr("Bought with"), tr("Usable %")});
    constexpr int narrow = 74;
    table_->horizontalHeader()->setDefaultSectionSize(narrow);
    table_->horizontalHeader()->setSectionResizeMode(Thing, QHeaderView::Stretch);
    table_->verticalHeader()->hide();
    table_->setTabKeyNavigation(true);
    table_->installEventFilter(this);
    line_->setAccessibleName(tr("The next ingredient"));
    line_->setPlaceholderText(
        tr("Type the next ingredient, such as “2 tbsp butter, diced”, and press Enter"));
    says_->setWordWrap(true);
    says_->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(table_, 1);
    column->addWidget(line_);
    column->addWidget(says_);
    connect(line_, &QLineEdit::returnPressed, this, [this] { addLines(line_->text()); });
    connect(table_, &QTableWidget::cellChanged, this, &IngredientTable::cellChanged);
}

void IngredientTable::showComponent(const Component& component) {
    if (ingredients_ != component.ingredients || table_->rowCount() == 0) {
        ingredients_ = component.ingredients;
        fill();
    }
}

void IngredientTable::fill() {
    filling_ = true;
    table_->setRowCount(static_cast<int>(ingredients_.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const Ingredient& it = ingredients_[static_cast<std::size_t>(row)];
        const QStringList cells{it.amount ? q(toText(*it.amount)) : QString(),
                                q(it.name),
                                q(it.cut),
                                q(it.note),
                                allergensText(it.allergens),
                                q(it.kind),
                                QString::number(it.usablePercent)};
        for (int column = 0; column < Columns; ++column) {
            table_->setItem(row, column, new QTableWidgetItem(cells[column]));
        }
    }
    filling_ = false;
}

void IngredientTable::addLines(const QString& text) {
    QStringList unread;
    bool any = false;
    for (const QString& line : text.split(u'\n', Qt::SkipEmptyParts)) {
        IngredientLine read = readIngredientLine(line.toStdString());
        if (read.ingredient.name.empty()) {
            continue;
        }
        for (const std::string& piece : read.unread) {
            unread << QStringLiteral("“%1”").arg(q(piece));
        }
        ingredients_.push_back(std::move(read.ingredient));
        any = true;
    }
    says_->setText(tr("Not understood, look at it in the table: %1.").arg(listText(unread)));
    says_->setVisible(!unread.isEmpty());
    line_->clear();
    if (any) {
        fill();
        table_->scrollToBottom();
        Q_EMIT edited(ingredients_);
    }
}

void IngredientTable::cellChanged(int row, int column) {
    if (filling_) {
        return;
    }
    Ingredient& it = ingredients_[static_cast<std::size_t>(row)];
    const QString text = table_->item(row, column)->text().trimmed();
    const std::string words = text.toStdString();
    bool ok = true;
    switch (column) {
        case AmountColumn:
            ok = takeAmountFrom(text, it);
            break;
        case Thing:
            it.name = words;
            break;
        case Cut:
            it.cut = words;
            break;
        case Note:
            it.note = words;
            break;
        case Contains:
            it.allergens = allergensIn(text);
            break;
        case Kind:
            it.kind = words;
            break;
        default:
            it.usablePercent = std::clamp(text.toInt(&ok), 1, 100);
    }
    says_->setText(tr("“%1” was not understood there; what stood there stays.").arg(text));
    says_->setVisible(!ok);
    fill();
    if (ok) {
        Q_EMIT edited(ingredients_);
    }
}

void IngredientTable::removeChosen() {
    const int row = table_->currentRow();
    if (row >= 0) {
        ingredients_.erase(ingredients_.begin() + row);
        fill();
        Q_EMIT edited(ingredients_);
    }
}

bool IngredientTable::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        removeChosen();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace rangeline
