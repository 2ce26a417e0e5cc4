#pragma once
// The ingredients of a component: typed as lines, corrected in a table.

#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <memory>
#include <vector>

#include "model/lesson.h"
#include "writing/allergen_hint.h"
#include "writing/own_terms.h"

namespace rangeline {

template <class T>
class TableOf;

class IngredientTable : public QWidget {
    Q_OBJECT

  public:
    explicit IngredientTable(Units units, QWidget* parent = nullptr);
    ~IngredientTable() override;

    void showComponent(const Component& component);
    /// Empties the line in which an ingredient is being typed; false where none is.
    bool giveUpLine();
    /// An ingredient that is typed still is taken.
    void finishTyping();
    /// Cuts to choose from besides those of the trade.
    void setTerms(const OwnTerms& terms);

  Q_SIGNALS:
    void edited(const std::vector<rangeline::Ingredient>& ingredients);

  private:
    void addLines(const QString& text);
    void take(std::vector<Ingredient> ingredients);

    Units units_;
    ComponentId component_;
    std::vector<Ingredient> ingredients_;
    std::unique_ptr<TableOf<Ingredient>> table_;
    AllergenHint* allergens_;
    QLineEdit* line_;
    QLabel* says_;
};

}  // namespace rangeline
