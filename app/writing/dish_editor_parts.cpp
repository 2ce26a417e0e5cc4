// What the editor of dishes is made of, and how its parts speak to it.

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include "writing/dish_changes.h"
#include "writing/dish_editor.h"
#include "writing/field_keys.h"
#include "writing/field_values.h"

namespace rangeline {

QWidget* DishEditor::makeHead() {
    auto* head = new QWidget(this);
    auto* form = new QFormLayout(head);
    form->setContentsMargins(0, 0, 0, 0);
    name_ = new QLineEdit(QString::fromStdString(dish_.name), head);
    name_->setAccessibleName(tr("Name of the dish"));
    covers_ = new QSpinBox(head);
    covers_->setAccessibleName(tr("Written for so many covers"));
    setFieldKey(*covers_, "writtenFor");
    covers_->setRange(1, 1000);
    covers_->setKeyboardTracking(false);
    covers_->setValue(dish_.writtenFor);
    perCover_ = new QLineEdit(QString::fromStdString(dish_.perCover), head);
    perCover_->setAccessibleName(tr("Each cover gets"));
    perCover_->setPlaceholderText(tr("such as: one thigh, two spoons of glaze"));
    form->addRow(tr("&Name"), name_);
    auto* line = new QHBoxLayout;
    line->addWidget(covers_, 1);
    platesHold_ = new QLineEdit(fieldText(dish_.platesHold), head);
    platesHold_->setAccessibleName(tr("Plates may wait"));
    setFieldKey(*platesHold_, "platesHold");
    auto* wait = new QLabel(tr("P&lates may wait"), head);
    wait->setBuddy(platesHold_);
    line->addWidget(wait);
    line->addWidget(platesHold_, 1);
    auto* coversLabel = new QLabel(tr("&Covers"), head);
    coversLabel->setBuddy(covers_);
    form->addRow(coversLabel, line);
    form->addRow(tr("&Each cover gets"), perCover_);
    connect(name_, &QLineEdit::editingFinished, this, [this] {
        change([this](Dish& dish) { renameDish(dish, name_->text().trimmed().toStdString()); });
    });
    connect(covers_, &QSpinBox::valueChanged, this,
            [this](int covers) { change([covers](Dish& dish) { dish.writtenFor = covers; }); });
    connect(platesHold_, &QLineEdit::editingFinished, this, &DishEditor::takePlatesHold);
    connect(perCover_, &QLineEdit::editingFinished, this, [this] {
        change([this](Dish& dish) { dish.perCover = perCover_->text().trimmed().toStdString(); });
    });
    return head;
}

void DishEditor::takePlatesHold() {
    const auto hold = durationIn(platesHold_->text());
    refused_ = hold ? QString() : tr("How long may plates wait? Write a time such as 5 min.");
    if (hold && *hold != dish_.platesHold) {
        change([&hold](Dish& dish) { dish.platesHold = *hold; });
    } else {
        judge();
    }
}

QWidget* DishEditor::makeMiddle() {
    auto* left = new QSplitter(Qt::Vertical, this);
    outline_ = new DishOutline(left);
    ingredients_ = new IngredientTable(units_, left);
    left->addWidget(outline_);
    left->addWidget(ingredients_);
    left->setStretchFactor(0, 3);
    left->setStretchFactor(1, 2);
    form_ = new StepPages(units_, this);
    auto* middle = new QSplitter(this);
    middle->addWidget(left);
    middle->addWidget(form_);
    middle->setStretchFactor(0, 3);
    middle->setStretchFactor(1, 2);
    middle->setChildrenCollapsible(false);
    left->setChildrenCollapsible(false);
    return middle;
}

QWidget* DishEditor::makeButtons() {
    auto* buttons = new QDialogButtonBox(this);
    undo_ = buttons->addButton(tr("&Take back"), QDialogButtonBox::ActionRole);
    redo_ = buttons->addButton(tr("&Bring again"), QDialogButtonBox::ActionRole);
    auto* terms = buttons->addButton(tr("Techni&ques and cuts ..."), QDialogButtonBox::ActionRole);
    connect(terms, &QPushButton::clicked, this, &DishEditor::askForTerms);
    keep_ = buttons->addButton(tr("&Keep in the book"), QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &DishEditor::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &DishEditor::reject);
    connect(undo_, &QPushButton::clicked, this, &DishEditor::undo);
    connect(redo_, &QPushButton::clicked, this, &DishEditor::redo);
    connect(new QShortcut(QKeySequence::Undo, this), &QShortcut::activated, this,
            &DishEditor::undo);
    connect(new QShortcut(QKeySequence::Redo, this), &QShortcut::activated, this,
            &DishEditor::redo);
    return buttons;
}

void DishEditor::connectOutline() {
    connect(outline_, &DishOutline::stepTyped, this, &DishEditor::addTyped);
    connect(outline_, &DishOutline::renamed, this, &DishEditor::rename);
    connect(outline_, &DishOutline::removeWanted, this, &DishEditor::remove);
    connect(outline_, &DishOutline::stepChosen, this,
            [this](const StepId& step) { choose(step, placeOf(dish_, step)->component); });
    connect(outline_, &DishOutline::componentChosen, this,
            [this](int component) { choose({}, static_cast<std::size_t>(component)); });
    connect(outline_, &DishOutline::moveWanted, this, [this](int by) {
        if (step_) {
            change([this, by](Dish& dish) { moveStep(dish, *step_, by); });
        }
    });
    connect(outline_, &DishOutline::dropWanted, this, [this](int component, int step) {
        const StepPlace to{static_cast<std::size_t>(component), static_cast<std::size_t>(step)};
        if (step_) {
            change([this, to](Dish& dish) { moveStepTo(dish, *step_, to); });
        }
    });
    connect(outline_, &DishOutline::componentWanted, this, [this] {
        change([this](Dish& dish) {
            component_ = addComponent(dish, component_ + 1, tr("New component").toStdString());
            step_.reset();
        });
        outline_->editName();
    });
    connect(form_, &StepPages::edited, this, [this](const Step& step) {
        change([&step](Dish& dish) {
            const auto place = placeOf(dish, step.id);
            dish.components[place->component].steps[place->step] = step;
        });
    });
    connect(form_, &StepPages::dishEdited, this,
            [this](const Dish& edited) { change([&edited](Dish& dish) { dish = edited; }); });
    connect(form_, &StepPages::stepChosen, this,
            [this](const StepId& step) { choose(step, placeOf(dish_, step)->component); });
    connect(form_, &StepPages::refused, this, [this](const QString& why) {
        refused_ = why;
        judge();
    });
    connect(ingredients_, &IngredientTable::edited, this,
            [this](const std::vector<Ingredient>& all) {
                change([&](Dish& dish) { dish.components[component_].ingredients = all; });
            });
}

}  // namespace rangeline
