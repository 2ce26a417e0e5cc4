#pragma once

#include <vector>

#include "check/check.h"
#include "support/lesson_builder.h"

namespace rangeline::test {

/// The findings with that code, from a check from scratch.
inline std::vector<Finding> findingsOf(const Lesson& lesson, FindingCode code) {
    const Expanded expanded = expand(lesson);
    std::vector<Finding> found;
    for (Finding& finding : checkLesson(lesson, expanded)) {
        if (finding.code == code) {
            found.push_back(std::move(finding));
        }
    }
    return found;
}

}  // namespace rangeline::test
