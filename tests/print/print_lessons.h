#pragma once
// Lessons to print, and everything that a sheet is made from.

#include <memory>

#include "analysis/use_index.h"
#include "check/finding.h"
#include "timeline/build_timeline.h"

namespace rangeline::test {

/// Keeps a lesson with what is worked out about it.
class Prepared {
  public:
    explicit Prepared(Lesson lesson);

    const Lesson& lesson() const { return lesson_; }
    TimelineInput input() const { return {index_, text_, findings_, analysis_}; }
    const UseIndex& index() const { return index_; }

  private:
    Lesson lesson_;
    Expanded expanded_;
    UseIndex index_;
    TextContext text_;
    std::vector<Finding> findings_;
    PlatingAnalysis analysis_;
};

/// A supper of about that many steps.
std::unique_ptr<Prepared> placedLesson(int steps);
/// The same with collisions and pins: every third placement begins twenty minutes later.
std::unique_ptr<Prepared> disturbedLesson(int steps);

}  // namespace rangeline::test
