#include "writing/step_form.h"

#include <QScrollBar>
#include <QVBoxLayout>

#include "writing/dish_changes.h"
#include "writing/flow_section.h"
#include "writing/heat_section.h"
#include "writing/learned_section.h"
#include "writing/portion_section.h"
#include "writing/time_section.h"

namespace rangeline {

StepForm::StepForm(Units units, QWidget* parent) : QScrollArea(parent) {
    auto* inside = new QWidget(this);
    auto* column = new QVBoxLayout(inside);
    time_ = new TimeSection(units, inside);
    learned_ = new LearnedSection(units, inside);
    sections_ = {time_, learned_, new HeatSection(units, inside), new FlowSection(units, inside),
                 new PortionSection(units, inside)};
    for (StepSection* section : sections_) {
        column->addWidget(section);
        connect(section, &StepSection::edited, this, &StepForm::take);
    }
    column->addStretch(1);
    setWidgetResizable(true);
    setWidget(inside);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("The chosen step"));
    setFocusPolicy(Qt::NoFocus);
}

QSize StepForm::minimumSizeHint() const {
    const int wide = widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width();
    return {wide + 2 * frameWidth(), QScrollArea::minimumSizeHint().height()};
}

void StepForm::setTerms(const OwnTerms& terms) {
    time_->setTerms(terms);
}

void StepForm::setLoggings(const StepLoggings& loggings) {
    learned_->setLoggings(loggings);
}

void StepForm::showStep(const Dish& dish, const std::optional<StepId>& id) {
    const Step* step = id ? findStep(dish, *id) : nullptr;
    widget()->setEnabled(step != nullptr);
    if (step == nullptr || step->id != step_.id) {
        refused_.clear();
    }
    step_ = step == nullptr ? Step() : *step;
    filling_ = true;
    for (StepSection* section : sections_) {
        if (!refused_.contains(section)) {
            section->showStep(dish, step_);
        }
    }
    filling_ = false;
}

void StepForm::forgetRefused() {
    refused_.clear();
}

void StepForm::take() {
    if (filling_ || !widget()->isEnabled()) {
        return;
    }
    Step taken = step_;
    QString firstReason;
    refused_.clear();
    for (const StepSection* section : sections_) {
        Step next = taken;
        if (const QString why = section->takeInto(next); why.isEmpty()) {
            taken = std::move(next);
        } else {
            firstReason = refused_.empty() ? why : firstReason;
            refused_.insert(section);
        }
    }
    if (!refused_.contains(time_)) {
        time_->takeTechnique(taken);
    }
    if (!(taken == step_)) {
        step_ = taken;
        Q_EMIT edited(taken);
    }
    Q_EMIT refused(firstReason);
}

}  // namespace rangeline
