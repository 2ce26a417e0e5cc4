#include "check/verdict.h"

#include <algorithm>

namespace rangeline {

bool canBeFollowed(std::span<const Finding> findings) {
    return std::ranges::none_of(findings, [](const Finding& finding) {
        return finding.severity == Severity::Collision || finding.severity == Severity::Open;
    });
}

bool keepsRules(std::span<const Finding> findings, bool lateAllowed) {
    const bool late = std::ranges::any_of(
        findings, [](const Finding& finding) { return finding.severity == Severity::Late; });
    return canBeFollowed(findings) && (lateAllowed || !late);
}

}  // namespace rangeline
