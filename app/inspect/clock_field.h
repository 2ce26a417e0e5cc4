#pragma once
// A field for a moment on the wall clock of the lesson's zone, whatever the computer's own zone is.

#include <QDateTimeEdit>
#include <QLocale>

namespace rangeline {

class ClockField : public QDateTimeEdit {
  public:
    enum class Shows : std::uint8_t { DayAndTime, DateAndTime };
    ClockField(const QLocale& locale, Shows shows, QWidget* parent = nullptr);

    /// Shows the moment's own wall clock.
    void setMoment(const QDateTime& moment);
    /// What is shown, as a moment of that zone.
    QDateTime moment(const QTimeZone& zone) const;
};

}  // namespace rangeline
