// A duration outside the range that is usual for the technique: a slip of the pen, or worth
// knowing.

#include "check/cautions.h"
#include "safety/techniques.h"

namespace rangeline {

void cautionDuration(const UseIndex& index, int, std::vector<Finding>& findings) {
    forEachStep(index.lesson(), [&](const Serving&, const Component&, const Step& step) {
        const Technique* technique = findTechnique(step.technique);
        if (technique == nullptr || step.isEvent() || step.timePer == TimePer::Piece) {
            return;
        }
        const Duration likely = step.time.likely;
        if (likely < technique->least || technique->most < likely) {
            findings.push_back(
                caution(FindingCode::UnusualDuration, step,
                        {likely, technique->least, technique->most, step.technique}));
        }
    });
}

}  // namespace rangeline
