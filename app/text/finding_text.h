#pragma once
// Findings in kitchen words, the same for window, terminal and paper.

#include <QString>
#include <vector>

#include "check/finding.h"
#include "text/names.h"

namespace rangeline {

/// Two or three words: "One oven, two temperatures".
QString title(FindingCode code);
/// The same for one finding: of a danger what it is, "Sharp knife".
QString title(const Finding& finding);
/// What, where and when: "Oven: “Bake the gratin” wants 375 °F from 5:10 to 5:55 PM while “Roast
/// the thighs” holds it at 425 °F."
QString sentence(const Finding& finding, const TextContext& context);
/// What to do about it; empty where the sentence says so itself.
QString hint(const Finding& finding, const TextContext& context);

/// "Collision", "Late", "Caution"
QString severityText(Severity severity);

/// The note that goes once with any food-safety line: whose limits these are, and to follow the
/// local food code.
QString safetyNote(SafetyProfile profile, const std::optional<Temperature>& room, Units units,
                   const QLocale& locale);
/// Whether any of the findings is about food safety.
bool needsSafetyNote(const std::vector<Finding>& findings);

}  // namespace rangeline
