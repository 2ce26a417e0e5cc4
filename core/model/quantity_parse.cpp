#include <algorithm>
#include <array>
#include <optional>
#include <span>

#include "model/characters.h"
#include "model/quantity_text.h"

namespace rangeline {
namespace {

/// Figure 0 of a BadText fault is the key of what the text should have been.
Fault badText(const char* wanted, std::string_view text) {
    return {FaultCode::BadText, {}, {wanted, excerpt(text)}};
}

Fault badUnit(std::string_view unit, const char* known) {
    return {FaultCode::BadUnit, {}, {excerpt(unit), known}};
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Reads a text from its beginning, piece by piece.
class Cursor {
  public:
    explicit Cursor(std::string_view text) : rest_(text) {}

    bool done() const { return rest_.empty(); }
    std::string_view rest() const { return rest_; }

    bool take(char c) {
        if (rest_.empty() || rest_.front() != c) {
            return false;
        }
        rest_.remove_prefix(1);
        return true;
    }

    /// At most nine digits, so that no sum or product below overflows.
    std::optional<std::int64_t> whole() {
        const std::string_view digits = takeDigits();
        if (digits.empty() || digits.size() > 9) {
            return std::nullopt;
        }
        return valueOf(digits);
    }

    /// "10", "10.5": the value times 10^decimals, with at most so many places.
    std::optional<std::int64_t> decimal(int decimals) {
        auto value = whole();
        if (!value) {
            return std::nullopt;
        }
        std::string places;
        if (take('.')) {
            places = takeDigits();
            if (places.empty() || places.size() > static_cast<std::size_t>(decimals)) {
                return std::nullopt;
            }
        }
        places.resize(static_cast<std::size_t>(decimals), '0');
        for (int i = 0; i < decimals; ++i) {
            *value *= 10;
        }
        return *value + valueOf(places);
    }

    /// All up to the next space.
    std::string_view word() {
        const std::size_t length = std::min(rest_.find(' '), rest_.size());
        const std::string_view found = rest_.substr(0, length);
        rest_.remove_prefix(length);
        return found;
    }

  private:
    std::string_view takeDigits() {
        const auto end = std::ranges::find_if_not(rest_, isDigit);
        const auto length = static_cast<std::size_t>(end - rest_.begin());
        const std::string_view digits = rest_.substr(0, length);
        rest_.remove_prefix(length);
        return digits;
    }

    static std::int64_t valueOf(std::string_view digits) {
        std::int64_t value = 0;
        for (const char c : digits) {
            value = value * 10 + (c - '0');
        }
        return value;
    }

    std::string_view rest_;
};

/// A number in millionths and the word after it.
struct Measured {
    std::int64_t millionths = 0;
    std::string_view unit;
};

std::optional<Measured> parseMeasured(std::string_view text) {
    Cursor cursor(text);
    const bool negative = cursor.take('-');
    const auto value = cursor.decimal(6);
    if (!value) {
        return std::nullopt;
    }
    cursor.take(' ');
    return Measured{negative ? -*value : *value, cursor.rest()};
}

/// Tenths on the scale that the text names; nothing if it is no temperature at all.
struct Tenths {
    std::int64_t value = 0;
    bool fahrenheit = false;
};

Result<Tenths, Fault> parseTenths(std::string_view text) {
    constexpr std::int64_t millionthsInTenth = 100'000;
    const auto measured = parseMeasured(text);
    if (!measured || measured->millionths % millionthsInTenth != 0) {
        return badText("not-a-temperature", text);
    }
    const std::string_view unit = measured->unit;
    const bool fahrenheit = unit == "°F" || unit == "F";
    if (!fahrenheit && unit != "°C" && unit != "C") {
        return badUnit(unit, "°F, °C");
    }
    return Tenths{measured->millionths / millionthsInTenth, fahrenheit};
}

/// The value where it is a multiple of the least step of the unit, in base units.
struct UnitScale {
    std::string_view name;
    std::int64_t millionthsInStep;
    std::int64_t baseInStep;
};

/// What no longer is written with the digits that are read, in the smallest unit of so many.
constexpr std::int64_t tooMuchOf(std::int64_t baseInSmallest) {
    return 1'000'000'000 * baseInSmallest;
}

Result<std::int64_t, Fault> parseScaled(std::string_view text, const char* wanted,
                                        std::span<const UnitScale> scales, const char* known,
                                        std::int64_t tooMuch) {
    const auto measured = parseMeasured(text);
    if (!measured) {
        return badText(wanted, text);
    }
    const auto scale = std::ranges::find(scales, measured->unit, &UnitScale::name);
    if (scale == scales.end()) {
        return badUnit(measured->unit, known);
    }
    if (measured->millionths % scale->millionthsInStep != 0) {
        return badText(wanted, text);
    }
    const std::int64_t value = measured->millionths / scale->millionthsInStep * scale->baseInStep;
    if (value >= tooMuch || value <= -tooMuch) {
        return badText(wanted, text);
    }
    return value;
}

std::optional<Rational> takeRational(Cursor& cursor) {
    Cursor decimal = cursor;
    const auto whole = cursor.whole();
    if (!whole) {
        return std::nullopt;
    }
    if (!cursor.done() && cursor.rest().front() == '.') {
        const auto thousandths = decimal.decimal(3);
        cursor = decimal;
        return thousandths ? std::optional(Rational(*thousandths, 1000)) : std::nullopt;
    }
    Cursor fraction = cursor;
    std::int64_t before = 0;
    std::optional<std::int64_t> over = whole;
    if (fraction.take(' ')) {
        before = *whole;
        over = fraction.whole();
    }
    if (!over || !fraction.take('/')) {
        return Rational(*whole);
    }
    const auto under = fraction.whole();
    if (!under || *under == 0) {
        return std::nullopt;
    }
    cursor = fraction;
    return Rational(before) + Rational(*over, *under);
}

}  // namespace

Result<Duration, Fault> parseDuration(std::string_view text) {
    constexpr std::array<UnitScale, 3> units{{{"h", 0, 3600}, {"min", 0, 60}, {"s", 0, 1}}};
    Cursor cursor(text);
    const bool negative = cursor.take('-');
    std::int64_t seconds = 0;
    auto next = units.begin();  // the units come in this order, each at most once
    do {
        const auto number = cursor.whole();
        if (!number) {
            return badText("not-a-duration", text);
        }
        const bool spaced = cursor.take(' ');
        const std::string_view word = cursor.word();
        if (std::ranges::find(units, word, &UnitScale::name) == units.end()) {
            return badUnit(word, "h, min, s");
        }
        next = std::find_if(next, units.end(), [&](const auto& u) { return u.name == word; });
        if (!spaced || next == units.end()) {
            return badText("not-a-duration", text);
        }
        seconds += *number * next->baseInStep;
        ++next;
    } while (cursor.take(' '));
    return Duration::seconds(negative ? -seconds : seconds);
}

Result<Temperature, Fault> parseTemperature(std::string_view text) {
    const auto tenths = parseTenths(text);
    if (!tenths.ok()) {
        return tenths.error();
    }
    const auto [value, fahrenheit] = tenths.value();
    return fahrenheit ? Temperature::tenthsFahrenheit(value) : Temperature::tenthsCelsius(value);
}

Result<TemperatureDelta, Fault> parseTemperatureDelta(std::string_view text) {
    const auto tenths = parseTenths(text);
    if (!tenths.ok()) {
        return tenths.error();
    }
    const auto [value, fahrenheit] = tenths.value();
    return TemperatureDelta::ofUnits(value * (fahrenheit ? 5 : 9));
}

Result<Length, Fault> parseLength(std::string_view text) {
    constexpr std::array<UnitScale, 3> scales{{{"in", 100, 2540}, {"cm", 10, 100}, {"mm", 1, 1}}};
    const auto nanometres =
        parseScaled(text, "not-a-length", scales, "in, cm, mm", tooMuchOf(1'000'000));
    if (!nanometres.ok()) {
        return nanometres.error();
    }
    return Length::nanometres(nanometres.value());
}

Result<std::int64_t, Fault> parseVolume(std::string_view text) {
    constexpr std::array<UnitScale, 2> scales{{{"mL", 1'000'000, 1}, {"L", 1000, 1}}};
    return parseScaled(text, "not-a-volume", scales, "mL, L", tooMuchOf(1));
}

Result<Power, Fault> parsePower(std::string_view text) {
    constexpr std::array<UnitScale, 2> scales{{{"W", 1'000'000, 1}, {"Btu/h", 1'000'000, 1}}};
    const auto amount = parseScaled(text, "not-a-power", scales, "W, Btu/h", tooMuchOf(1));
    if (!amount.ok()) {
        return amount.error();
    }
    return Power{amount.value(), text.ends_with('W') ? Power::Unit::Watt : Power::Unit::BtuPerHour};
}

Result<Rational, Fault> parseRational(std::string_view text) {
    Cursor cursor(text);
    const auto value = takeRational(cursor);
    if (!value || !cursor.done()) {
        return badText("not-an-amount", text);
    }
    return *value;
}

Result<Amount, Fault> parseAmount(std::string_view text) {
    Cursor cursor(text);
    const auto low = takeRational(cursor);
    auto high = low;
    if (low && cursor.take('-')) {
        high = takeRational(cursor);
    }
    if (!high || (!cursor.done() && !cursor.take(' '))) {
        return badText("not-an-amount", text);
    }
    const bool unitMissing = cursor.done() && text.ends_with(' ');
    if (unitMissing || (!cursor.done() && isDigit(cursor.rest().front()))) {
        return badText("not-an-amount", text);
    }
    return Amount{*low, *high, std::string(cursor.rest())};
}

}  // namespace rangeline
