#include "timeline/paint_help.h"

namespace rangeline {

Colour fillOf(LaneKind kind) {
    switch (kind) {
        case LaneKind::OvenHeat:
        case LaneKind::OvenSlot:
            return Colour::OvenFill;
        case LaneKind::Burner:
            return Colour::BurnerFill;
        case LaneKind::Ware:
            return Colour::WareFill;
        case LaneKind::Cook:
            return Colour::CookFill;
        case LaneKind::Pool:
        case LaneKind::Counter:
            return Colour::PoolFill;
    }
    return Colour::PoolFill;
}

}  // namespace rangeline
