#pragma once
// The named versions of the open lesson: keeping one, comparing, going back to one.

#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <vector>

#include "book/versions.h"
#include "library/book_desk.h"
#include "library/comparison_view.h"

namespace rangeline {

class VersionsDialog : public QDialog {
    Q_OBJECT

  public:
    /// Requires that the open lesson belongs to the open book.
    VersionsDialog(BookDesk& desk, const QLocale& locale, QWidget* parent = nullptr);

  private:
    QWidget* makeKeeping();
    QWidget* makeButtons();
    void read();
    void list(const std::vector<Version>& versions);
    void keep();
    void restore();
    void remove();
    void showChosen();
    void compareWith(const Lesson& chosen, const Lesson& other);
    QString nameOf(const Version& version) const;
    const Version* chosen() const;
    void say(const BookFault& fault);

    BookDesk& desk_;
    QLocale locale_;
    ItemId lesson_;
    std::vector<Version> versions_;
    QLineEdit* name_ = nullptr;
    QPushButton* keep_ = nullptr;
    QListWidget* list_ = nullptr;
    QComboBox* with_ = nullptr;
    ComparisonView* view_ = nullptr;
    QPushButton* restore_ = nullptr;
    QPushButton* remove_ = nullptr;
    int asked_ = 0;  ///< answers to earlier questions come too late
};

}  // namespace rangeline
