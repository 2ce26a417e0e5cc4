#pragma once
// What became of the plan: each step as it was planned and as it really was, and what decided
// plating in fact.

#include <optional>
#include <vector>

#include "live/taken.h"

namespace rangeline::live {

struct ReviewedStep {
    StepKey key;
    Interval planned;
    Interval real;
    Duration later;   ///< it began so much later than planned; negative: sooner
    Duration longer;  ///< it took so much longer than planned; negative: less long
};

/// One of what held plating up, first to last.
struct Decider {
    PlacementKey key;
    bool known = false;  ///< its times are known; else it is taken to be as long as planned
    Duration longer;     ///< than planned
    Duration idle;       ///< it began so much later than it was due and what it waited for was done
};

struct Review {
    std::vector<ReviewedStep> steps;  ///< by their real begins
    /// Of the plating that was latest for its serving; nothing where none is known. Negative:
    /// early.
    std::optional<Duration> late;
    std::vector<Decider> deciders;
};

/// `planned` is the lesson as it was before the service. Where the times of a step are not known it
/// is taken to have begun as soon as it could and to have been as long as planned.
Review review(const Lesson& planned, const std::vector<Taken>& taken);

}  // namespace rangeline::live
