// Lifetime: Qt owns the view's interface and deletes it with the view. The interfaces of blocks are
// registered with Qt by that interface when they are asked for, kept by placement, and freed when
// the placement is gone from the timeline or the view is.

#include "timeline_view/timeline_access.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>
#include <map>

#include "timeline_view/timeline_view.h"

namespace rangeline {
namespace {

class BlockAccess : public QAccessibleInterface,
                    public QAccessibleActionInterface,
                    public QAccessibleValueInterface {
  public:
    BlockAccess(TimelineView& view, const PlacementKey& key) : view_(&view), key_(key) {}

    bool isValid() const override { return view_ != nullptr && item() >= 0; }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override {
        return view_ == nullptr ? nullptr : view_->window()->windowHandle();
    }
    QAccessibleInterface* parent() const override {
        return QAccessible::queryAccessibleInterface(view_);
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }

    QString text(QAccessible::Text which) const override {
        if (!isValid()) {
            return {};
        }
        if (which == QAccessible::Name) {
            return view_->describe(item());
        }
        return which == QAccessible::Value ? currentValue().toString() : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}

    QRect rect() const override {
        if (!isValid()) {
            return {};
        }
        const TimelineScene& scene = view_->scene();
        const QRectF here = view_->toViewport(scene.rectOf(scene.mainBlockOf(item())));
        const QRect least = here.toAlignedRect().adjusted(0, 0, 1, 1);
        return {view_->viewport()->mapToGlobal(least.topLeft()), least.size()};
    }
    QAccessible::Role role() const override { return QAccessible::Button; }
    QAccessible::State state() const override {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        const auto& selection = view_->selection();
        state.focusable = true;
        state.selectable = true;
        state.movable = true;
        state.busy = view_->scene().item(item()).begun;
        state.selected = std::ranges::find(selection, key_) != selection.end();
        state.focused = view_->hasFocus() && !selection.empty() && selection.front() == key_;
        return state;
    }

    void* interface_cast(QAccessible::InterfaceType type) override {
        if (type == QAccessible::ActionInterface) {
            return static_cast<QAccessibleActionInterface*>(this);
        }
        return type == QAccessible::ValueInterface ? static_cast<QAccessibleValueInterface*>(this)
                                                   : nullptr;
    }

    QStringList actionNames() const override {
        return {setFocusAction(), pressAction(), increaseAction(), decreaseAction()};
    }
    void doAction(const QString& action) override {
        if (!isValid()) {
            return;
        }
        const bool holding = view_->hasInHand();
        if (action == pressAction() && holding) {
            view_->putDown();
            return;
        }
        view_->reveal(key_);
        if (action == setFocusAction()) {
            view_->setFocus();
        } else if (action == pressAction()) {
            view_->pickUpSelected();
        } else if (action == increaseAction()) {
            view_->nudgeLater();
        } else if (action == decreaseAction()) {
            view_->nudgeEarlier();
        }
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

    QVariant currentValue() const override {
        return isValid() ? QVariant(static_cast<int>(start().inSeconds() / 60)) : QVariant();
    }
    void setCurrentValue(const QVariant& value) override {
        if (!isValid()) {
            return;
        }
        const Duration by = Instant::atMinutes(value.toInt()) - start();
        view_->reveal(key_);
        view_->nudge(static_cast<int>(by.inSeconds() / minimumStep().inSeconds()), 0);
    }
    QVariant maximumValue() const override { return 24 * 60; }
    QVariant minimumValue() const override { return -7 * 24 * 60; }
    QVariant minimumStepSize() const override { return minimumStep().inMinutes(); }

  private:
    int item() const { return view_->scene().itemOf(key_); }
    Instant start() const { return view_->scene().item(item()).interval.begin; }
    Duration minimumStep() const { return view_->document().lesson().head.grain; }

    QPointer<TimelineView> view_;
    PlacementKey key_;
};

class TimelineAccess : public QAccessibleWidget {
  public:
    explicit TimelineAccess(TimelineView* view)
        : QAccessibleWidget(view, QAccessible::Pane), view_(*view) {}
    ~TimelineAccess() override { forgetAll(); }

    int childCount() const override { return static_cast<int>(view_.scene().model().items.size()); }
    QAccessibleInterface* child(int index) const override {
        return index < 0 || index >= childCount() ? nullptr
                                                  : blockOf(view_.scene().item(index).key);
    }
    int indexOfChild(const QAccessibleInterface* child) const override {
        for (const auto& [key, id] : ids_) {
            if (QAccessible::accessibleInterface(id) == child) {
                return view_.scene().itemOf(key);
            }
        }
        return -1;
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        for (int index = 0; index < childCount(); ++index) {
            if (child(index)->rect().contains(x, y)) {
                return child(index);
            }
        }
        return nullptr;
    }
    QAccessibleInterface* focusChild() const override {
        const auto& selection = view_.selection();
        return selection.empty() ? nullptr : child(view_.scene().itemOf(selection.front()));
    }

    /// Frees the interfaces of placements that are gone.
    void forgetGone() {
        std::erase_if(ids_, [&](const auto& entry) {
            const bool gone = view_.scene().itemOf(entry.first) < 0;
            if (gone) {
                QAccessible::deleteAccessibleInterface(entry.second);
            }
            return gone;
        });
    }

  private:
    void forgetAll() {
        for (const auto& [key, id] : ids_) {
            QAccessible::deleteAccessibleInterface(id);
        }
        ids_.clear();
    }

    QAccessibleInterface* blockOf(const PlacementKey& key) const {
        const auto found = ids_.find(key);
        if (found != ids_.end()) {
            return QAccessible::accessibleInterface(found->second);
        }
        auto* block = new BlockAccess(view_, key);
        ids_.emplace(key, QAccessible::registerAccessibleInterface(block));
        return block;
    }

    TimelineView& view_;
    mutable std::map<PlacementKey, QAccessible::Id> ids_;
};

QAccessibleInterface* makeAccess(const QString&, QObject* object) {
    auto* view = qobject_cast<TimelineView*>(object);
    return view == nullptr ? nullptr : new TimelineAccess(view);
}

}  // namespace

void installTimelineAccess() {
    static const bool installed = [] {
        QAccessible::installFactory(makeAccess);
        return true;
    }();
    Q_UNUSED(installed);
}

void blocksChanged(TimelineView& view) {
    if (auto* access =
            dynamic_cast<TimelineAccess*>(QAccessible::queryAccessibleInterface(&view))) {
        access->forgetGone();
    }
    QAccessibleEvent event(&view, QAccessible::ObjectReorder);
    QAccessible::updateAccessibility(&event);
}

void focusChanged(TimelineView& view, int item) {
    if (QAccessible::isActive() && view.hasFocus()) {
        QAccessibleEvent event(&view, QAccessible::Focus);
        event.setChild(item);
        QAccessible::updateAccessibility(&event);
    }
}

}  // namespace rangeline
