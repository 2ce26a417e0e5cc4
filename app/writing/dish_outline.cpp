#include "writing/dish_outline.h"

#include <QAbstractItemDelegate>
#include <QDropEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QStyle>
#include <QTreeWidgetItemIterator>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "text/quantities.h"

namespace rangeline {
namespace {

constexpr int stepRole = Qt::UserRole;
constexpr int componentRole = Qt::UserRole + 1;

QTreeWidgetItem* makeRow(const std::string& name, int component) {
    auto* row = new QTreeWidgetItem({QString::fromStdString(name)});
    row->setFlags(row->flags() | Qt::ItemIsEditable);
    row->setData(0, componentRole, component);
    return row;
}

}  // namespace

DishOutline::DishOutline(QWidget* parent)
    : QWidget(parent), tree_(new QTreeWidget(this)), next_(new QLineEdit(this)) {
    tree_->setAccessibleName(tr("Components and steps"));
    tree_->setHeaderLabels({tr("Component and steps"), tr("Takes")});
    tree_->header()->setStretchLastSection(false);
    tree_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    tree_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    tree_->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked);
    tree_->setToolTip(
        tr("F2 renames; dragging, or Alt with the arrow keys, moves a step; Delete takes it away"));
    tree_->setDragDropMode(QAbstractItemView::InternalMove);
    tree_->installEventFilter(this);
    tree_->viewport()->installEventFilter(this);
    next_->setAccessibleName(tr("The next step"));
    next_->setPlaceholderText(tr("Type the next step and press Enter"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(tree_, 1);
    column->addWidget(next_);
    column->addWidget(makeButtons());
    connect(next_, &QLineEdit::returnPressed, this, &DishOutline::finishTyping);
    connect(tree_, &QTreeWidget::currentItemChanged, this,
            [this](QTreeWidgetItem* row) { choose(row); });
    connect(tree_->itemDelegate(), &QAbstractItemDelegate::closeEditor, this, [this] {
        if (std::exchange(goesOn_, false)) {
            next_->setFocus();
        }
    });
    connect(tree_, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* row) {
        if (!filling_) {
            Q_EMIT renamed(row->text(0).trimmed());
        }
    });
}

QWidget* DishOutline::makeButtons() {
    auto* box = new QWidget(this);
    auto* line = new QHBoxLayout(box);
    line->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, auto act) {
        auto* button = new QPushButton(text, box);
        button->setAutoDefault(false);
        // Narrower than the style would have it, where the window is narrow.
        button->setMinimumWidth(button->fontMetrics().horizontalAdvance(text + u'M'));
        connect(button, &QPushButton::clicked, this, act);
        line->addWidget(button);
    };
    add(tr("Ne&w component"), [this] { Q_EMIT componentWanted(); });
    add(tr("&Up"), [this] { Q_EMIT moveWanted(-1); });
    add(tr("D&own"), [this] { Q_EMIT moveWanted(1); });
    add(tr("&Remove"), [this] { Q_EMIT removeWanted(); });
    return box;
}

bool DishOutline::giveUpLine() {
    const bool typing = next_->hasFocus() && !next_->text().isEmpty();
    if (typing) {
        next_->setText({});
    }
    return typing;
}

void DishOutline::finishTyping() {
    if (const QString name = next_->text().trimmed(); !name.isEmpty()) {
        next_->setText({});  // unlike clear() nothing that could be taken back
        Q_EMIT stepTyped(name);
    }
}

void DishOutline::showDish(const Dish& dish, const std::optional<StepId>& step,
                           std::size_t component) {
    const QLocale here = locale();
    filling_ = true;
    tree_->clear();
    QTreeWidgetItem* chosen = nullptr;
    for (std::size_t c = 0; c < dish.components.size(); ++c) {
        const Component& part = dish.components[c];
        auto* group = makeRow(part.name, static_cast<int>(c));
        tree_->addTopLevelItem(group);
        chosen = c == component ? group : chosen;
        for (const Step& each : part.steps) {
            auto* row = makeRow(each.name, static_cast<int>(c));
            row->setText(1, durationText(each.time.likely, here));
            row->setData(0, stepRole, QString::fromStdString(each.id.text));
            row->setToolTip(0, row->text(0));
            group->addChild(row);
            chosen = step == each.id ? row : chosen;
        }
    }
    tree_->expandAll();
    tree_->setCurrentItem(chosen);
    filling_ = false;
}

void DishOutline::editName() {
    tree_->setFocus();
    tree_->editItem(tree_->currentItem(), 0);
    goesOn_ = true;
}

void DishOutline::mark(const std::vector<Problem>& problems) {
    const QScopedValueRollback filling(filling_, true);
    for (QTreeWidgetItemIterator row(tree_); *row != nullptr; ++row) {
        const QString id = (*row)->data(0, stepRole).toString();
        const auto ofRow = [&](const Problem& problem) {
            return problem.step && !id.isEmpty() && id.toStdString() == problem.step->text;
        };
        const auto found = std::ranges::find_if(problems, ofRow);  // cautions come last
        if (found != problems.end()) {
            (*row)->setIcon(0,
                            style()->standardIcon(found->caution ? QStyle::SP_MessageBoxInformation
                                                                 : QStyle::SP_MessageBoxWarning));
            (*row)->setToolTip(0, found->text);
            (*row)->setData(0, Qt::AccessibleDescriptionRole, found->text);
        }
    }
}

void DishOutline::choose(QTreeWidgetItem* row) {
    if (filling_ || row == nullptr) {
        return;
    }
    const QString step = row->data(0, stepRole).toString();
    if (step.isEmpty()) {
        Q_EMIT componentChosen(row->data(0, componentRole).toInt());
    } else {
        Q_EMIT stepChosen({step.toStdString()});
    }
}

void DishOutline::drop(QPoint at) {
    QTreeWidgetItem* target = tree_->itemAt(at);
    const QTreeWidgetItem* dragged = tree_->currentItem();
    if (target == nullptr || dragged == nullptr || dragged->parent() == nullptr) {
        return;
    }
    const int component = target->data(0, componentRole).toInt();
    const bool below = at.y() > tree_->visualItemRect(target).center().y();
    const int step =
        target->parent() == nullptr ? 0 : target->parent()->indexOfChild(target) + (below ? 1 : 0);
    // The list is filled anew: not while the drag still goes on in it.
    QMetaObject::invokeMethod(
        this, [this, component, step] { Q_EMIT dropWanted(component, step); },
        Qt::QueuedConnection);
}

bool DishOutline::eventFilter(QObject* watched, QEvent* event) {
    if (watched == tree_->viewport() && event->type() == QEvent::Drop) {
        auto* dropped = static_cast<QDropEvent*>(event);
        dropped->setDropAction(Qt::IgnoreAction);  // the dish moves the step, not the list
        dropped->accept();
        drop(dropped->position().toPoint());
        return true;
    }
    if (watched == tree_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool alt = key->modifiers().testFlag(Qt::AltModifier);
        if (key->key() == Qt::Key_Delete) {
            Q_EMIT removeWanted();
            return true;
        }
        if (alt && (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down)) {
            Q_EMIT moveWanted(key->key() == Qt::Key_Up ? -1 : 1);
            return true;
        }
        if (key->key() == Qt::Key_Return) {
            next_->setFocus();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace rangeline
