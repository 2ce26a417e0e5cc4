#pragma once
// What stands where in the kitchen at one instant: on the burners, in the ovens' slots and
// elsewhere. No widget and no picture yet, so that window and paper tell the same.

#include <QString>
#include <QStringList>
#include <vector>

#include "analysis/use_index.h"
#include "text/names.h"

namespace rangeline {

/// A vessel with food in it.
struct StandingVessel {
    QString name;  ///< "sauté pan 2"
    Length width;
    Length depth;  ///< equal to width where it is round
    QString step;  ///< what goes on in it: "Simmer the glaze"
    bool waiting =
        false;         ///< taken, but no step is running: kept hot, or waiting for its next step
    PlacementKey key;  ///< of that step

    bool isRound() const { return width == depth; }
};

struct BurnerScene {
    QString name;
    Length widest;    ///< widest vessel it takes
    Length fromLeft;  ///< centre, from the front left corner of the range top
    Length fromFront;
    QString level;  ///< "medium-high"; empty where nothing is on it
    std::vector<StandingVessel> vessels;
};

enum class OvenState : std::uint8_t {
    Off,
    Warming,  ///< turned on, not yet at its first setting
    Holding,  ///< at its setting
    Changing  ///< on its way from one setting to the next
};

struct OvenSlotScene {
    QString vessel;
    QString step;
    PlacementKey key;
    int slots = 1;  ///< of the load, this one and those below it
};

struct OvenScene {
    QString name;
    OvenState state = OvenState::Off;
    QString setting;  ///< "425 °F"; what it is on its way to while warming or changing
    int slots = 1;
    std::vector<std::pair<int, OvenSlotScene>> loads;  ///< with their first slot, from 0 at the top
};

struct RangeScene {
    QString clock;      ///< "5:12 PM"; empty: neither it nor toPlating is shown
    QString toPlating;  ///< "38 min to plating"; "8 min after" once it is past
    Length width;       ///< of the range top
    Length depth;
    std::vector<BurnerScene> burners;
    std::vector<OvenScene> ovens;
    QStringList elsewhere;  ///< "bowl: Whisk the dressing"
};

/// For one group's station. `text` belongs to the index.
RangeScene rangeScene(const UseIndex& index, const TextContext& text, Instant at, int group = 0);

/// "off", "warming up to 425 °F", "at 425 °F"
QString ovenStateText(const OvenScene& oven);

/// The scene in sentences, for those who do not see the picture: one line for each thing.
QStringList sceneLines(const RangeScene& scene);

}  // namespace rangeline
