#include "check/checks.h"

namespace rangeline {

void checkNotPlaced(const UseIndex& index, int task, std::vector<Finding>& findings) {
    if (!index.placed(task)) {
        findings.push_back(
            {FindingCode::NotPlaced, Severity::Collision, {index.keyOf(task)}, {}, {}, {}});
    }
}

}  // namespace rangeline
