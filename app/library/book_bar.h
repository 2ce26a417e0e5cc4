#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace rangeline {

class BookDesk;

/// Says how the book is while something is to be known or done about it: not written, only to be
/// read, damaged; with what helps.
class BookBar : public QFrame {
    Q_OBJECT

  public:
    explicit BookBar(BookDesk& desk, QWidget* parent = nullptr);

    QString text() const;

  private:
    void showState();
    void say(const QString& text);

    BookDesk& desk_;
    QLabel* text_;
    QPushButton* retry_;
    QPushButton* copy_;
    QPushButton* salvage_;
};

}  // namespace rangeline
