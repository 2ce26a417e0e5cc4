#pragma once
// What a new step of a technique begins with. All of it is common practice, no source, and is there
// to be changed.

#include <string>
#include <string_view>
#include <vector>

#include "model/dish.h"
#include "model/lesson.h"

namespace rangeline {

struct StepStart {
    DurationRange time;
    std::vector<Segment> segments;
    Heat heat;
    std::vector<WareNeed> wares;
    bool cold = false;   ///< goes on in the fridge, and its food stays there
    std::string danger;  ///< row of the danger table that always goes with it, or empty

    friend bool operator==(const StepStart&, const StepStart&) = default;
};

/// Five minutes of hands without heat, for a step of which nothing is known.
StepStart plainStart();
/// Of a technique of the table; a plain start for any other word. Ovens are set to what a dial in
/// these units has: 350 °F or 180 °C.
StepStart usualStart(std::string_view technique, Units units);

/// A quarter less to a third more than the minutes, within `least` and `most`.
DurationRange timeAround(Duration likely, Duration least, Duration most);
/// Hands at first, where there are any, then the rest.
std::vector<Segment> attentionOf(Duration handsFirst, Attention then);

/// The step goes over from one start to another: time and attention, heat, vessels and fridge,
/// each only where it still is as the start before it, or a plain one, had it. What the cook has
/// stated stays.
void goOver(Step& step, const StepStart& before, const StepStart& next);

}  // namespace rangeline
