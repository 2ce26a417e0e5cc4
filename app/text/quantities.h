#pragma once
// Times, temperatures, lengths and amounts as a cook reads them. The locale and the units are
// arguments; nothing here asks the system.

#include <QDateTime>
#include <QLocale>
#include <QString>
#include <cstdint>

#include "base/units.h"
#include "model/dish.h"
#include "model/food_weights.h"
#include "model/kitchen_amount.h"
#include "model/lesson.h"

namespace rangeline {

struct TextContext;

/// "1 h 20 min", "12 min", "1 min 30 s", "30 s", "0 min"; negative lengths carry a minus sign.
QString durationText(Duration length, const QLocale& locale);

/// "425 °F" or "218.3 °C": at most one decimal.
QString temperatureText(Temperature temperature, Units units, const QLocale& locale);

/// "11½ in" or "29.2 cm"; below 1 cm "6.4 mm".
QString lengthText(Length length, Units units, const QLocale& locale);

/// Volumes of vessels: "2½ qt" or "2.4 l".
QString volumeText(std::int64_t millilitres, Units units, const QLocale& locale);

/// "½", "1¾", "2 5⁄7"; whole numbers and fractions with a large denominator as decimals.
QString fractionText(const Rational& value, const QLocale& locale);

/// "1½ tsp", "2–3 cups", "450 g"; the unit is a key of the unit table or a word of the cook's.
QString amountText(const Amount& amount, const QLocale& locale);
/// The same with how near it is: "a scant ¼ cup".
QString measuredText(const KitchenAmount& amount, const QLocale& locale);

/// "80 g", "1–1¼ lb": rounded as it is weighed in a kitchen of those units.
QString weightText(const KnownWeight& weight, Units units, const QLocale& locale);

/// Clock times of one lesson: its serving instant, its zone, and its way to read a clock.
class Clock {
  public:
    Clock(const Head& head, const QLocale& locale);
    explicit Clock(const TextContext& text);

    /// The moment in the lesson's zone. The serving time is taken as UTC if the zone is unknown.
    QDateTime moment(Instant instant) const;
    /// "5:10 PM" or "17:10", with seconds if there are any and with the day if it is not the day of
    /// serving ("Fri 5:10 PM").
    QString at(Instant instant) const;
    /// "from 5:10 to 5:55 PM"; an empty interval reads "at 5:10 PM".
    QString span(const Interval& interval) const;
    /// "2027-10-09T17:10:00-05:00"
    QString iso(Instant instant) const;
    /// Whether hours are counted to twelve and marked AM and PM, as US kitchens do.
    bool twelveHours() const { return twelveHours_; }

  private:
    QString timeFormat(const QTime& time, bool marked) const;
    QString dayOf(const QDateTime& moment) const;

    QDateTime serving_;
    QLocale locale_;
    bool twelveHours_;
};

}  // namespace rangeline
