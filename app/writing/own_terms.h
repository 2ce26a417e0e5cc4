#pragma once
// Techniques and cuts that are the cook's own, beside those of the tables. They belong to the book.

#include <optional>
#include <string>
#include <vector>

#include "safety/usual_step.h"

namespace rangeline {

struct OwnTechnique {
    std::string name;
    Duration least = Duration::minutes(5);  ///< what it usually takes
    Duration most = Duration::minutes(15);
    Duration handsFirst;
    Attention meanwhile = Attention::Hands;

    friend bool operator==(const OwnTechnique&, const OwnTechnique&) = default;
};

struct OwnCut {
    std::string name;
    std::string dimension;  ///< in the cook's words: "1 in, on the slant"; or empty

    friend bool operator==(const OwnCut&, const OwnCut&) = default;
};

struct OwnTerms {
    std::vector<OwnTechnique> techniques;
    std::vector<OwnCut> cuts;

    friend bool operator==(const OwnTerms&, const OwnTerms&) = default;
};

/// As steps name it: "Pot roast" is "pot-roast".
std::string techniqueKey(const std::string& name);
/// Null where the key is none of them.
const OwnTechnique* findOwn(const OwnTerms& terms, const std::string& technique);

/// What a technique usually takes; nothing where neither the tables nor the cook say.
struct UsualRange {
    Duration least;
    Duration most;
};
std::optional<UsualRange> usualRange(const std::string& technique, const OwnTerms& terms);
/// What a step of it begins with: the cook's own goes before the tables.
StepStart startOf(const std::string& technique, const OwnTerms& terms, Units units);

/// Gives the step the technique, and what is usual for it where nothing else was stated.
void setTechnique(Step& step, const std::string& technique, const OwnTerms& terms, Units units);
/// What the name says or its verb usually means: heat, ware, attention, time, cue, technique. To be
/// looked at by the cook.
void suggest(Step& step, const OwnTerms& terms, Units units);

/// For the settings of the book; what cannot be read is left out.
std::string writeTerms(const OwnTerms& terms);
OwnTerms readTerms(const std::string& text);

}  // namespace rangeline
