#include "export/works_at.h"

#include <algorithm>

namespace rangeline {

bool worksAt(const UseIndex& index, int node, const CookId& cook) {
    const Placement& placement = *index.placed(node).placement;
    return std::ranges::find(placement.hands, cook, &Share::cook) != placement.hands.end() ||
           std::ranges::find(placement.watchers, cook) != placement.watchers.end();
}

}  // namespace rangeline
