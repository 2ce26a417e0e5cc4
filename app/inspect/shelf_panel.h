#pragma once
// Components and steps of the open lesson that are not placed. They are dragged onto the timeline,
// or picked up with a click and put down there with another.

#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QTreeWidget>
#include <functional>
#include <memory>

#include "document/lesson_document.h"
#include "inspect/wrapping_delegate.h"

namespace rangeline {

/// What a drag of these steps carries.
using ShelfDrag = std::function<std::unique_ptr<QMimeData>(const std::vector<StepKey>& steps)>;

class ShelfTree : public WrappingTree {
  public:
    ShelfTree(ShelfDrag makeDrag, QWidget* parent);

    /// Those of the component, or the one step.
    static std::vector<StepKey> stepsOf(const QTreeWidgetItem& item);
    static void setKey(QTreeWidgetItem& item, const StepKey& key);

  protected:
    void startDrag(Qt::DropActions actions) override;

  private:
    ShelfDrag makeDrag_;
};

class ShelfPanel : public QWidget {
    Q_OBJECT

  public:
    ShelfPanel(const LessonDocument& document, const QLocale& locale, ShelfDrag makeDrag,
               QWidget* parent = nullptr);

    /// How many steps are not placed.
    int count() const { return count_; }

  public Q_SLOTS:
    /// Picks up what is chosen.
    void pickUp();

  Q_SIGNALS:
    void pickedUp(const std::vector<rangeline::StepKey>& steps);
    /// What is chosen, for the inspector.
    void stepChosen(const rangeline::PlacementKey& key);

  private:
    void list();
    void addTask(int task);
    QTreeWidgetItem* componentItem(const Task& task);
    QString needsOf(int task) const;

    const LessonDocument& document_;
    QLocale locale_;
    int count_ = 0;
    ShelfTree* tree_ = nullptr;
    QLabel* hint_ = nullptr;
    QPushButton* place_ = nullptr;
};

}  // namespace rangeline
