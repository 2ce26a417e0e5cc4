#pragma once
// The ingredients of a component: typed as lines, corrected in a table.

#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QTableWidget>
#include <vector>

#include "model/dish.h"

namespace rangeline {

class IngredientTable : public QWidget {
    Q_OBJECT

  public:
    explicit IngredientTable(QWidget* parent = nullptr);

    void showComponent(const Component& component);

  Q_SIGNALS:
    void edited(const std::vector<rangeline::Ingredient>& ingredients);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fill();
    void addLines(const QString& text);
    void cellChanged(int row, int column);
    void removeChosen();

    std::vector<Ingredient> ingredients_;
    QTableWidget* table_;
    QLineEdit* line_;
    QLabel* says_;
    bool filling_ = false;
};

}  // namespace rangeline
