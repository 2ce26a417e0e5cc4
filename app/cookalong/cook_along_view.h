#pragma once
// The page for the stove: when plating will be, what rings, what to do now and next, and what
// stands where. One press does one thing.

#include <QHash>
#include <QLocale>
#include <QWidget>
#include <functional>
#include <map>
#include <vector>

#include "cookalong/alarm_bar.h"
#include "cookalong/cook_along.h"
#include "cookalong/step_card_view.h"

class QLabel;
class QPushButton;
class QScrollArea;
class QTimeEdit;
class QVBoxLayout;

namespace rangeline {

class LiveRange;
class OfferBar;

class CookAlongView : public QWidget {
    Q_OBJECT

  public:
    /// `sound` is one stroke of the bell; it is asked for again while an alarm rings.
    CookAlongView(CookAlong& service, const QLocale& locale, std::function<void()> sound,
                  QWidget* parent = nullptr);
    ~CookAlongView() override;

    /// For tests, and for who reads the page: in the order in which they stand there.
    std::vector<StepCardView*> cards() const;
    std::vector<AlarmBar*> alarms() const;
    const std::optional<PlacementKey>& chosen() const { return chosen_; }

  Q_SIGNALS:
    /// The cook ends the service.
    void endWanted();
    /// The page is closed while the service goes on.
    void closed();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

  private:
    QLabel* label(const char* role, bool wraps = true);
    QPushButton* smallButton(const QString& text);
    void buildHead(QVBoxLayout& column);
    void buildQuestion(QVBoxLayout& column);
    void buildBody(QVBoxLayout& column);
    void buildFoot(QVBoxLayout& column);

    void renew();   ///< after an event
    void tick();    ///< after a second
    void strike();  ///< likewise
    void showHead();
    void showOffers();
    void showAlarms();
    void showCards();
    void showNext();
    void showQuestion();
    void applyLook();
    StepCardView* newCard();
    std::vector<PlacementKey> keysNow() const;
    std::vector<PlacementKey> keysNext() const;
    void choose(const PlacementKey& key);
    void chooseBeside(int by);
    void press(const PlacementKey& key, CardPress press);
    void stop(const live::Timer& timer);
    void stopNumber(int number);
    void leaveOut();
    void plateLater();
    /// A second touch that lands on what has just moved under the finger.
    bool isSecondTouch();
    /// What the finger aimed at may stand elsewhere now.
    bool hasJustMoved() const;
    bool eventFilter(QObject* watched, QEvent* event) override;

    CookAlong& service_;
    QLocale locale_;
    std::function<void()> sound_;
    TextContext context_;
    LiveText text_;
    std::optional<PlacementKey> chosen_;
    live::milliseconds lastTouch_{-1'000'000};
    live::milliseconds movedAt_{-1'000'000};
    std::vector<PlacementKey> shown_;

    QLabel* headline_ = nullptr;
    QLabel* clock_ = nullptr;
    QLabel* said_ = nullptr;
    OfferBar* leaveOut_ = nullptr;
    OfferBar* later_ = nullptr;
    QWidget* question_ = nullptr;
    QLabel* questionText_ = nullptr;
    QTimeEdit* questionTime_ = nullptr;
    QVBoxLayout* alarmColumn_ = nullptr;
    QVBoxLayout* cardColumn_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    QLabel* nothing_ = nullptr;
    LiveRange* range_ = nullptr;
    std::vector<QLabel*> next_;
    std::vector<AlarmBar*> bars_;
    std::vector<StepCardView*> views_;
    std::int64_t drawnAt_ = 0;  ///< second of the picture of the range
    int secondsToStroke_ = 0;
};

}  // namespace rangeline
