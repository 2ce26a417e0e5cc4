#pragma once
// To whom the hands work of a step may be given.

#include <vector>

namespace rangeline::rules {

/// Who does the hands work, and how many pieces each does; all pieces 0: they work as one.
struct Sharing {
    std::vector<int> cooks;
    std::vector<int> pieces;
};

struct Sharings {
    std::vector<Sharing> ways;
    bool all = true;  ///< false: there are more, and these are spread over them
};

/// Every set of `together` of the cooks.
Sharings setsOfCooks(const std::vector<int>& cooks, int together);

/// Each cook alone, and every split of the pieces, at least two of which each does some, among any
/// of the cooks.
Sharings splitsOfPieces(const std::vector<int>& cooks, int pieces);

}  // namespace rangeline::rules
