#pragma once
// What waits for what: the steps of the dish as a picture that lines can be drawn in, and below it
// what the chosen step waits for, line by line.

#include <QLabel>
#include <QScrollArea>
#include <QWidget>
#include <memory>

#include "model/dish.h"
#include "writing/graph_view.h"
#include "writing/ties.h"

namespace rangeline {

template <class T>
class TableOf;

class OrderPage : public QWidget {
    Q_OBJECT

  public:
    explicit OrderPage(QWidget* parent = nullptr);
    ~OrderPage() override;

    void showStep(const Dish& dish, const std::optional<StepId>& step);

  Q_SIGNALS:
    void stepChosen(const rangeline::StepId& step);
    void dishEdited(const rangeline::Dish& dish);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void connectGraph();
    void bringStepIntoView();

    Dish dish_;
    std::optional<StepId> step_;
    GraphView* graph_;
    QScrollArea* around_;
    QLabel* hint_;
    QLabel* whose_;
    std::unique_ptr<TableOf<Tie>> ties_;
};

}  // namespace rangeline
