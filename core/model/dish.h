#pragma once
// What is cooked: a dish has components, a component has ingredients and steps. Step ids are unique
// within a lesson, across all of its dishes.

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/id.h"
#include "base/rational.h"
#include "base/units.h"
#include "model/kitchen.h"

namespace rangeline {

// ---- time -----------------------------------------------------------------------------------

enum class Attention : std::uint8_t {
    Hands,  ///< a cook works at it
    Watch,  ///< a cook stays near
    Away    ///< nobody is needed
};

struct Segment {
    Attention attention = Attention::Hands;
    Duration length;         ///< at pace 1; ignored for the segment that stretches
    bool stretches = false;  ///< at most one per step says so; see Step::stretchingSegment

    friend bool operator==(const Segment&, const Segment&) = default;
};

/// Shortest <= likely <= longest. Plans use the likely one.
struct DurationRange {
    Duration shortest;
    Duration likely;
    Duration longest;

    friend bool operator==(const DurationRange&, const DurationRange&) = default;
};

enum class TimePer : std::uint8_t {
    Load,  ///< the same for each load, however much is in it
    Piece  ///< times the number of pieces
};

// ---- heat -----------------------------------------------------------------------------------

struct BurnerHeat {
    std::string level;                ///< as printed: "medium-high"
    std::optional<Power> leastPower;  ///< checked only where stated
    int burners = 1;
    /// The vessel stays on the same burner from the step it carries on from, wait included.
    bool staysOnHeat = false;

    friend bool operator==(const BurnerHeat&, const BurnerHeat&) = default;
};

struct OvenHeat {
    Temperature lowest;  ///< accepted range of set temperatures
    Temperature highest;
    OvenMode mode = OvenMode::Bake;
    bool doorShut = false;     ///< nothing goes in or out meanwhile
    std::optional<int> slots;  ///< only where the step has no vessel in the oven

    friend bool operator==(const OvenHeat&, const OvenHeat&) = default;
};

using Heat = std::variant<std::monostate, BurnerHeat, OvenHeat>;

// ---- equipment ------------------------------------------------------------------------------

struct WareNeed {
    std::string kind;
    Length leastWidth;
    std::optional<std::int64_t> leastMillilitres;
    int count = 1;
    /// Goes on in the ware that this earlier step used (same kind and count); else a fresh one.
    std::optional<StepId> carriesOn;
    /// The food leaves it when this step ends. Else it leaves when the last step that uses the food
    /// of the chain starts.
    bool turnedOut = false;

    friend bool operator==(const WareNeed&, const WareNeed&) = default;
};

struct PoolNeed {
    PoolId pool;
    int amount = 1;

    friend bool operator==(const PoolNeed&, const PoolNeed&) = default;
};

/// Food of an earlier step that goes into this one: this starts after that has ended.
struct Use {
    StepId step;
    bool each = false;  ///< batch by batch, each with its own keeping clock; else as a whole

    friend bool operator==(const Use&, const Use&) = default;
};

// ---- the food after a step ------------------------------------------------------------------

enum class Storage : std::uint8_t { Room, Cold, HotOnBurner, HotInOven };

/// How long the food keeps before the steps that use it start, and where it stands until then.
struct Keeping {
    std::optional<Duration> atRoom;  ///< no limit where empty
    std::optional<Duration> cold;
    std::optional<Duration> hot;
    Storage storage = Storage::Room;
    std::optional<PoolNeed> place;        ///< the fridge shelf (cold) or counter (room) it takes
    std::optional<OvenHeat> holdingHeat;  ///< for HotInOven: range of set temperatures, slots
    int waitingWeight = 1;                ///< how much each second of waiting counts ("fresh")
    bool mayBeDoneAhead = false;
    bool mayBeSwappedIn = false;

    /// The limit that goes with the storage.
    const std::optional<Duration>& limit() const;
    friend bool operator==(const Keeping&, const Keeping&) = default;
};

// ---- what can hurt --------------------------------------------------------------------------

struct Hazards {
    std::string food;                    ///< row of the safety tables ("poultry"), or empty
    std::optional<Temperature> target;   ///< core temperature the step cooks to
    std::vector<std::string> allergens;  ///< keys of the allergen tables
    std::vector<std::string> dangers;    ///< keys of the danger table: "hot-fat", "steam", ...
    bool raw = false;                    ///< handles raw animal food
    bool readyToEat = false;             ///< handles food that is not cooked afterwards

