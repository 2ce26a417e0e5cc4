#pragma once
// The components of a dish and their steps, a line each, as on paper.

#include <QLineEdit>
#include <QTreeWidget>
#include <optional>

#include "model/dish.h"
#include "writing/problems.h"

namespace rangeline {

class DishOutline : public QWidget {
    Q_OBJECT

  public:
    explicit DishOutline(QWidget* parent = nullptr);

    /// Lists anew and chooses the step, or the component where there is no step.
    void showDish(const Dish& dish, const std::optional<StepId>& step, std::size_t component);
    /// Steps with a problem carry its sign and say it.
    void mark(const std::vector<Problem>& problems);
    /// Where the next step is typed.
    QLineEdit& nextStep() { return *next_; }
    /// Empties the line in which a step is being typed; false where none is.
    bool giveUpLine();
    /// A step that stands there still is told of.
    void finishTyping();
    /// Begins to write the name of what is chosen, after which the next step is written.
    void editName();

  Q_SIGNALS:
    void stepChosen(const rangeline::StepId& step);
    void componentChosen(int component);
    void stepTyped(const QString& name);
    void renamed(const QString& name);
    void removeWanted();
    void moveWanted(int by);
    /// The chosen step was dropped before the one that is there now.
    void dropWanted(int component, int step);
    void componentWanted();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* makeButtons();
    void choose(QTreeWidgetItem* row);
    void drop(QPoint at);

    QTreeWidget* tree_;
    QLineEdit* next_;
    bool filling_ = false;
    bool goesOn_ = false;  ///< to the next step, once the name is written
};

}  // namespace rangeline
