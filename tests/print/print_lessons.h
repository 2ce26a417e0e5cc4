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

/// About that many steps, arranged where that is possible in little time, else laid out one after
/// the other. Names are 3 to 80 letters long.
std::unique_ptr<Prepared> arrangedLesson(std::uint64_t seed, int steps);
/// The same with collisions: every third step begins twenty minutes later.
std::unique_ptr<Prepared> disturbedLesson(std::uint64_t seed, int steps);

}  // namespace rangeline::test
