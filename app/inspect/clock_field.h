#pragma once
// A field for a moment on the wall clock of the lesson's zone, whatever the computer's own zone is.

#include <QDateEdit>
#include <QLineEdit>
#include <QLocale>
#include <QTimeZone>

namespace rangeline {

/// Shows times as the rest of the window does. A time is typed in one go, in any of the forms of
/// timeOfDay(), or stepped with the arrow keys; what is no time changes nothing, stays to be mended
/// and is said beside the field.
class ClockField : public QWidget {
    Q_OBJECT

  public:
    /// Time: on the day nearest to the moment set.
    enum class Shows : std::uint8_t { Time, DateAndTime };
    /// The name is what screen readers say for the time; the date's is made from it.
    ClockField(const QString& name, const QLocale& locale, Shows shows, QWidget* parent = nullptr);

    /// As Clock::twelveHours says for the lesson.
    void setTwelveHours(bool twelve);
    /// Shows the moment's own wall clock.
    void setMoment(const QDateTime& moment);
    /// What is shown, as a moment of that zone.
    QDateTime moment(const QTimeZone& zone) const;
    /// The same without a zone.
    QDateTime wallClock() const;
    /// Takes over what is typed and not taken over yet.
    void read();
    /// Why what is typed is no time, as a sentence; empty: it is one.
    QString refusal() const;

  Q_SIGNALS:
    /// Changed by hand, with a whole time.
    void edited();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void show();
    void step(int minutes);
    void take(const QDateTime& wall);

    QString name_;
    QLocale locale_;
    QDateTime wall_;  ///< in UTC, where every wall clock exists
    bool twelve_ = false;
    QDateEdit* date_ = nullptr;  ///< null where only the time is shown
    QLineEdit* time_;
};

}  // namespace rangeline
