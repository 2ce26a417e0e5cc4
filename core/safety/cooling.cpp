#include "safety/cooling.h"

#include <algorithm>
#include <cmath>

namespace rangeline {
namespace {

// Moist food (heat capacity and conductivity of vegetables and lean meat), from memory. Air takes
// up 5 to 25 W/(m2 K) where nothing but its own warmth moves it, with what the surface radiates
// about 10, and 25 or more where it is moved: common figures, from memory.
constexpr double density = 1000;
constexpr double heatCapacity = 3700;
constexpr double conductivity = 0.5;
constexpr double stillAir = 10;
constexpr double movingAir = 25;

/// Volume by open surface.
double thicknessOf(LyingFood lying, Length size) {
    const double metres = static_cast<double>(size.inNanometres()) * 1e-9;
    switch (lying) {
        case LyingFood::OnTray:
            return metres;
        case LyingFood::OnRack:
            return metres / 2;
        case LyingFood::Pieces:
            return metres / 6;
    }
    return metres;
}

Duration toTheMinute(double seconds) {
    return Duration::minutes(std::max<std::int64_t>(1, std::llround(seconds / 60)));
}

}  // namespace

double biotNumber(const LumpedBody& body) {
    return body.transfer * body.thickness / body.conductivity;
}

double timeConstant(const LumpedBody& body) {
    return body.density * body.heatCapacity * body.thickness / body.transfer;
}

std::optional<double> secondsToReach(Temperature from, Temperature to, Temperature room,
                                     double timeConstant) {
    const double before = (from - room).inCelsius();
    const double after = (to - room).inCelsius();
    if (before * after <= 0 || std::abs(after) > std::abs(before)) {
        return std::nullopt;
    }
    return timeConstant * std::log(before / after);
}

std::optional<CoolingEstimate> estimateCooling(LyingFood lying, Length size, Temperature hot,
                                               Temperature cooled, Temperature room) {
    if (size <= Length() || hot <= cooled || cooled <= room) {
        return std::nullopt;
    }
    LumpedBody food{density, heatCapacity, conductivity, stillAir, thicknessOf(lying, size)};
    CoolingEstimate estimate;
    estimate.stillAir = toTheMinute(*secondsToReach(hot, cooled, room, timeConstant(food)));
    food.transfer = movingAir;
    estimate.movingAir = toTheMinute(*secondsToReach(hot, cooled, room, timeConstant(food)));
    estimate.biot = biotNumber(food);
    return estimate;
}

}  // namespace rangeline
