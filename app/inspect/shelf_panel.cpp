#include "inspect/shelf_panel.h"

#include <QDrag>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "analysis/at.h"
#include "text/names.h"

namespace rangeline {
namespace {

constexpr int stepRole = WrappingDelegate::strongLine + 1;
constexpr int batchRole = stepRole + 1;
constexpr int groupRole = stepRole + 2;
constexpr int componentRole = stepRole + 3;

}  // namespace

// ---- the tree ----

ShelfTree::ShelfTree(ShelfDrag makeDrag, QWidget* parent)
    : WrappingTree(ShelfPanel::tr("Not placed yet"), parent), makeDrag_(std::move(makeDrag)) {
    setDragEnabled(true);
    setDragDropMode(QAbstractItemView::DragOnly);
}

void ShelfTree::setKey(QTreeWidgetItem& item, const StepKey& key) {
    item.setData(0, stepRole, QString::fromStdString(key.step.text));
    item.setData(0, batchRole, key.batch);
    item.setData(0, groupRole, key.group);
}

std::vector<StepKey> ShelfTree::stepsOf(const QTreeWidgetItem& item) {
    std::vector<StepKey> steps;
    if (const QString step = item.data(0, stepRole).toString(); !step.isEmpty()) {
        steps.push_back({StepId{step.toStdString()}, item.data(0, batchRole).toInt(),
                         item.data(0, groupRole).toInt()});
    }
    for (int row = 0; row < item.childCount(); ++row) {
        const auto below = stepsOf(*item.child(row));
        steps.insert(steps.end(), below.begin(), below.end());
    }
    return steps;
}

void ShelfTree::startDrag(Qt::DropActions) {
    if (const QTreeWidgetItem* item = currentItem()) {
        auto* drag = new QDrag(this);
        drag->setMimeData(makeDrag_(stepsOf(*item)).release());
        drag->exec(Qt::CopyAction);
    }
}

// ---- the panel ----

ShelfPanel::ShelfPanel(const LessonDocument& document, const QLocale& locale, ShelfDrag makeDrag,
                       QWidget* parent)
    : QWidget(parent), document_(document), locale_(locale) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 8);
    tree_ = new ShelfTree(std::move(makeDrag), this);
    hint_ = new QLabel(this);
    hint_->setWordWrap(true);
    hint_->setMargin(8);
    place_ = new QPushButton(tr("Pick up"), this);
    place_->setToolTip(tr("Then click where it is to go on the timeline, or press Enter there"));
    column->addWidget(tree_, 1);
    column->addWidget(hint_);
    column->addWidget(place_, 0, Qt::AlignHCenter);
    column->addStretch();
    connect(place_, &QPushButton::clicked, this, &ShelfPanel::pickUp);
    connect(tree_, &QTreeWidget::itemActivated, this, &ShelfPanel::pickUp);
    connect(tree_, &QTreeWidget::currentItemChanged, this, [this](const QTreeWidgetItem* item) {
        const auto steps = item == nullptr ? std::vector<StepKey>() : ShelfTree::stepsOf(*item);
        if (!steps.empty()) {
            Q_EMIT stepChosen(steps.front());
        }
    });
    connect(&document, &LessonDocument::changed, this, &ShelfPanel::list);
    list();
}

void ShelfPanel::pickUp() {
    const QTreeWidgetItem* item = tree_->currentItem();
    if (const auto steps = item == nullptr ? std::vector<StepKey>() : ShelfTree::stepsOf(*item);
        !steps.empty()) {
        Q_EMIT pickedUp(steps);
    }
}

void ShelfPanel::list() {
    const QSignalBlocker quiet(tree_);
    tree_->clear();
    count_ = 0;
    const int tasks = document_.index().tasks();
    for (int task = 0; task < tasks; ++task) {
        if (!document_.index().placed(task)) {
            addTask(task);
            ++count_;
        }
    }
    tree_->expandAll();
    tree_->setCurrentItem(tree_->topLevelItem(0));
    tree_->setVisible(count_ > 0);
    place_->setVisible(count_ > 0);
    hint_->setVisible(count_ == 0);  // the timeline says it, and the list needs the room
    hint_->setText(tasks > 0 ? tr("Everything is placed. What you take off the timeline comes "
                                  "back here.")
                             : tr("Components and steps wait here until they are placed."));
}

QTreeWidgetItem* ShelfPanel::componentItem(const Task& task) {
    const QString id =
        QStringLiteral("%1/%2/%3").arg(task.key.group).arg(task.serving).arg(task.component);
    for (int row = 0; row < tree_->topLevelItemCount(); ++row) {
        if (tree_->topLevelItem(row)->data(0, componentRole) == id) {
            return tree_->topLevelItem(row);
        }
    }
    const Component& component =
        at(at(document_.lesson().servings, task.serving).dish.components, task.component);
    QString name = QString::fromStdString(component.name);
    if (document_.lesson().head.groups.count > 1) {
        name = tr("%1, group %2").arg(name, locale_.toString(task.key.group + 1));
    }
    auto* item = new QTreeWidgetItem(tree_, {name});
    QFont strong = tree_->font();
    strong.setBold(true);
    item->setFont(0, strong);
    item->setData(0, componentRole, id);
    item->setToolTip(0, name);
    return item;
}

QString ShelfPanel::needsOf(int task) const {
    const Step& step = document_.index().step(task);
    QStringList needs{durationText(at(document_.expanded().tasks, task).time.likely, locale_)};
    if (std::holds_alternative<BurnerHeat>(step.heat)) {
        needs << tr("burner");
    } else if (std::holds_alternative<OvenHeat>(step.heat)) {
        needs << tr("oven");
    }
    return needs.join(tr(", "));
}

void ShelfPanel::addTask(int task) {
    const Task& added = at(document_.expanded().tasks, task);
    const TextContext text = document_.text(locale_);
    QString name = Names(text).plainStep(added.key);
    if (added.batches > 1) {
        name = tr("%1, batch %2").arg(name, locale_.toString(added.key.batch + 1));
    }
    const QString whole = tr("%1 (%2)").arg(name, needsOf(task));
    auto* item = new QTreeWidgetItem(componentItem(added), {whole});
    item->setToolTip(0, whole);
    ShelfTree::setKey(*item, added.key);
}

}  // namespace rangeline
