#pragma once
// What has changed in the book since the open lesson took it over, offered to be taken.

#include <QFrame>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <optional>

#include "library/book_desk.h"

namespace rangeline {

/// A line above the lesson; hidden while there is nothing to offer.
class ChangeOffer : public QFrame {
    Q_OBJECT

  public:
    ChangeOffer(BookDesk& desk, const QLocale& locale, QWidget* parent = nullptr);

    QString text() const { return text_->text(); }
    /// Asks the book whether there is something to offer for the open lesson.
    void look();

  private:
    void offer(const std::vector<Edit>& edits, const QStringList& names);
    /// Shows what it would do, and does it if that is wanted.
    void showWhat();

    BookDesk& desk_;
    QLocale locale_;
    QLabel* text_;
    QPushButton* see_;
    std::vector<Edit> edits_;
    int asked_ = 0;  ///< answers to earlier questions come too late
};

}  // namespace rangeline
