#pragma once

#include "check/finding.h"

namespace rangeline {

/// Untranslated patterns (context "Finding"). Marks in braces are filled by finding_text: {a} and
/// {b} the first and second step, {all} all of them, {thing} the equipment, {span} the interval,
/// {at} and {until} its ends, {0} to {3} the figures, {0:domain} a figure read as a mode, storage,
/// need, allergen, food, danger, source, dial, volume or power, {short} by how much figure 0 falls
/// short of figure 1.
/// The hint is empty where the sentence says what to do.
struct FindingWords {
    const char* key;  ///< stable, for machines
    const char* title;
    const char* sentence;
    const char* hint;
};

/// Every code has its words: a forgotten one does not compile.
FindingWords wordsOf(FindingCode code);

/// The sentence for this very finding: that of its code, or one for a case that reads otherwise.
const char* sentencePattern(const Finding& finding);

}  // namespace rangeline
