#include "check/checks.h"

#include <array>

#include "check/cautions.h"

namespace rangeline {
namespace {

constexpr std::array registry = {
    Check{"not placed", Subject::Task, checkNotPlaced},
    Check{"core temperature", Subject::Whole, cautionCore},
    Check{"usual duration", Subject::Whole, cautionDuration},
    Check{"guest allergen", Subject::Whole, cautionGuestAllergen},
    Check{"danger", Subject::Task, cautionDanger},
    Check{"time out", Subject::Wait, cautionTimeOut},
    Check{"time out, made ahead", Subject::Task, cautionAheadTimeOut},
    Check{"cross-contact", Subject::Ware, cautionCrossContact},
    Check{"allergen contact", Subject::Ware, cautionAllergenContact},
    Check{"oven at its limit", Subject::Oven, cautionOvenLimit},
};

}  // namespace

std::span<const Check> checks() {
    return registry;
}

}  // namespace rangeline
