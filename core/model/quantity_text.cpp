#include "model/quantity_text.h"

#include <array>
#include <cstdlib>
#include <utility>

namespace rangeline {
namespace {

/// A whole number of 1/10^decimals as the shortest decimal fraction: (2650, 2) is "26.5".
std::string decimalText(std::int64_t value, int decimals) {
    std::string digits = std::to_string(std::abs(value));
    const auto places = static_cast<std::size_t>(decimals);
    if (digits.size() <= places) {
        digits.insert(0, places + 1 - digits.size(), '0');
    }
    digits.insert(digits.size() - places, ".");
    digits.erase(digits.find_last_not_of('0') + 1);
    if (digits.back() == '.') {
        digits.pop_back();
    }
    return (value < 0 ? "-" : "") + digits;
}

/// The scale to write in: the wanted one if the value is exact in it, else the other.
bool inFahrenheit(std::int64_t units, Units wanted) {
    const bool fahrenheit = units % 5 == 0;
    return wanted == Units::UsCustomary ? fahrenheit : fahrenheit && units % 9 != 0;
}

}  // namespace

std::string toText(Duration value) {
    constexpr std::array units{std::pair{3600, " h"}, std::pair{60, " min"}, std::pair{1, " s"}};
    std::int64_t rest = std::abs(value.inSeconds());
    if (rest == 0) {
        return "0 min";
    }
    std::string text = value < Duration() ? "-" : "";
    const char* gap = "";
    for (const auto& [seconds, unit] : units) {
        if (rest >= seconds) {
            text += gap + std::to_string(rest / seconds) + unit;
            rest %= seconds;
            gap = " ";
        }
    }
    return text;
}

std::string toText(Instant value) {
    return toText(value - Instant::serving());
}

std::string toText(Temperature value, Units units) {
    // 32 °F is a whole number of tenths in both scales, so the offset changes no exactness.
    if (inFahrenheit(value.units(), units)) {
        return decimalText(value.units() / 5 + 320, 1) + " °F";
    }
    return decimalText(value.units() / 9, 1) + " °C";
}

std::string toText(TemperatureDelta value, Units units) {
    if (inFahrenheit(value.units(), units)) {
        return decimalText(value.units() / 5, 1) + " °F";
    }
    return decimalText(value.units() / 9, 1) + " °C";
}

std::string toText(Length value, Units units) {
    constexpr std::int64_t nanometresInTenThousandthInch = 2540;
    constexpr std::int64_t nanometresInMillimetre = 1'000'000;
    constexpr std::int64_t nanometresInCentimetre = 10'000'000;
    const std::int64_t nm = value.inNanometres();
    const bool metric = units == Units::Metric && nm % nanometresInMillimetre == 0;
    if (nm % nanometresInTenThousandthInch == 0 && !metric) {
        return decimalText(nm / nanometresInTenThousandthInch, 4) + " in";
    }
    if (nm % nanometresInCentimetre == 0) {
        return std::to_string(nm / nanometresInCentimetre) + " cm";
    }
    return decimalText(nm, 6) + " mm";
}

std::string toText(const Power& value) {
    return std::to_string(value.amount) + (value.unit == Power::Unit::Watt ? " W" : " Btu/h");
}

std::string volumeText(std::int64_t millilitres) {
    if (millilitres >= 1000 && millilitres % 100 == 0) {
        return decimalText(millilitres, 3) + " L";
    }
    return std::to_string(millilitres) + " mL";
}

std::string toText(const Rational& value) {
    const std::int64_t whole = value.num() / value.den();
    const std::int64_t part = value.num() % value.den();
    if (part == 0) {
        return std::to_string(whole);
    }
    const std::string fraction = std::to_string(part) + "/" + std::to_string(value.den());
    return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

std::string toText(const Amount& value) {
    std::string text = toText(value.low);
    if (value.high != value.low) {
        text += "-" + toText(value.high);
    }
    return value.unit.empty() ? text : text + " " + value.unit;
}

}  // namespace rangeline
