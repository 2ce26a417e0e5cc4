#pragma once
// What the cook makes of a component when time runs short: in words, and which steps fall away.

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QWidget>

#include "model/dish.h"

namespace rangeline {

class SimplerPage : public QWidget {
    Q_OBJECT

  public:
    explicit SimplerPage(QWidget* parent = nullptr);

    void showComponent(const Dish& dish, std::size_t component);

  Q_SIGNALS:
    void dishEdited(const rangeline::Dish& dish);

  private:
    void listSteps(const Component& component);
    /// Reads what is written and ticked; nothing of both is no simpler form.
    void take();

    Dish dish_;
    std::size_t component_ = 0;
    QLabel* whose_;
    QLineEdit* how_;
    QListWidget* without_;
};

}  // namespace rangeline
