#pragma once
// What a cook types into a field, read with some mercy, and values as such a field shows them.

#include <QString>
#include <optional>

#include "base/units.h"
#include "model/dish.h"
#include "model/lesson.h"

namespace rangeline {

/// "5" (minutes), "5 min", "1 h 20 min", "1h20". Empty for anything else.
std::optional<Duration> durationIn(const QString& text);
QString fieldText(Duration length);
/// Empty text for none.
QString fieldText(const std::optional<Duration>& length);
/// An empty field is none; empty for what is no length of time.
std::optional<std::optional<Duration>> durationOrNone(const QString& text);

/// "375" in these units, or with its scale: "375 F", "190 °C". A text as fieldText() shows `before`
/// is just that: what is shown is rounded.
std::optional<Temperature> temperatureIn(const QString& text, Units units,
                                         std::optional<Temperature> before = {});
QString fieldText(Temperature temperature, Units units);

/// "10" in these units (inches or centimetres), or with its unit: "10 in", "26 cm". `before` as for
/// temperatures.
std::optional<Length> lengthIn(const QString& text, Units units, std::optional<Length> before = {});
QString fieldText(Length length, Units units);

/// "hands", "a watching eye", "nobody"; in small or capital letters.
QString attentionWord(Attention attention);
std::optional<Attention> attentionIn(const QString& word);
/// "roast in packet"
QString techniqueWord(const std::string& technique);

/// "300 ml", "2.5 L", "1 1/2 cups", "1 qt"; in millilitres, rounded.
std::optional<std::int64_t> volumeIn(const QString& text);

/// "2", "1 1/2", "1½", "0.5".
std::optional<Rational> rationalIn(const QString& text);

}  // namespace rangeline
