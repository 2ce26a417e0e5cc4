#include "check/oven.h"

#include "analysis/at.h"

namespace rangeline {

PlacementKey keyOfLoad(const UseIndex& index, const OvenUse& use) {
    return index.keyOf(at(index.expanded().ovenLoads, use.load).owner);
}

std::string modeKey(OvenMode mode) {
    switch (mode) {
        case OvenMode::Bake:
            return "bake";
        case OvenMode::Convection:
            return "convection";
        case OvenMode::Broil:
            return "broil";
    }
    return {};
}

}  // namespace rangeline
