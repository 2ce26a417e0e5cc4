#pragma once
// Allergens that the names of ingredients suggest; noted only where the cook accepts them.

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <set>
#include <string>
#include <vector>

#include "model/dish.h"

namespace rangeline {

class AllergenHint : public QWidget {
    Q_OBJECT

  public:
    explicit AllergenHint(QWidget* parent = nullptr);

    /// Hidden where nothing is suggested that is not noted already, or was declined before.
    void showFor(const std::vector<Ingredient>& ingredients);

  Q_SIGNALS:
    /// With what was suggested.
    void accepted(const std::vector<rangeline::Ingredient>& ingredients);

  private:
    std::vector<std::string> suggestedFor(const Ingredient& ingredient) const;
    void accept();
    void decline();

    std::vector<Ingredient> ingredients_;
    std::set<std::string> declined_;  ///< names
    QLabel* says_;
};

}  // namespace rangeline
