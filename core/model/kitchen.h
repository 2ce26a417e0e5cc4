#pragma once
// The equipment and the crew at hand. A thing is described once and counted; a new kind of ware or
// pool is a row of data (see equipment_kinds.h), not a new type.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/rational.h"
#include "base/units.h"

namespace rangeline {

/// Heat output as its maker states it (1 Btu/h = 0.2931 W).
struct Power {
    enum class Unit : std::uint8_t { Watt, BtuPerHour };
    std::int64_t amount = 0;  ///< > 0
    Unit unit = Unit::Watt;

    double watts() const;
    friend bool operator==(const Power&, const Power&) = default;
};

struct Burner {
    BurnerId id;
    std::string name;
    Length widestVessel;  ///< wider vessels do not go on it
    std::optional<Power> power;
    /// Centre of the burner seen from above, from the front left corner of the range top.
    Length fromLeft;
    Length fromFront;

    friend bool operator==(const Burner&, const Burner&) = default;
};

enum class OvenMode : std::uint8_t { Bake, Convection, Broil };

/// One measured point of warming up from the room's temperature.
struct WarmUpPoint {
    Temperature to;
    Duration takes;

    friend bool operator==(const WarmUpPoint&, const WarmUpPoint&) = default;
};

struct Oven {
    OvenId id;
    std::string name;
    int slots = 1;  ///< rack slots, numbered from 0 at the top
    Temperature lowest;
    Temperature highest;
    TemperatureDelta dialStep = TemperatureDelta::fahrenheit(25);
    std::vector<OvenMode> modes{OvenMode::Bake};
    std::vector<WarmUpPoint> warmUp;  ///< ascending in temperature, at least one
    TemperatureDelta heatsPerMinute = TemperatureDelta::fahrenheit(10);
    TemperatureDelta coolsPerMinute = TemperatureDelta::fahrenheit(5);
    Duration modeChange;  ///< extra when the mode changes

    /// From the room's temperature: linear between and beyond the measured points, never negative.
    Duration warmUpTo(Temperature t) const;
    /// The least time the oven stands empty between loads at these settings; zero if both equal.
    Duration changeOver(Temperature from, OvenMode fromMode, Temperature to, OvenMode toMode) const;
    /// The dial's settings inside [low, high], ascending. The dial counts from zero in its own
    /// scale: 25 °F steps are 325, 350, ...; 10 °C steps are 160, 170, ...
    std::vector<Temperature> settingsWithin(Temperature low, Temperature high) const;

    friend bool operator==(const Oven&, const Oven&) = default;
};

/// How a ware is made ready for its next use.
struct Cleaning {
    Duration takes;              ///< hands of one cook, at pace 1; zero: needs none
    std::optional<PoolId> sink;  ///< takes one of this pool meanwhile; none: wiped, no sink

    friend bool operator==(const Cleaning&, const Cleaning&) = default;
};

/// Interchangeable vessels, boards or tools that are taken for a whole chain and cleaned after.
struct Ware {
    WareId id;
    std::string name;
    std::string kind;  ///< key of an EquipmentKind with role Ware
    int count = 1;
    Length width;                 ///< diameter, or the longer side
    std::optional<Length> depth;  ///< the shorter side, if not round
    std::optional<std::int64_t> millilitres;
    int rackSlots = 1;  ///< oven rack slots it takes
    Cleaning cleaning;

    friend bool operator==(const Ware&, const Ware&) = default;
};

/// Things that are only counted: fridge shelves, sinks, counter space, sockets.
struct Pool {
    PoolId id;
    std::string name;
    std::string kind;  ///< key of an EquipmentKind with role Pool
    int capacity = 1;

    friend bool operator==(const Pool&, const Pool&) = default;
};

struct Cook {
    CookId id;
    std::string name;
    int pacePercent = 100;         ///< of the card's time for hands work: 200 takes twice as long
    std::vector<std::string> can;  ///< abilities that steps may ask for, such as "teacher"

    friend bool operator==(const Cook&, const Cook&) = default;
};

struct Kitchen {
    std::string name;
    Length rangeWidth;
    std::vector<Burner> burners;
    std::vector<Oven> ovens;
    std::vector<Ware> wares;
    std::vector<Pool> pools;
    std::vector<Cook> cooks;
    int watchLimit = 3;  ///< things one cook can watch at once
    /// How warm the room is while there is cooking; none: not known, and not taken as hot.
    std::optional<Temperature> room;

    friend bool operator==(const Kitchen&, const Kitchen&) = default;
};

}  // namespace rangeline
