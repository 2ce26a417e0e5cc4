#include "writing/dish_editor.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>
#include <utility>

#include "writing/dish_changes.h"
#include "writing/field_keys.h"
#include "writing/leaving.h"

namespace rangeline {

DishEditor::DishEditor(Dish dish, Units units, QWidget* parent)
    : QDialog(parent), dish_(std::move(dish)), original_(dish_) {
    setWindowTitle(tr("Write a dish"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeHead());
    column->addWidget(makeMiddle(units), 1);
    problems_ = new ProblemList(this);
    column->addWidget(problems_);
    connect(problems_, &ProblemList::wanted, this, &DishEditor::goTo);
    column->addWidget(makeButtons());
    connectOutline();
    constexpr QSize usual(1100, 720);
    resize(usual);
    choose({}, 0);
    outline_->nextStep().setFocus();
}

/// A field that loses the focus by being destroyed has nothing to say any more.
DishEditor::~DishEditor() {
    for (QWidget* field : findChildren<QWidget*>()) {
        field->blockSignals(true);
    }
}

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
    covers_->setValue(dish_.writtenFor);
    perCover_ = new QLineEdit(QString::fromStdString(dish_.perCover), head);
    perCover_->setAccessibleName(tr("Each cover gets"));
    perCover_->setPlaceholderText(tr("such as: one thigh, two spoons of glaze"));
    form->addRow(tr("&Name"), name_);
    form->addRow(tr("&Covers"), covers_);
    form->addRow(tr("&Each cover gets"), perCover_);
    connect(name_, &QLineEdit::editingFinished, this, [this] {
        change([this](Dish& dish) { dish.name = name_->text().trimmed().toStdString(); });
    });
    connect(covers_, &QSpinBox::valueChanged, this,
            [this](int covers) { change([covers](Dish& dish) { dish.writtenFor = covers; }); });
    connect(perCover_, &QLineEdit::editingFinished, this, [this] {
        change([this](Dish& dish) { dish.perCover = perCover_->text().trimmed().toStdString(); });
    });
    return head;
}

QWidget* DishEditor::makeMiddle(Units units) {
    auto* left = new QSplitter(Qt::Vertical, this);
    outline_ = new DishOutline(left);
    ingredients_ = new IngredientTable(left);
    left->addWidget(outline_);
    left->addWidget(ingredients_);
    left->setStretchFactor(0, 3);
    left->setStretchFactor(1, 2);
    form_ = new StepPages(units, this);
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
    keep_ = buttons->addButton(tr("&Keep in the book"), QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
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

void DishEditor::change(const std::function<void(Dish&)>& how) {
    Dish changed = dish_;
    how(changed);
    if (!(changed == dish_)) {
        history_.changed(std::exchange(dish_, std::move(changed)));
        Q_EMIT dishChanged();
    }
    showAll();
}

void DishEditor::goOnWith(Dish written) {
    history_.changed(std::exchange(dish_, std::move(written)));
    showTurned();
}

void DishEditor::undo() {
    history_.undo(dish_);
    Q_EMIT dishChanged();
    showTurned();
}

void DishEditor::redo() {
    history_.redo(dish_);
    Q_EMIT dishChanged();
    showTurned();
}

/// The dish is another than the one the fields were filled for.
void DishEditor::showTurned() {
    if (step_ && !placeOf(dish_, *step_)) {
        step_.reset();
    }
    component_ = std::min(component_, dish_.components.size() - 1);
    name_->setText(QString::fromStdString(dish_.name));
    perCover_->setText(QString::fromStdString(dish_.perCover));
    const QSignalBlocker quiet(covers_);
    covers_->setValue(dish_.writtenFor);
    showAll();
}

void DishEditor::choose(std::optional<StepId> step, std::size_t component) {
    step_ = std::move(step);
    component_ = component;
    refused_.clear();
    showAll();
}

void DishEditor::showAll() {
    if (const auto place = step_ ? placeOf(dish_, *step_) : std::nullopt) {
        component_ = place->component;
    }
    outline_->showDish(dish_, step_, component_);
    form_->showStep(dish_, step_);
    ingredients_->showComponent(dish_.components[component_]);
    undo_->setEnabled(history_.canUndo());
    redo_->setEnabled(history_.canRedo());
    judge();
}

void DishEditor::judge() {
    std::vector<Problem> problems = problemsOf(dish_, locale());
    std::map<std::string, QString> ofStep;
    for (const Problem& problem : problems) {
        if (step_ && problem.step == step_ && !problem.field.empty()) {
            ofStep.emplace(problem.field, problem.text);
        }
    }
    outline_->mark(problems);
    markFields(*form_, ofStep);
    if (!refused_.isEmpty()) {
        problems.insert(problems.begin(), {refused_, component_, step_});
    }
    keep_->setEnabled(mayBeKept(problems));
    problems_->show(std::move(problems));
}

void DishEditor::goTo(const Problem& problem) {
    if (problem.step && placeOf(dish_, *problem.step)) {
        if (problem.step != step_) {
            choose(problem.step, placeOf(dish_, *problem.step)->component);
        }
        form_->goTo(problem.field);
    } else if (problem.component && *problem.component < dish_.components.size()) {
        choose({}, *problem.component);
    } else {
        QWidget* field = problem.field == "name" ? name_ : fieldOf(*this, problem.field);
        (field == nullptr ? &outline_->nextStep() : field)->setFocus();
    }
}

void DishEditor::addTyped(const QString& name) {
    change([&](Dish& dish) {
        const auto place = step_ ? placeOf(dish, *step_) : std::nullopt;
        const std::size_t at = place ? place->step + 1 : dish.components[component_].steps.size();
        step_ = addStep(dish, {component_, at}, name.toStdString());
        suggest(dish.components[component_].steps[at]);
    });
}

void DishEditor::rename(const QString& name) {
    change([&](Dish& dish) {
        const auto place = step_ ? placeOf(dish, *step_) : std::nullopt;
        std::string& named = place ? dish.components[place->component].steps[place->step].name
                                   : dish.components[component_].name;
        named = name.isEmpty() ? named : name.toStdString();
    });
}

void DishEditor::remove() {
    change([this](Dish& dish) {
        if (step_) {
            removeStep(dish, *step_);
            step_.reset();
        } else if (dish.components.size() > 1) {
            removeComponent(dish, component_);
            component_ = std::min(component_, dish.components.size() - 1);
        }
    });
}

void DishEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) {
        QDialog::keyPressEvent(event);
    }
}

void DishEditor::reject() {
    if (dish_ == original_) {
        QDialog::reject();
        return;
    }
    const Leaving leaving = askHowToLeave(this, tr("Leave the dish?"));
    leftForLater_ = leaving == Leaving::ForLater;
    if (leaving != Leaving::GoOn) {
        QDialog::reject();
    }
}

}  // namespace rangeline
