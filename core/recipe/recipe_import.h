#pragma once
// Recipes of the vocabulary schema.org/Recipe, from JSON-LD or from a page of the web that holds
// it, as dishes.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "model/dish.h"
#include "model/fault.h"

namespace rangeline {

/// Something that the cook should look at: nothing is assumed in silence.
enum class ImportRemarkCode : std::uint8_t {
    LineNotUnderstood,   ///< a line of ingredients, or a piece of it
    NoTime,              ///< a step that says no time got assumedTime
    SeveralTimes,        ///< a step's times were added up
    OvenAssumed,         ///< a step bakes at a temperature that is said nowhere
    OvenTurnedOn,        ///< a sentence about heating the oven is no step of its own
    YieldNotUnderstood,  ///< how many it serves; 4 is taken
    TimeNotUnderstood,   ///< a duration that is none of ISO 8601, or more than a week
    NothingUnderstood,   ///< a part of another type than the vocabulary allows
    LeftOut              ///< more steps or lines of ingredients than are read
};

/// What the oven is set to where a recipe says it nowhere.
inline constexpr Temperature ovenWhereUnsaid = Temperature::fahrenheit(350);

struct ImportRemark {
    ImportRemarkCode code{};
    std::string of;  ///< the text concerned, as it was written

    friend bool operator==(const ImportRemark&, const ImportRemark&) = default;
};

struct ImportedRecipe {
    /// A component for each section; its steps one after the other, each using the one before; the
    /// last section's last step uses the other sections. Ids are the step's place: "step-3".
    Dish dish;
    std::optional<Duration> total;  ///< as the recipe states it
    std::vector<ImportRemark> remarks;
};

/// Every recipe found, at most 50, each with at most 500 steps and 500 ingredients; none where
/// there is none. The fault is the first thing wrong with the JSON, where no recipe could be read
/// for it; TooLarge above largestLessonFile bytes.
Result<std::vector<ImportedRecipe>, Fault> readRecipes(std::string_view bytes);

}  // namespace rangeline
