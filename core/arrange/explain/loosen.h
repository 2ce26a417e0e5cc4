#pragma once
// The changes of a lesson that loosen a requirement.

#include <optional>
#include <string>
#include <vector>

#include "arrange/remedies.h"
#include "model/expand.h"

namespace rangeline::explain {

/// A change that is to be tried, of an amount if it has one.
struct Candidate {
    RemedyKind kind{};
    int index = 0;
    /// At most this much is tried; nothing for changes without an amount.
    std::optional<Duration> most;

    friend bool operator==(const Candidate&, const Candidate&) = default;
};

/// What could loosen any of the requirements, each once.
std::vector<Candidate> candidatesFor(const Lesson& lesson, const Expanded& expanded,
                                     const std::vector<Requirement>& requirements);

/// Empty if the change cannot be made. `by` counts for candidates with an amount only.
std::vector<Edit> editsOf(const Lesson& lesson, const Expanded& expanded,
                          const Candidate& candidate, Duration by, const std::string& helperName);

}  // namespace rangeline::explain
