#pragma once
// Quantities as lesson files write them, and back: "1 h 20 min", "425 °F", "10.5 in", "2.5 L",
// "9000 Btu/h", "1 1/2". One strict grammar, the same in every locale. What is written is read back
// exactly.

#include <cstdint>
#include <string>
#include <string_view>

#include "base/rational.h"
#include "base/result.h"
#include "base/units.h"
#include "model/dish.h"
#include "model/fault.h"
#include "model/kitchen.h"
#include "model/lesson.h"

namespace rangeline {

// ---- writing: `units` chooses the scale wherever the value is exact in both --------------------

std::string toText(Duration value);  ///< "1 h 20 min", "0 min", "-1 min 30 s"
std::string toText(Instant value);   ///< as the duration from the serving instant
/// Requires a value that is exact in tenths of °F or °C.
std::string toText(Temperature value, Units units);
std::string toText(TemperatureDelta value, Units units);
std::string toText(Length value, Units units);
std::string toText(const Power& value);
std::string toText(const Rational& value);  ///< "1 1/2"; requires a value that is not negative
std::string toText(const Amount& value);    ///< "1 1/2 tsp", "2-3"
std::string volumeText(std::int64_t millilitres);

// ---- reading: the fault has no place yet; its code is BadText, BadUnit or BadNumber ------------

Result<Duration, Fault> parseDuration(std::string_view text);
Result<Temperature, Fault> parseTemperature(std::string_view text);
Result<TemperatureDelta, Fault> parseTemperatureDelta(std::string_view text);
Result<Length, Fault> parseLength(std::string_view text);
Result<Power, Fault> parsePower(std::string_view text);
Result<std::int64_t, Fault> parseVolume(std::string_view text);
/// "2", "3/4", "1 1/2" or "1.5".
Result<Rational, Fault> parseRational(std::string_view text);
Result<Amount, Fault> parseAmount(std::string_view text);

}  // namespace rangeline
