#pragma once
// A new lesson out of what the book holds: dishes, covers, kitchen, crew, groups, class times,
// guests' allergens, serving time.

#include <QCheckBox>
#include <QComboBox>
#include <QDateTime>
#include <QDialog>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QTreeWidget>
#include <map>

#include "inspect/instant_field.h"
#include "library/book_desk.h"
#include "library/new_lesson.h"

namespace rangeline {

class NewLessonDialog : public QDialog {
    Q_OBJECT

  public:
    /// Suggests the evening after `now`, whose zone the lesson gets.
    NewLessonDialog(BookDesk& desk, const QLocale& locale, Units units, const QDateTime& now,
                    QWidget* parent = nullptr);

    /// Puts the lesson into the book and opens it; says why where it cannot.
    void accept() override;

  private:
    QWidget* makeDishes();
    QWidget* makeWho();
    QWidget* makeWhen(const QDateTime& now);
    QWidget* makeGuests();
    void askProfile();
    void fillDishes();
    void filterDishes(const QString& words);
    void dishTicked(QTreeWidgetItem* row);
    void takeDish(ItemId id, Dish dish);
    void kitchenChosen();
    ItemId chosenKitchen() const;
    void takeKitchen(ItemId id, Kitchen kitchen);
    /// What the lesson would be, and what there is to say of it.
    NewLesson filled() const;
    Head filledHead() const;
    bool allRead() const;
    void judge();
    void say(const BookFault& fault);

    BookDesk& desk_;
    QLocale locale_;
    Units units_;
    QByteArray zone_;
    std::map<ItemId, Dish> read_;  ///< those that were ticked
    ItemId kitchenItem_;
    Kitchen kitchen_;
    QLineEdit* name_ = nullptr;
    QLineEdit* search_ = nullptr;
    QTreeWidget* dishes_ = nullptr;
    QComboBox* kitchens_ = nullptr;
    QWidget* crewBox_ = nullptr;
    std::vector<QCheckBox*> crew_;
    QSpinBox* groups_ = nullptr;
    QComboBox* profile_ = nullptr;
    ClockField* serving_ = nullptr;
    InstantField* opens_ = nullptr;
    InstantField* cooking_ = nullptr;
    InstantField* tasting_ = nullptr;
    InstantField* out_ = nullptr;
    QListWidget* guests_ = nullptr;
    Qt::CheckState pressed_ = Qt::Unchecked;  ///< of the guest's tick when the mouse went down
    QLabel* says_ = nullptr;
    QPushButton* make_ = nullptr;
    bool profileChosen_ = false;  ///< what the book says comes too late
    bool ready_ = false;          ///< the lesson can be made as it is filled in
};

}  // namespace rangeline
