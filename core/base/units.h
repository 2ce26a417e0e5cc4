#pragma once
// Quantities with units. Each type is the only currency for its quantity: no bare number of
// seconds or degrees crosses a function border. All are whole numbers of a unit fine enough that
// the values cooks write (whole seconds, tenths of a degree in °F or °C, sixteenths of an inch,
// tenths of a millimetre) are exact.

#include <algorithm>
#include <compare>
#include <cstdint>

namespace rangeline {

/// A length of time in whole seconds; may be negative (an offset).
class Duration {
  public:
    constexpr Duration() = default;
    static constexpr Duration seconds(std::int64_t s) { return Duration(s); }
    static constexpr Duration minutes(std::int64_t m) { return Duration(m * 60); }
    static constexpr Duration hours(std::int64_t h) { return Duration(h * 3600); }

    constexpr std::int64_t inSeconds() const { return seconds_; }
    /// Minutes as a fraction, for display and statistics only.
    constexpr double inMinutes() const { return static_cast<double>(seconds_) / 60.0; }

    constexpr Duration operator-() const { return Duration(-seconds_); }
    constexpr Duration& operator+=(Duration o) {
        seconds_ += o.seconds_;
        return *this;
    }
    constexpr Duration& operator-=(Duration o) {
        seconds_ -= o.seconds_;
        return *this;
    }
    friend constexpr Duration operator+(Duration a, Duration b) { return a += b; }
    friend constexpr Duration operator-(Duration a, Duration b) { return a -= b; }
    friend constexpr Duration operator*(Duration a, std::int64_t n) {
        return Duration(a.seconds_ * n);
    }
    friend constexpr auto operator<=>(Duration, Duration) = default;

  private:
    explicit constexpr Duration(std::int64_t s) : seconds_(s) {}
    std::int64_t seconds_ = 0;
};

/// A point in time: whole seconds after the lesson's main serving instant (before it: negative).
class Instant {
  public:
    constexpr Instant() = default;
    static constexpr Instant serving() { return Instant(); }
    static constexpr Instant atSeconds(std::int64_t s) { return Instant(s); }
    static constexpr Instant atMinutes(std::int64_t m) { return Instant(m * 60); }

    constexpr std::int64_t inSeconds() const { return seconds_; }

    friend constexpr Instant operator+(Instant t, Duration d) {
        return Instant(t.seconds_ + d.inSeconds());
    }
    friend constexpr Instant operator-(Instant t, Duration d) {
        return Instant(t.seconds_ - d.inSeconds());
    }
    friend constexpr Duration operator-(Instant a, Instant b) {
        return Duration::seconds(a.seconds_ - b.seconds_);
    }
    friend constexpr auto operator<=>(Instant, Instant) = default;

  private:
    explicit constexpr Instant(std::int64_t s) : seconds_(s) {}
    std::int64_t seconds_ = 0;
};

/// Half-open [begin, end). Empty when end <= begin; an empty interval overlaps nothing.
struct Interval {
    Instant begin;
    Instant end;

    constexpr bool empty() const { return end <= begin; }
    constexpr Duration length() const { return empty() ? Duration() : end - begin; }
    constexpr bool overlaps(const Interval& o) const {
        return !empty() && !o.empty() && begin < o.end && o.begin < end;
    }
    constexpr bool contains(Instant t) const { return begin <= t && t < end; }
    friend constexpr Interval intersection(const Interval& a, const Interval& b) {
        return {std::max(a.begin, b.begin), std::min(a.end, b.end)};
    }
    friend constexpr auto operator<=>(const Interval&, const Interval&) = default;
};

/// A difference of temperatures, in ninetieths of a kelvin (0.1 °C = 9, 0.1 °F = 5).
class TemperatureDelta {
  public:
    constexpr TemperatureDelta() = default;
    static constexpr TemperatureDelta ofUnits(std::int64_t u) { return TemperatureDelta(u); }
    static constexpr TemperatureDelta celsius(std::int64_t d) { return TemperatureDelta(d * 90); }
    static constexpr TemperatureDelta fahrenheit(std::int64_t d) {
        return TemperatureDelta(d * 50);
    }
    constexpr std::int64_t units() const { return units_; }
    constexpr double inCelsius() const { return static_cast<double>(units_) / 90.0; }
    constexpr double inFahrenheit() const { return static_cast<double>(units_) / 50.0; }
    friend constexpr auto operator<=>(TemperatureDelta, TemperatureDelta) = default;

  private:
    explicit constexpr TemperatureDelta(std::int64_t u) : units_(u) {}
    std::int64_t units_ = 0;
};

/// A temperature, in ninetieths of a degree Celsius: tenths of °C and of °F are both exact.
class Temperature {
  public:
    constexpr Temperature() = default;
    static constexpr Temperature ofUnits(std::int64_t u) { return Temperature(u); }
    static constexpr Temperature celsius(std::int64_t d) { return Temperature(d * 90); }
    static constexpr Temperature fahrenheit(std::int64_t d) { return Temperature((d - 32) * 50); }
    static constexpr Temperature tenthsCelsius(std::int64_t d) { return Temperature(d * 9); }
    static constexpr Temperature tenthsFahrenheit(std::int64_t d) {
        return Temperature((d - 320) * 5);
    }

    constexpr std::int64_t units() const { return units_; }
    constexpr double inCelsius() const { return static_cast<double>(units_) / 90.0; }
    constexpr double inFahrenheit() const { return static_cast<double>(units_) / 50.0 + 32.0; }
    /// Whether the value is a whole number of tenths on that scale.
    constexpr bool exactInCelsius() const { return units_ % 9 == 0; }
    constexpr bool exactInFahrenheit() const { return units_ % 5 == 0; }

    friend constexpr TemperatureDelta operator-(Temperature a, Temperature b) {
        return TemperatureDelta::ofUnits(a.units_ - b.units_);
    }
    friend constexpr Temperature operator+(Temperature t, TemperatureDelta d) {
        return Temperature(t.units_ + d.units());
    }
    friend constexpr auto operator<=>(Temperature, Temperature) = default;

  private:
    explicit constexpr Temperature(std::int64_t u) : units_(u) {}
    std::int64_t units_ = 0;
};

/// A length in whole nanometres (1/16 in = 1 587 500 nm exactly; inch 25.4 mm, NIST).
class Length {
  public:
    constexpr Length() = default;
    static constexpr Length nanometres(std::int64_t nm) { return Length(nm); }
    static constexpr Length millimetres(std::int64_t mm) { return Length(mm * 1'000'000); }
    static constexpr Length inches(std::int64_t in) { return Length(in * 25'400'000); }
    constexpr std::int64_t inNanometres() const { return nanometres_; }
    constexpr double inMillimetres() const { return static_cast<double>(nanometres_) / 1e6; }
    constexpr double inInches() const { return static_cast<double>(nanometres_) / 25.4e6; }
    friend constexpr auto operator<=>(Length, Length) = default;

  private:
    explicit constexpr Length(std::int64_t nm) : nanometres_(nm) {}
    std::int64_t nanometres_ = 0;
};

}  // namespace rangeline
