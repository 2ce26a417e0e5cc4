#pragma once
// After class: the times that were written down in the kitchen go to the cooking log, and a look
// at what became of the plan.

#include <QCheckBox>
#include <QDateEdit>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QStackedWidget>

#include "library/book_desk.h"
#include "log/log_entries.h"
#include "log/times_table.h"

namespace rangeline {

class TimesDialog : public QDialog {
    Q_OBJECT

  public:
    /// Of the lesson that is open and in the open book. `today` is offered as the day of the class
    /// where the lesson lies after it.
    TimesDialog(BookDesk& desk, const QLocale& locale, const QDate& today,
                QWidget* parent = nullptr);

    /// Asks first where something would be lost.
    void reject() override;

  private:
    QWidget* makeTop(const QDate& today);
    QWidget* makeBottom();
    QWidget* makeReview();
    /// As it was planned, on the day of the class.
    Lesson lesson() const;
    void typed();
    void log();
    void showReview(const std::vector<live::Taken>& taken);

    BookDesk& desk_;
    QLocale locale_;
    const std::string service_;
    QDateEdit* day_ = nullptr;
    QSpinBox* number_ = nullptr;
    TimesTable* table_ = nullptr;
    QLabel* count_ = nullptr;
    QCheckBox* another_ = nullptr;
    QPushButton* log_ = nullptr;
    QPushButton* close_ = nullptr;
    QStackedWidget* pages_ = nullptr;
    bool logged_ = false;
};

}  // namespace rangeline
