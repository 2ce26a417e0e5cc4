#pragma once
// A lesson with everything that follows from it: what it comes down to, who uses what, what is
// found. Edits keep it up to date; trying one out leaves it as it was.

#include <functional>
#include <memory>
#include <vector>

#include "analysis/critical_path.h"
#include "check/check.h"
#include "model/edit.h"

namespace rangeline {

/// What an edit has changed.
struct LessonChange {
    bool all = false;                      ///< another lesson altogether
    bool structure = false;                ///< more than placements: everything derived is new
    std::vector<PlacementKey> placements;  ///< those put, changed or taken away
    bool onlyUnits = false;                ///< the lesson is the same, read in other units
};

/// Called while an edit is tried out, with the lesson as it would be.
using LookAtTrial = std::function<void(const UseIndex& index)>;

class LessonState {
  public:
    /// Requires validate(lesson) to be empty.
    explicit LessonState(Lesson lesson);
    LessonState(const LessonState&) = delete;
    LessonState& operator=(const LessonState&) = delete;

    const Lesson& lesson() const { return lesson_; }
    const Expanded& expanded() const { return derived_->expanded; }
    const UseIndex& index() const { return derived_->index; }
    /// In the order of severity, time and kind.
    const std::vector<Finding>& findings() const;
    /// Worked out when it is asked for, then kept until the next change.
    const PlatingAnalysis& analysis() const;

    /// Applies the edit and leaves its inverse in it. Requires that the lesson stays valid.
    LessonChange exchange(Edit& edit);
    /// All of them in this order, judged by what they come to together.
    LessonChange exchange(std::vector<Edit>& edits);

    /// What the edit would lead to, among what it touches: findings that name a placement it
    /// changes, and findings that were not there before. Nothing stays changed. Quick enough for
    /// every move of a pointer.
    std::vector<Finding> tryOut(const SetPlacements& edit, const LookAtTrial& look = {});
    /// How many collisions and steps not placed more (or fewer, below zero) the lesson has with
    /// the edit.
    int collisionsAdded(const SetPlacements& edit);

  private:
    struct Derived {
        explicit Derived(const Lesson& lesson)
            : expanded(expand(lesson)), index(lesson, expanded), findings(index) {}
        Expanded expanded;
        UseIndex index;
        Findings findings;
    };

    struct Trial {
        std::vector<Finding> before;  ///< among what the edit touches; sorted
        std::vector<Finding> after;
    };
    Trial trialOf(const SetPlacements& edit, const LookAtTrial& look);
    std::vector<Finding> findingsAbout(const TouchedSubjects& touched) const;
    void forget() const;

    Lesson lesson_;
    std::unique_ptr<Derived> derived_;
    mutable std::unique_ptr<std::vector<Finding>> all_;
    mutable std::unique_ptr<PlatingAnalysis> analysis_;
};

}  // namespace rangeline
