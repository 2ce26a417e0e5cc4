#pragma once
// How long food takes to cool in a room, as if it were of one temperature throughout (a lumped
// body): an estimate for planning, never in place of a thermometer.

#include <optional>

#include "base/units.h"

namespace rangeline {

/// A body that gives off heat to the air, in SI units.
struct LumpedBody {
    double density = 0;       ///< kg/m3
    double heatCapacity = 0;  ///< J/(kg K)
    double conductivity = 0;  ///< W/(m K)
    double transfer = 0;      ///< from its surface to the air, W/(m2 K)
    double thickness = 0;     ///< its volume by its surface that is in the air, m
};

/// How much slower heat moves through the body than off it. Up to lumpedUpTo the middle is hardly
/// warmer than the surface and the estimate holds; beyond, the middle stays warm longer.
double biotNumber(const LumpedBody& body);
inline constexpr double lumpedUpTo = 0.1;

/// In seconds: until what is left of the difference to the room has shrunk to 1/e.
double timeConstant(const LumpedBody& body);

/// In seconds. Nothing where the room never brings it there: a body comes near the temperature of
/// the room but does not reach it.
std::optional<double> secondsToReach(Temperature from, Temperature to, Temperature room,
                                     double timeConstant);

/// How the food lies.
enum class LyingFood {
    OnTray,  ///< an even layer, open above
    OnRack,  ///< an even layer, open above and below
    Pieces   ///< round pieces that do not touch
};

struct CoolingEstimate {
    Duration movingAir;  ///< by an open window or a fan
    Duration stillAir;
    double biot = 0;  ///< in moving air, where it is the larger one
};

/// From hot to cooled. Moist food of the density of water; what steams off, which helps, and what
/// the tray takes up are left out. `size`: how thick the layer or a piece is. Nothing where the
/// room is too warm for it, the food is that cold already, or the size is nothing.
std::optional<CoolingEstimate> estimateCooling(LyingFood lying, Length size, Temperature hot,
                                               Temperature cooled, Temperature room);

}  // namespace rangeline
