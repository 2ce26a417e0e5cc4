#include "library/recipe_preview.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "text/import_text.h"
#include "text/quantities.h"

namespace rangeline {
namespace {

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

/// "375 °F" or "medium-high"; empty where nothing is heated.
QString heatText(const Step& step, Units units, const QLocale& locale) {
    if (const auto* oven = std::get_if<OvenHeat>(&step.heat)) {
        return temperatureText(oven->lowest, units, locale);
    }
    const auto* burner = std::get_if<BurnerHeat>(&step.heat);
    return burner == nullptr ? QString() : q(burner->level);
}

}  // namespace

RecipePreview::RecipePreview(std::vector<ImportedRecipe> recipes, const QLocale& locale,
                             Units units, QWidget* parent)
    : QDialog(parent), recipes_(std::move(recipes)), locale_(locale), units_(units) {
    setWindowTitle(tr("A recipe for the book"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeChoice());
    column->addWidget(makeParts(), 3);
    auto* label = new QLabel(tr("To &look at: nothing was assumed in silence"), this);
    column->addWidget(label);
    remarks_ = new QListWidget(this);
    remarks_->setAccessibleName(tr("To look at"));
    remarks_->setWordWrap(true);
    label->setBuddy(remarks_);
    column->addWidget(remarks_, 1);
    auto* buttons = new QDialogButtonBox(this);
    QPushButton* take = buttons->addButton(tr("&Put into the book"), QDialogButtonBox::AcceptRole);
    take->setDefault(true);
    buttons->addButton(QDialogButtonBox::Cancel);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(choice_, &QComboBox::currentIndexChanged, this, &RecipePreview::showRecipe);
    constexpr QSize usual(820, 600);
    resize(usual);
    showRecipe(0);
}

const ImportedRecipe& RecipePreview::chosen() const {
    return recipes_[static_cast<std::size_t>(choice_->currentIndex())];
}

QWidget* RecipePreview::makeChoice() {
    choice_ = new QComboBox(this);
    choice_->setAccessibleName(tr("Recipe"));
    choice_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    for (const ImportedRecipe& recipe : recipes_) {
        choice_->addItem(
            tr("%1, for %2").arg(q(recipe.dish.name), QString::number(recipe.dish.writtenFor)));
    }
    return choice_;
}

QWidget* RecipePreview::makeParts() {
    parts_ = new QTreeWidget(this);
    parts_->setAccessibleName(tr("Ingredients and steps"));
    parts_->setHeaderLabels(
        {tr("What"), tr("How much, how long"), tr("Cut, heat"), tr("Note, in")});
    parts_->setAlternatingRowColors(true);
    parts_->header()->setStretchLastSection(true);
    constexpr int first = 380;
    parts_->setColumnWidth(0, first);
    return parts_;
}

void RecipePreview::showRecipe(int number) {
    const ImportedRecipe& recipe = recipes_[static_cast<std::size_t>(number)];
    parts_->clear();
    for (const Component& component : recipe.dish.components) {
        addIngredients(component);
        addSteps(component);
    }
    parts_->expandAll();
    parts_->resizeColumnToContents(1);
    parts_->resizeColumnToContents(2);
    remarks_->clear();
    for (const ImportRemark& remark : recipe.remarks) {
        remarks_->addItem(sentence(remark, units_, locale_));
    }
    if (recipe.remarks.empty()) {
        remarks_->addItem(tr("Everything was understood. Pans and heat are suggestions."));
    }
}

void RecipePreview::addIngredients(const Component& component) {
    if (component.ingredients.empty()) {
        return;
    }
    auto* group = new QTreeWidgetItem(parts_, {tr("Ingredients of “%1”").arg(q(component.name))});
    for (const Ingredient& each : component.ingredients) {
        new QTreeWidgetItem(
            group, {q(each.name), each.amount ? amountText(*each.amount, locale_) : QString(),
                    q(each.cut), q(each.note)});
    }
}

void RecipePreview::addSteps(const Component& component) {
    auto* group = new QTreeWidgetItem(parts_, {tr("Steps of “%1”").arg(q(component.name))});
    for (const Step& step : component.steps) {
        QString ware = step.wares.empty() ? QString() : q(step.wares.front().kind);
        ware.replace(u'-', u' ');
        auto* row =
            new QTreeWidgetItem(group, {q(step.name), durationText(step.time.likely, locale_),
                                        heatText(step, units_, locale_), ware});
        row->setToolTip(0, q(step.name));
    }
}

}  // namespace rangeline
