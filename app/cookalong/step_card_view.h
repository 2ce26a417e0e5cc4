#pragma once
// One step on the page, with its five buttons.

#include <QFrame>
#include <QPushButton>
#include <array>

#include "cookalong/live_colours.h"
#include "text/live_text.h"

class QBoxLayout;
class QLabel;

namespace rangeline {

/// What a cook can say of a step, in the order of the buttons.
enum class CardPress : std::uint8_t { Started, Done, MoreTime, NotReady, Skip };
inline constexpr std::array cardPresses{CardPress::Started, CardPress::Done, CardPress::MoreTime,
                                        CardPress::NotReady, CardPress::Skip};

/// The key that does the same on the chosen card.
Qt::Key keyOf(CardPress press);

class StepCardView : public QFrame {
    Q_OBJECT

  public:
    explicit StepCardView(QWidget* parent = nullptr);

    /// `compact`: without what can be read in the figure and its mark, and with the usual button
    /// only.
    void show(const StepCard& card, bool chosen, bool compact = false);
    const StepCard& card() const { return card_; }
    QPushButton* button(CardPress press) const { return buttons_[static_cast<std::size_t>(press)]; }
    /// Sizes are multiplied by it.
    void setLook(const LiveColours& colours, double scale);

  Q_SIGNALS:
    void pressed(rangeline::CardPress press);
    void chosen();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    QColor stateColour() const;
    void paintMark(QPainter& painter, const QRectF& box) const;
    void showButtons(bool onlyUsual);

    StepCard card_;
    bool chosen_ = false;
    LiveColours colours_ = LiveColours::of(false);
    double scale_ = 1;
    QBoxLayout* all_;
    QWidget* mark_;
    QLabel* name_;
    QLabel* where_;
    QLabel* state_;
    QLabel* figure_;
    std::array<QPushButton*, cardPresses.size()> buttons_{};
};

}  // namespace rangeline
