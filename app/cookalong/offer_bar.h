#pragma once
// One thing that could be done about plating that is behind, with the button that does it.

#include <QWidget>

class QLabel;
class QPushButton;

namespace rangeline {

class OfferBar : public QWidget {
    Q_OBJECT

  public:
    /// `act` stands on the button: the key and what it does.
    explicit OfferBar(const QString& act, QWidget* parent = nullptr);
    void setAct(const QString& act);

    /// Empty: there is nothing to offer, and the bar is hidden.
    void show(const QString& text);
    QPushButton* button() const { return button_; }

  Q_SIGNALS:
    void taken();

  private:
    QLabel* text_;
    QPushButton* button_;
};

}  // namespace rangeline
