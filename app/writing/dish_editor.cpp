#include "writing/dish_editor.h"

#include <QKeyEvent>
#include <QScreen>
#include <QVBoxLayout>
#include <utility>

#include "recipe/instruction.h"
#include "writing/dish_changes.h"
#include "writing/field_keys.h"
#include "writing/field_values.h"
#include "writing/leaving.h"
#include "writing/terms_dialog.h"
#include "writing/text_table.h"
#include "writing/ties.h"
#include "writing/undo_keys.h"

namespace rangeline {

DishEditor::DishEditor(Dish dish, Units units, QWidget* parent)
    : QDialog(parent), units_(units), dish_(std::move(dish)), original_(dish_) {
    setWindowTitle(tr("Write a dish"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeHead());
    column->addWidget(makeMiddle(), 1);
    problems_ = new ProblemList(this);
    column->addWidget(problems_);
    connect(problems_, &ProblemList::wanted, this, &DishEditor::goTo);
    column->addWidget(makeButtons());
    connectOutline();
    new UndoKeys(*this);
    constexpr QSize usual(1240, 780);
    constexpr QSize frame(40, 60);
    resize(usual.boundedTo(screen()->availableGeometry().size() - frame));
    choose({}, 0);
    outline_->nextStep().setFocus();
}

/// A field that loses the focus by being destroyed has nothing to say any more.
DishEditor::~DishEditor() {
    for (QWidget* field : findChildren<QWidget*>()) {
        field->blockSignals(true);
    }
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

void DishEditor::setLoggings(const std::map<StepId, std::vector<Logging>>& loggings) {
    form_->setLoggings(loggings);
}

void DishEditor::setTerms(const OwnTerms& terms) {
    terms_ = terms;
    form_->setTerms(terms_);
    ingredients_->setTerms(terms_);
    showAll();
}

void DishEditor::askForTerms() {
    TermsDialog dialog(terms_, units_, this);
    if (dialog.exec() == QDialog::Accepted) {
        setTerms(dialog.terms());
        Q_EMIT termsChanged(terms_);
    }
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
    forgetRefused();
    name_->setText(QString::fromStdString(dish_.name));
    perCover_->setText(QString::fromStdString(dish_.perCover));
    platesHold_->setText(fieldText(dish_.platesHold));
    const QSignalBlocker quiet(covers_);
    covers_->setValue(dish_.writtenFor);
    showAll();
}

void DishEditor::choose(std::optional<StepId> step, std::size_t component) {
    deliverTables();
    step_ = std::move(step);
    component_ = component;
    forgetRefused();
    showAll();
}

void DishEditor::forgetRefused() {
    refused_.clear();
    form_->forgetRefused();
}

void DishEditor::showAll() {
    if (const auto place = step_ ? placeOf(dish_, *step_) : std::nullopt) {
        component_ = place->component;
    }
    outline_->showDish(dish_, step_, component_);
    form_->showStep(dish_, step_, component_);
    ingredients_->showComponent(dish_.components[component_]);
    undo_->setEnabled(history_.canUndo());
    redo_->setEnabled(history_.canRedo());
    judge();
}

void DishEditor::judge() {
    std::vector<Problem> problems = problemsOf(dish_, terms_, locale());
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
        form_->goTo(problem.field);
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
        std::vector<Step>& steps = dish.components[component_].steps;
        suggest(steps[at], terms_, units_);
        if (steps[at].plates) {
            useAllLoose(dish, *step_);
        } else if (at > 0 && goesOnInVesselOf(steps[at - 1], name.toStdString())) {
            steps[at].wares.clear();
            dish = withSamePan(dish, *step_, steps[at - 1].id);
        }
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
    if (event->key() == Qt::Key_Escape && (outline_->giveUpLine() || ingredients_->giveUpLine())) {
        return;
    }
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) {
        QDialog::keyPressEvent(event);
    }
}

/// What was typed in a table belongs to what is shown still.
void DishEditor::deliverTables() {
    for (TextTable* table : findChildren<TextTable*>()) {
        table->deliver();
    }
}

/// What still stands in a field is taken, as if the cook had left it.
void DishEditor::finishTyping() {
    if (QWidget* field = focusWidget(); field != nullptr && field != this) {
        field->clearFocus();
    }
    deliverTables();
    outline_->finishTyping();
    ingredients_->finishTyping();
}

void DishEditor::accept() {
    finishTyping();
    if (keep_->isEnabled()) {
        QDialog::accept();
    }
}

void DishEditor::reject() {
    QWidget* field = focusWidget();
    finishTyping();
    if (dish_ == original_ && refused_.isEmpty()) {
        QDialog::reject();
        return;
    }
    const Leaving leaving = askHowToLeave(this, tr("Leave the dish?"));
    leftForLater_ = leaving == Leaving::ForLater;
    if (leaving != Leaving::GoOn) {
        QDialog::reject();
    } else if (field != nullptr) {
        field->setFocus();
    }
}

}  // namespace rangeline
