#pragma once
// One alarm that rings, with the button and the key that stop it and nothing else.

#include <QFrame>

#include "live/timers.h"

class QLabel;
class QPushButton;

namespace rangeline {

class AlarmBar : public QFrame {
    Q_OBJECT

  public:
    explicit AlarmBar(QWidget* parent = nullptr);

    /// `number` is its key; 0: it has only the button.
    void show(const live::Timer& timer, int number, const QString& text, const QString& late);
    const live::Timer& timer() const { return timer_; }
    QPushButton* button() const { return stop_; }

  Q_SIGNALS:
    void stopWanted();

  private:
    live::Timer timer_;
    QLabel* number_;
    QLabel* text_;
    QPushButton* stop_;
};

}  // namespace rangeline
