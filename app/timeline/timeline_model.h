#pragma once
// Everything that a picture of a lesson along time shows, ready to be laid out and painted: nothing
// about the lesson is worked out after this.

#include <QString>
#include <cstdint>
#include <functional>
#include <vector>

#include "analysis/equipment_ref.h"
#include "base/units.h"
#include "model/dish.h"
#include "model/placement.h"

namespace rangeline {

/// In the order in which lanes stand on the page; a step's main lane is the first of OvenSlot,
/// Burner, Ware, Cook, Pool, Counter that it has a part in.
enum class LaneKind : std::uint8_t {
    OvenHeat,  ///< what an oven is set to over time, turning on, warming up, changing over
    OvenSlot,
    Burner,
    Ware,
    Cook,
    Pool,
    Counter  ///< steps that need nothing
};

struct Lane {
    LaneKind kind = LaneKind::Counter;
    EquipmentRef equipment;
    int slot = -1;  ///< for OvenSlot, from 0 at the top
    int section = 0;
    QString name;
};

/// Lanes of one kind (the oven's two count as one) of one group.
struct LaneSection {
    QString title;
    int group = 0;
};

/// One placement: a step's batch, a wash or turning an oven on.
struct TimelineItem {
    PlacementKey key;
    int number = 0;  ///< from 1, in order of start
    QString name;
    Interval interval;
    bool collides = false;
    bool late = false;
    bool decides = false;  ///< one of those that decide plating
    bool pinned = false;
    bool begun = false;  ///< at the stove: only its end may move
    Duration spare;      ///< minutes to spare
};

enum class BlockKind : std::uint8_t { Work, Wash, TurnOn, WarmUp, ChangeOver, Waiting };

struct BlockSegment {
    Attention attention = Attention::Hands;
    Interval interval;
};

/// A stretch of one lane. Every item has exactly one main block; the others are its echoes.
struct TimelineBlock {
    int item = -1;
    int lane = 0;
    BlockKind kind = BlockKind::Work;
    bool main = false;
    Interval interval;
    /// In a cook's lane: what the cook does during the block, in order. Empty elsewhere.
    std::vector<BlockSegment> segments;
};

/// A stretch of an oven's set temperature; it slopes while the oven warms up or changes over.
struct HeatPiece {
    int lane = 0;
    Interval interval;
    Temperature from;
    Temperature to;
    QString label;  ///< "425 °F"; empty on slopes
};

struct TimelineModel {
    std::vector<LaneSection> sections;
    std::vector<Lane> lanes;          ///< from top to bottom
    std::vector<TimelineItem> items;  ///< by number
    std::vector<TimelineBlock> blocks;
    std::vector<HeatPiece> heat;
    Interval span;                  ///< from the first thing to the last, at least to serving
    std::vector<Instant> servings;  ///< ascending, no doubles
    Duration servingClock;          ///< of the main serving, after local midnight
    std::function<QString(Instant)> clock;  ///< "5:10"
};

}  // namespace rangeline
