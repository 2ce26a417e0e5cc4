#include "writing/order_page.h"

#include <QVBoxLayout>

#include "writing/dish_changes.h"
#include "writing/editors.h"
#include "writing/field_keys.h"
#include "writing/more_fields.h"

namespace rangeline {

OrderPage::OrderPage(QWidget* parent)
    : QWidget(parent),
      graph_(new GraphView),
      around_(new QScrollArea(this)),
      hint_(new QLabel(this)),
      whose_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    around_->setFocusPolicy(Qt::NoFocus);
    around_->setWidget(graph_);
    for (QLabel* label : {hint_, whose_}) {
        label->setWordWrap(true);
    }
    ties_ = std::make_unique<TableOf<Tie>>(
        tr("What the step waits for"), tieFields({}), this,
        [](const std::vector<Tie>&) { return Tie{}; },
        [this](const std::vector<Tie>& ties) { Q_EMIT dishEdited(withTies(dish_, *step_, ties)); });
    setFieldKey(ties_->table(), "links");
    setFieldKey(*graph_, "circle");
    const int high = 8 * fontMetrics().lineSpacing();
    ties_->table().setFixedHeight(high);
    column->addWidget(around_, 1);
    column->addWidget(hint_);
    column->addWidget(whose_);
    column->addWidget(ties_->widget());
    connectGraph();
}

OrderPage::~OrderPage() = default;

void OrderPage::connectGraph() {
    connect(graph_, &GraphView::stepChosen, this, &OrderPage::stepChosen);
    connect(graph_, &GraphView::lineWanted, this, [this](const StepId& from, const StepId& to) {
        Q_EMIT dishEdited(withUse(dish_, to, from));
    });
    connect(graph_, &GraphView::lineUnwanted, this, [this](const StepId& from, const StepId& to) {
        Q_EMIT dishEdited(withoutTie(dish_, to, from));
    });
    const QString usual =
        tr("Drag from a step to the one its food goes into; or press L, go there, press Enter. "
           "Space goes through the lines of a step, Delete takes one away. Whole lines: its food "
           "goes in; dashes: the same pan; dots: a wait.");
    hint_->setText(usual);
    connect(graph_, &GraphView::hinted, this,
            [this, usual](const QString& text) { hint_->setText(text.isEmpty() ? usual : text); });
}

void OrderPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    // Hidden, the page had not its size yet when the step was chosen.
    QMetaObject::invokeMethod(this, &OrderPage::bringStepIntoView, Qt::QueuedConnection);
}

void OrderPage::bringStepIntoView() {
    if (const auto node = step_ ? graph_->graph().nodeOf(*step_) : std::nullopt) {
        const QRect box = graph_->graph().nodes[*node].box.toRect();
        around_->ensureVisible(box.center().x(), box.center().y(), box.width() / 2, box.height());
    }
}

void OrderPage::showStep(const Dish& dish, const std::optional<StepId>& id) {
    const Step* step = id ? findStep(dish, *id) : nullptr;
    if (id != step_) {
        ties_->forgetMarks();  // what was not understood belongs to the other step
    }
    dish_ = dish;
    step_ = step == nullptr ? std::nullopt : id;
    graph_->show(dish_, step_);
    bringStepIntoView();
    ties_->widget()->setEnabled(step != nullptr);
    whose_->setText(step == nullptr
                        ? tr("Choose a step to say what it waits for.")
                        : tr("“%1” comes after:").arg(QString::fromStdString(step->name)));
    ties_->setFields(tieFields(otherSteps(dish_, step ? step->id : StepId())));
    ties_->show(step == nullptr ? std::vector<Tie>() : tiesOf(dish_, step->id));
}

}  // namespace rangeline
