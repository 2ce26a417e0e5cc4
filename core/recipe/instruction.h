#pragma once
// Sentences of instructions: what the cook does, on what, how long, until when.

#include <string>
#include <string_view>
#include <vector>

#include "model/dish.h"

namespace rangeline {

/// The sentences of a text, each without its full stop and the number of a list in front. A line
/// ends one, unless the next goes on in small letters; a full stop after an abbreviation ("tbsp.")
/// ends none.
std::vector<std::string> sentencesOf(std::string_view text);

/// What one sentence says, as a step without id and without uses. What it does not say is
/// suggested by its verb (cooking_verbs.h); what had to be assumed is told.
struct Instruction {
    Step step;
    int timesNamed = 0;  ///< none: the step's time is assumed; several: they were added up
    bool heatsOven =
        false;  ///< "preheat the oven to 375 °F": no step, the oven is turned on anyway
    bool ovenAssumed = false;  ///< bakes at a temperature that is not said here
};

/// The time of a step that says none.
inline constexpr Duration assumedTime = Duration::minutes(5);

/// Below it a temperature that is named is one of food: common practice, no source.
inline constexpr Temperature coolestOven = Temperature::fahrenheit(200);

/// What is named hotter than that no oven of a home range reaches: common practice, no source.
inline constexpr Temperature hottestOven = Temperature::fahrenheit(550);

/// Whether a temperature that a sentence names may be that of an oven.
constexpr bool ofAnOven(Temperature named) {
    return coolestOven <= named && named <= hottestOven;
}

/// `usualOven` is what the oven is at where the sentence does not say.
Instruction readInstruction(std::string_view sentence, Temperature usualOven);

/// "in the same pan", "return to the same pot", after a step with a vessel for a range.
bool goesOnInVesselOf(const Step& before, std::string_view sentence);

/// `next` goes on in all vessels of `before`, which leaves them to it; its own of these kinds are
/// no longer needed.
void goOnInVessels(Step& next, Step& before);

}  // namespace rangeline
