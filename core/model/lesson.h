#pragma once
// Dishes times covers, on one kitchen, with a crew and a serving time; holds the placements. A
// lesson is a value: it is copied, compared and edited (edit.h), never observed.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/units.h"
#include "model/dish.h"
#include "model/kitchen.h"
#include "model/placement.h"

namespace rangeline {

/// A dish as served in this lesson.
struct Serving {
    Dish dish;
    int covers = 1;   ///< > 0
    Duration offset;  ///< of its serving from the main serving instant

    friend bool operator==(const Serving&, const Serving&) = default;
};

enum class Units : std::uint8_t { UsCustomary, Metric };
enum class SafetyProfile : std::uint8_t { Household, FoodCode };
enum class Aim : std::uint8_t { StartLate, Fresh, Calm, FewPans };

/// A lesson given to several groups at once on alike stations.
struct Groups {
    int count = 1;
    std::vector<std::string> shared;  ///< ids of equipment and cooks there is only one of
    Duration stagger;                 ///< group n is served n times this later

    friend bool operator==(const Groups&, const Groups&) = default;
};

struct Head {
    std::string name;
    std::string servingTime;                ///< local date and time, ISO 8601: "2027-10-09T18:30"
    std::string zone;                       ///< IANA time zone: "America/Chicago"
    Duration grain = Duration::minutes(1);  ///< placements start on whole multiples of it
    std::optional<Instant> kitchenOpens;
    std::optional<Instant> cookingMayStart;  ///< nothing is on a burner or in the oven before
    std::optional<Instant> tasting;
    std::optional<Instant> everyoneOut;
    std::vector<CookId> crew;  ///< cooks of the kitchen who are there; at least one
    Groups groups;
    Units units = Units::UsCustomary;
    SafetyProfile profile = SafetyProfile::Household;
    Aim aim = Aim::StartLate;
    bool lateAllowed = false;
    std::vector<std::string> guestAllergens;

    friend bool operator==(const Head&, const Head&) = default;
};

/// A step that was done before the lesson; its food waits in storage.
struct DoneAhead {
    StepId step;
    Duration before;                 ///< how long before the main serving instant it was done
    std::optional<Storage> storage;  ///< Room or Cold; none is a finding
    std::optional<PoolNeed> place;
    std::vector<WareSpot> wares;  ///< stored in these, which stay taken until the food is used

    friend bool operator==(const DoneAhead&, const DoneAhead&) = default;
};

/// A step that the class sees begun, whose finished twin was made before class and is used instead.
struct SwapIn {
    StepId step;
    std::vector<WareSpot> wares;  ///< what the twin stands in until it is used

    friend bool operator==(const SwapIn&, const SwapIn&) = default;
};

/// The number of loads, where the cook states it instead of leaving it to the pieces.
struct StatedBatches {
    StepId step;
    int batches = 1;

    friend bool operator==(const StatedBatches&, const StatedBatches&) = default;
};

/// What this lesson does differently from what the dishes say.
struct Choices {
    std::vector<DoneAhead> doneAhead;
    std::vector<SwapIn> swapIns;
    std::vector<StatedBatches> batches;

    friend bool operator==(const Choices&, const Choices&) = default;
};

struct Lesson {
    Head head;
    Kitchen kitchen;
    std::vector<Serving> servings;
    Choices choices;
    Placements placements;

    friend bool operator==(const Lesson&, const Lesson&) = default;
};

}  // namespace rangeline
