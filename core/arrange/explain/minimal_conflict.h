#pragma once
// The smallest part of a conflict that still is one: no member can be left out. Deletion in chunks
// that grow while they can be left out and shrink where they cannot, with the preferences of
// Junker's QuickXplain (AAAI 2004): what comes first is kept rather than what comes last.

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace rangeline::explain {

enum class Verdict : std::uint8_t {
    Possible,     ///< they can hold together
    NotPossible,  ///< they cannot
    Unknown       ///< a limit stopped the question
};

struct Answer {
    Verdict verdict = Verdict::Unknown;
    /// With NotPossible: some of those asked about that cannot hold together already; may be all.
    std::vector<int> needed;
};

/// Whether these can hold together. Whatever is possible stays so when members are left out.
using Question = std::function<Answer(std::span<const int>)>;

struct MinimalConflict {
    std::vector<int> members;  ///< in the order they were given in
    bool irreducible = true;   ///< false: a question had no answer, so one member may be too many
};

/// Requires that the members cannot hold together.
MinimalConflict minimalConflict(std::vector<int> conflict, const Question& ask);

}  // namespace rangeline::explain
