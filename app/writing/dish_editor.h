#pragma once
// A dish as it is written: components and steps as on paper, what is asked of each step beside
// them, ingredients below. Nothing reaches the book before it is kept.

#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <functional>
#include <vector>

#include "model/lesson.h"
#include "writing/dish_outline.h"
#include "writing/history.h"
#include "writing/ingredient_table.h"
#include "writing/problem_list.h"
#include "writing/step_pages.h"

namespace rangeline {

class DishEditor : public QDialog {
    Q_OBJECT

  public:
    DishEditor(Dish dish, Units units, QWidget* parent = nullptr);

    ~DishEditor() override;

    const Dish& dish() const { return dish_; }
    void undo();
    void redo();
    /// Stays open while something typed cannot be kept.
    void accept() override;
    /// Asks first where something would be lost.
    void reject() override;
    /// Not kept and not given up: there is to be gone on with it another time.
    bool isLeftForLater() const { return leftForLater_; }
    /// The dish is `written` as of an earlier time, of which nothing is kept yet.
    void goOnWith(Dish written);

    /// The cook's own techniques and cuts.
    void setTerms(const OwnTerms& terms);
    /// What the cooking log says of its steps, to be offered.
    void setLoggings(const std::map<StepId, std::vector<Logging>>& loggings);

  Q_SIGNALS:
    void dishChanged();
    /// They were changed in here.
    void termsChanged(const rangeline::OwnTerms& terms);

  protected:
    /// Enter belongs to the field it is pressed in.
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* makeHead();
    QWidget* makeMiddle();
    QWidget* makeButtons();
    void connectOutline();
    /// Every change goes through here, so that it can be taken back.
    void change(const std::function<void(Dish&)>& how);
    void showAll();
    void showTurned();
    void forgetRefused();
    void finishTyping();
    void deliverTables();
    void goTo(const Problem& problem);
    void judge();
    void addTyped(const QString& name);
    void rename(const QString& name);
    void remove();
    void askForTerms();
    void takePlatesHold();
    void choose(std::optional<StepId> step, std::size_t component);

    Units units_;
    OwnTerms terms_;
    Dish dish_;
    const Dish original_;
    History<Dish> history_;
    std::optional<StepId> step_;
    std::size_t component_ = 0;
    QLineEdit* name_ = nullptr;
    QSpinBox* covers_ = nullptr;
    QLineEdit* platesHold_ = nullptr;
    QLineEdit* perCover_ = nullptr;
    DishOutline* outline_ = nullptr;
    StepPages* form_ = nullptr;
    IngredientTable* ingredients_ = nullptr;
    ProblemList* problems_ = nullptr;
    QPushButton* undo_ = nullptr;
    QPushButton* redo_ = nullptr;
    QPushButton* keep_ = nullptr;
    QString refused_;
    bool leftForLater_ = false;
};

}  // namespace rangeline
