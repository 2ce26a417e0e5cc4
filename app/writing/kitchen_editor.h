#pragma once
// A kitchen as it is written down: what stands in it, table by table.

#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <vector>

#include "writing/kitchen_table.h"

namespace rangeline {

class KitchenEditor : public QDialog {
    Q_OBJECT

  public:
    KitchenEditor(Kitchen kitchen, Units units, QWidget* parent = nullptr);
    ~KitchenEditor() override;

    const Kitchen& kitchen() const { return kitchen_; }
    void undo();
    /// Asks first where something would be lost.
    void reject() override;

  protected:
    /// Enter belongs to the field it is pressed in.
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* makeButtons();
    void change(Kitchen changed);
    void showAll();

    Kitchen kitchen_;
    const Kitchen original_;
    std::vector<Kitchen> before_;
    QLineEdit* name_;
    QTabWidget* tabs_;
    std::vector<KitchenTable*> tables_;
    QLabel* says_;
    QPushButton* undo_ = nullptr;
    QPushButton* keep_ = nullptr;
    QString refused_;
};

}  // namespace rangeline
