#pragma once
// A field for a moment on the wall clock of the lesson's zone, whatever the computer's own zone is.

#include <QDateTimeEdit>
#include <QLocale>

namespace rangeline {

/// Shows times as the rest of the window does; typed times may have twelve hours with AM or PM or
/// twenty-four without.
class ClockField : public QDateTimeEdit {
  public:
    enum class Shows : std::uint8_t { DayAndTime, DateAndTime };
    ClockField(const QLocale& locale, Shows shows, QWidget* parent = nullptr);

    /// As Clock::twelveHours says for the lesson.
    void setTwelveHours(bool twelve);
    /// Shows the moment's own wall clock.
    void setMoment(const QDateTime& moment);
    /// What is shown, as a moment of that zone.
    QDateTime moment(const QTimeZone& zone) const;

  protected:
    QDateTime dateTimeFromText(const QString& text) const override;
    QValidator::State validate(QString& text, int& position) const override;

  private:
    QString asShown(const QString& typed) const;

    QString day_;
    QString time_;
};

}  // namespace rangeline
