#pragma once
// A moment that a lesson may leave open: a tick and a clock.

#include <QCheckBox>
#include <QTimeZone>
#include <initializer_list>
#include <optional>

#include "base/units.h"
#include "inspect/clock_field.h"

namespace rangeline {

class InstantField : public QWidget {
    Q_OBJECT

  public:
    InstantField(const QString& name, const QLocale& locale, QWidget* parent = nullptr);

    void setTwelveHours(bool twelve) { clock_->setTwelveHours(twelve); }
    /// `serving` is the moment that instants are counted from.
    void setInstant(const std::optional<Instant>& instant, const QDateTime& serving);
    /// Nothing where it is not ticked. The wall clock shown is kept when serving has moved.
    std::optional<Instant> instant(const QDateTime& serving) const;
    /// Takes over what is typed; why it is no time, or nothing.
    QString readTyped();
    /// Goes along when serving moves.
    void moveBy(qint64 seconds);

  Q_SIGNALS:
    /// Ticked, not ticked any more, or set, by hand.
    void edited();

  private:
    QCheckBox* set_;
    ClockField* clock_;
};

/// Takes over what is typed in all of them; why the first that is no time is none, or nothing.
QString readTimes(ClockField& serving, std::initializer_list<InstantField*> others);

}  // namespace rangeline
