#pragma once
// A kitchen as it is written down: what stands in it, table by table.

#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <memory>
#include <vector>

#include "writing/history.h"
#include "writing/kitchen_table.h"
#include "writing/problem_list.h"

namespace rangeline {

template <class T>
class FormOf;

class KitchenEditor : public QDialog {
    Q_OBJECT

  public:
    KitchenEditor(Kitchen kitchen, Units units, QWidget* parent = nullptr);
    ~KitchenEditor() override;

    const Kitchen& kitchen() const { return kitchen_; }
    void undo();
    void redo();
    /// Asks first where something would be lost.
    void reject() override;
    /// Stays open while something is wrong.
    void accept() override;
    /// Not kept and not given up: there is to be gone on with it another time.
    bool isLeftForLater() const { return leftForLater_; }
    /// The kitchen is `written` as of an earlier time, of which nothing is kept yet.
    void goOnWith(Kitchen written);

  Q_SIGNALS:
    void kitchenChanged();

  protected:
    /// Enter belongs to the field it is pressed in.
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void finishTyping();
    QWidget* makeButtons();
    void change(Kitchen changed);
    void showAll();
    void showTurned();
    void goTo(const Problem& problem);

    Kitchen kitchen_;
    const Kitchen original_;
    History<Kitchen> history_;
    QLineEdit* name_;
    std::unique_ptr<FormOf<Kitchen>> fields_;
    QTabWidget* tabs_;
    std::vector<KitchenTable*> tables_;
    ProblemList* problems_;
    QPushButton* undo_ = nullptr;
    QPushButton* redo_ = nullptr;
    QPushButton* keep_ = nullptr;
    QString refused_;
    bool leftForLater_ = false;
};

}  // namespace rangeline
