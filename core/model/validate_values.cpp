#include "model/validate_values.h"

#include <algorithm>
#include <array>

#include "model/characters.h"
#include "model/quantity_text.h"

namespace rangeline {
namespace {

constexpr std::size_t longestText = 10'000;
constexpr std::size_t longestId = 100;

}  // namespace

bool ValueChecks::namesAreSound() const {
    constexpr std::array unsound{FaultCode::UnknownReference, FaultCode::DuplicateId,
                                 FaultCode::OutOfRange, FaultCode::TooMany};
    return !full() && std::ranges::none_of(faults_, [&](const Fault& fault) {
        return std::ranges::find(unsound, fault.code) != unsound.end();
    });
}

void ValueChecks::report(const Place& place, FaultCode code, std::vector<std::string> figures) {
    if (!full()) {
        faults_.push_back({code, place.text(), presentable(std::move(figures))});
    }
}

void ValueChecks::whole(const Place& place, std::int64_t value, std::int64_t lowest,
                        std::int64_t highest) {
    if (value < lowest || value > highest) {
        report(place, FaultCode::OutOfRange,
               {std::to_string(value), std::to_string(lowest), std::to_string(highest)});
    }
}

void ValueChecks::duration(const Place& place, Duration value, Duration lowest, Duration highest) {
    if (value < lowest || value > highest) {
        report(place, FaultCode::OutOfRange, {toText(value), toText(lowest), toText(highest)});
    }
}

void ValueChecks::duration(const Place& place, Duration value) {
    duration(place, value, Duration(), longestDuration);
}

void ValueChecks::duration(const Place& place, const std::optional<Duration>& value) {
    duration(place, value.value_or(Duration()));
}

void ValueChecks::offset(const Place& place, Duration value) {
    duration(place, value, -longestDuration, longestDuration);
}

void ValueChecks::temperature(const Place& place, Temperature value) {
    constexpr Temperature lowest = Temperature::celsius(-60);
    constexpr Temperature highest = Temperature::celsius(1000);
    const bool exact = value.exactInCelsius() || value.exactInFahrenheit();
    if (value < lowest || value > highest) {
        report(place, FaultCode::OutOfRange,
               {exact ? toText(value, units_) : std::to_string(value.inCelsius()) + " °C",
                toText(lowest, units_), toText(highest, units_)});
    } else if (!exact) {
        report(place, FaultCode::BadText, {"not-a-temperature", std::to_string(value.inCelsius())});
    }
}

void ValueChecks::difference(const Place& place, TemperatureDelta value) {
    constexpr TemperatureDelta least = TemperatureDelta::fahrenheit(1);
    constexpr TemperatureDelta most = TemperatureDelta::celsius(1000);
    const bool exact = value.units() % 5 == 0 || value.units() % 9 == 0;
    if (value < least || value > most) {
        report(place, FaultCode::OutOfRange,
               {exact ? toText(value, units_) : std::to_string(value.inCelsius()) + " °C",
                toText(least, units_), toText(most, units_)});
    } else if (!exact) {
        report(place, FaultCode::BadText, {"not-a-temperature", std::to_string(value.inCelsius())});
    }
}

void ValueChecks::length(const Place& place, Length value) {
    constexpr Length longest = Length::millimetres(10'000);
    if (value < Length() || value > longest) {
        report(place, FaultCode::OutOfRange,
               {toText(value, units_), toText(Length(), units_), toText(longest, units_)});
    }
}

void ValueChecks::fraction(const Place& place, const Rational& value) {
    constexpr std::int64_t highest = 1'000'000;
    constexpr std::int64_t finest = 1000;
    const std::int64_t whole = value.num() / value.den();
    if (value.num() < 0 || whole > highest) {
        report(place, FaultCode::OutOfRange, {std::to_string(whole), "0", std::to_string(highest)});
    } else if (value.den() > finest) {
        report(place, FaultCode::BadText, {"not-an-amount", toText(value)});
    }
}

void ValueChecks::text(const Place& place, std::string_view value) {
    if (value.size() > longestText) {
        report(place, FaultCode::BadText, {"too-long", excerpt(value)});
        return;
    }
    for (std::string_view rest = value; !rest.empty();) {
        if (!mayStandInText(takeCharacter(rest))) {
            report(place, FaultCode::BadText, {"bad-character", excerpt(value)});
            return;
        }
    }
}

void ValueChecks::texts(const Place& place, const std::vector<std::string>& values) {
    for (std::size_t i = 0; i < values.size(); ++i) {
        text(place.at(i), values[i]);
    }
}

void ValueChecks::id(const Place& place, std::string_view value) {
    if (value.empty() || value.size() > longestId || value.find(' ') != std::string_view::npos) {
        report(place, FaultCode::BadText, {"not-an-id", excerpt(value)});
    } else {
        text(place, value);
    }
}

void ValueChecks::newId(const Place& place, std::string_view value, MetIds& met) {
    id(place, value);
    if (!met.insert(value).second) {
        report(place, FaultCode::DuplicateId, {excerpt(value)});
    }
}

void ValueChecks::kind(const Place& place, const std::string& value, EquipmentRole role) {
    const EquipmentKind* found = findEquipmentKind(value);
    if (found != nullptr && found->role == role) {
        return;
    }
    std::string choices;
    for (const EquipmentKind& kind : equipmentKinds()) {
        if (kind.role == role) {
            choices += (choices.empty() ? "" : ", ") + std::string(kind.key);
        }
    }
    report(place, FaultCode::BadChoice, {excerpt(value), choices});
}

}  // namespace rangeline
