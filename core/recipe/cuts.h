#pragma once
// Cuts of the trade with their dimensions. Books disagree on some of them, so that the name alone
// says too little: the dimension is told with it.

#include <span>
#include <string_view>

#include "base/units.h"

namespace rangeline {

struct Cut {
    std::string_view name;  ///< as ingredients write it: "small dice"
    Length thick;
    Length wide;
    Length shortest;  ///< the longest side, from ...
    Length longest;   ///< ... to
};

/// From the finest to the coarsest of each kind.
std::span<const Cut> cuts();
/// In capital or small letters; null if it is none of them.
const Cut* findCut(std::string_view name);

}  // namespace rangeline
