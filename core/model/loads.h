#pragma once
// Into how many loads a step's food goes, and what each load asks of its ware.

#include <cstdint>
#include <unordered_map>

#include "model/lesson.h"

namespace rangeline {

/// A step's pieces for so many covers; 0 where it is not counted in pieces.
std::int64_t piecesFor(const Step& step, int covers);

/// The loads of a lesson's steps. Needs no valid lesson: what a step refers to may be missing.
class Loads {
  public:
    explicit Loads(const Lesson& lesson);

    /// As many as the cook has stated; else as few as keep to the pieces at a time, to one layer in
    /// the roomiest ware of the kitchen, and to what its largest pot holds at the fullest step of
    /// those that go on in it. At least 1. A ware that would not hold a single piece is left to the
    /// check of each placement.
    std::int64_t of(const Step& step, int covers) const;

    /// Whether it is more than one load for some number of covers, or by the cook's word.
    bool mayBeSeveral(const Step& step) const;

    /// What one of `loads` loads asks of a ware: as the step states it, and no smaller than the
    /// smallest of the kitchen's that the load fits in.
    WareNeed needOf(const Step& step, const WareNeed& need, int covers, int pieces,
                    int loads) const;

  private:
    const StatedBatches* stated(const Step& step) const;
    std::int64_t byPieces(const Step& step, std::int64_t pieces) const;
    std::int64_t byVolume(const Step& step, int covers) const;

    const Lesson& lesson_;
    /// Per cover, of the fullest step that goes on in the same ware; of those steps only.
    std::unordered_map<StepId, std::int64_t> fullest_;
};

}  // namespace rangeline