    friend bool operator==(const Hazards&, const Hazards&) = default;
};

// ---- steps ----------------------------------------------------------------------------------

struct Step {
    StepId id;
    std::string name;
    std::string technique;  ///< key of the technique table, or any word
    std::string cue;        ///< doneness: "until a knife slips in"

    DurationRange time;
    TimePer timePer = TimePer::Load;
    std::vector<Segment> segments;  ///< in order; empty: an event when the time is zero, else away
    Rational piecesPerCover;        ///< 0: not counted in pieces
    std::optional<int> piecesPerBatch;  ///< loads of at most this many; none: one load
    /// How wide a piece lies: those that do not lie in one layer in the first ware are further
    /// loads.
    std::optional<Length> pieceWidth;
    /// What does not go into the first ware, filled to three quarters, is further loads, also of
    /// the steps that go on in it.
    std::optional<std::int64_t> millilitresPerCover;
    bool batchesNeedWash = false;  ///< wash between batches in one vessel
    bool mayBeShared = false;      ///< per-piece work that several cooks may split

    int cooks = 1;              ///< hands needed at once, all for the whole of each hands segment
    std::string needsAbility;   ///< only cooks who can do this ("teacher"), or empty
    bool classWatches = false;  ///< during its hands segments nobody else works

    Heat heat;
    std::vector<WareNeed> wares;
    std::vector<PoolNeed> pools;
    std::vector<Use> uses;
    Keeping after;
    Hazards hazards;
    bool plates = false;        ///< ends on the plate: must end within the plate's limit of serving
    bool afterServing = false;  ///< washing-up: starts after its serving
    std::optional<StepId> onlyIfAhead;  ///< exists only where that step is done ahead

    /// Index of the segment that takes what the others leave: the stated one, else the first away,
    /// else the first watch, else the longest hands. Requires at least one segment.
    std::size_t stretchingSegment() const;
    bool isEvent() const { return time.longest == Duration(); }

    friend bool operator==(const Step&, const Step&) = default;
};

enum class StepEnd : std::uint8_t { Start, End };

struct LinkPoint {
    StepId step;
    StepEnd end = StepEnd::End;

    friend bool operator==(const LinkPoint&, const LinkPoint&) = default;
};

/// The wait from one step's start or end to another's. Negative waits are allowed.
struct Link {
    LinkPoint from;
    LinkPoint to{{}, StepEnd::Start};
    Duration least;
    std::optional<Duration> most;
    bool each = false;  ///< batch by batch; else a batched step counts as a whole

    friend bool operator==(const Link&, const Link&) = default;
};

struct Amount {
    Rational low;      ///< for the covers the dish is written for
    Rational high;     ///< equal to low unless a range
    std::string unit;  ///< key of the unit table, or empty for counted things

    friend bool operator==(const Amount&, const Amount&) = default;
};

enum class Scaling : std::uint8_t {
    WithCovers,
    Fixed,
    /// What is tasted for does not go straight: beyond the covers written for it grows by half as
    /// much, and the cook goes on from there by taste (common practice, no source).
    Seasoning
};

struct Ingredient {
    std::string name;
    std::optional<Amount> amount;  ///< none: "to taste"
    std::string cut;
    std::string note;
    std::vector<std::string> allergens;
    Scaling scaling = Scaling::WithCovers;
    std::string kind{};       ///< where it is bought, in the cook's words: "vegetables"; or empty
    int usablePercent = 100;  ///< of what is bought, by weight, the amount is; 1 to 100

    friend bool operator==(const Ingredient&, const Ingredient&) = default;
};

/// What the cook makes of a component when time runs short.
struct SimplerForm {
    std::string how;  ///< in the cook's words: "lemon squeezed over it, no sauce"; never empty
    /// Steps of the component that fall away, at least one. Not plating, and nothing that is raw or
    /// cooks to a temperature.
    std::vector<StepId> without;

    friend bool operator==(const SimplerForm&, const SimplerForm&) = default;
};

struct Component {
    ComponentId id;
    std::string name;
    std::vector<Ingredient> ingredients;
    std::vector<Step> steps;
    std::optional<SimplerForm> simpler{};

    friend bool operator==(const Component&, const Component&) = default;
};

struct Dish {
    DishId id;
    std::string name;
    int writtenFor = 1;    ///< covers that the amounts are for
    std::string perCover;  ///< what one cover gets, in words
    std::vector<Component> components;
    std::vector<Link> links;
    Duration platesHold = Duration::minutes(5);  ///< how long plated food may wait for its serving

    friend bool operator==(const Dish&, const Dish&) = default;
};

}  // namespace rangeline
