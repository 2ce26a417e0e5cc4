#pragma once
// Recipes from a file, looked at before anything is stored.

#include <QComboBox>
#include <QDialog>
#include <QListWidget>
#include <QLocale>
#include <QTreeWidget>
#include <vector>

#include "model/lesson.h"
#include "recipe/recipe_import.h"

namespace rangeline {

class RecipePreview : public QDialog {
    Q_OBJECT

  public:
    /// Requires at least one recipe.
    RecipePreview(std::vector<ImportedRecipe> recipes, const QLocale& locale, Units units,
                  QWidget* parent = nullptr);

    /// The recipe that is shown.
    const ImportedRecipe& chosen() const;

  private:
    QWidget* makeChoice();
    QWidget* makeParts();
    void showRecipe(int number);
    void addIngredients(const Component& component);
    void addSteps(const Component& component);

    std::vector<ImportedRecipe> recipes_;
    QLocale locale_;
    Units units_;
    QComboBox* choice_ = nullptr;
    QTreeWidget* parts_ = nullptr;
    QListWidget* remarks_ = nullptr;
};

}  // namespace rangeline
