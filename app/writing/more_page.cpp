#include "writing/more_page.h"

#include <QGroupBox>
#include <QVBoxLayout>

#include "writing/dish_changes.h"
#include "writing/editors.h"
#include "writing/field_keys.h"
#include "writing/more_fields.h"

namespace rangeline {
namespace {

QWidget* titled(const QString& title, QWidget* part) {
    auto* box = new QGroupBox(title);
    auto* column = new QVBoxLayout(box);
    column->addWidget(part);
    return box;
}

/// The step before it in its component; null if there is none.
const Step* stepAbove(const Dish& dish, const StepId& id) {
    const auto place = placeOf(dish, id);
    return place && place->step > 0 ? &dish.components[place->component].steps[place->step - 1]
                                    : nullptr;
}

}  // namespace

MorePage::MorePage(Units units, QWidget* parent) : QScrollArea(parent), units_(units) {
    auto* inside = new QWidget(this);
    auto* column = new QVBoxLayout(inside);
    makeTables(inside);
    samePan_ = new QPushButton(tr("&Goes on in the same pans as the step above"), inside);
    samePan_->setAutoDefault(false);
    connect(samePan_, &QPushButton::clicked, this, &MorePage::carryOn);
    column->addWidget(titled(tr("Pans, boards and tools"), wares_->widget()));
    column->addWidget(samePan_, 0, Qt::AlignLeft);
    column->addWidget(titled(tr("Counter, shelf, sink and the like"), pools_->widget()));
    column->addWidget(titled(tr("What it needs, one after the other"), attention_->widget()));
    column->addWidget(titled(tr("What can hurt, and who does it"), form_->widget()));
    column->addStretch(1);
    setWidgetResizable(true);
    setWidget(inside);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
}

MorePage::~MorePage() = default;

template <class T>
std::function<void(std::vector<T>)> MorePage::into(std::vector<T> Step::*list) {
    return [this, list](std::vector<T> things) {
        Step step = step_;
        step.*list = std::move(things);
        Q_EMIT edited(step);
    };
}

void MorePage::makeTables(QWidget* inside) {
    const int high = 7 * fontMetrics().lineSpacing();
    wares_ = std::make_unique<TableOf<WareNeed>>(
        tr("Pans, boards and tools"), wareFields({}, units_), inside,
        [](const std::vector<WareNeed>&) {
            WareNeed need;
            need.kind = "bowl";
            return need;
        },
        into(&Step::wares));
    pools_ = std::make_unique<TableOf<PoolNeed>>(
        tr("Counter, shelf, sink and the like"), poolFields(), inside,
        [](const std::vector<PoolNeed>&) {
            return PoolNeed{PoolId{"counter"}, 1};
        },
        into(&Step::pools));
    attention_ = std::make_unique<TableOf<Segment>>(
        tr("What it needs, one after the other"), attentionFields(), inside,
        [](const std::vector<Segment>& others) {
            return Segment{Attention::Hands, {}, others.empty()};
        },
        into(&Step::segments));
    form_ = std::make_unique<FormOf<Step>>(moreFields(), 1, inside,
                                           [this](const Step& step) { Q_EMIT edited(step); });
    setFieldKey(wares_->table(), "wares");
    setFieldKey(pools_->table(), "pools");
    setFieldKey(attention_->table(), "attention");
    wares_->table().setFixedHeight(high);
    const int lower = 5 * fontMetrics().lineSpacing();
    pools_->table().setFixedHeight(lower);
    attention_->table().setFixedHeight(high);
}

void MorePage::showStep(const Dish& dish, const std::optional<StepId>& id) {
    const Step* step = id ? findStep(dish, *id) : nullptr;
    widget()->setEnabled(step != nullptr);
    if (step == nullptr || step->id != step_.id) {
        // What was not understood belongs to the other step.
        wares_->forgetMarks();
        pools_->forgetMarks();
        attention_->forgetMarks();
        form_->forgetMarks();
    }
    dish_ = dish;
    step_ = step == nullptr ? Step() : *step;
    wares_->setFields(wareFields(otherSteps(dish, step_.id), units_));
    wares_->show(step_.wares);
    pools_->show(step_.pools);
    attention_->show(step_.segments);
    form_->show(step_);
    const Step* above = stepAbove(dish_, step_.id);
    samePan_->setEnabled(above != nullptr && !above->wares.empty());
}

void MorePage::carryOn() {
    if (const Step* above = stepAbove(dish_, step_.id)) {
        Q_EMIT dishEdited(withSamePan(dish_, step_.id, above->id));
    }
}

}  // namespace rangeline
