#include "check/checks.h"

#include <array>

#include "check/cautions.h"

namespace rangeline {
namespace {

constexpr std::array registry = {
    Check{"not placed", Subject::Task, checkNotPlaced},
    Check{"grain", Subject::Task, checkTaskGrain},
    Check{"grain of washes", Subject::Wash, checkWashGrain},
    Check{"grain of turning on", Subject::TurnOn, checkTurnOnGrain},
    Check{"assignment", Subject::Task, checkTaskAssignment},
    Check{"assignment of washes", Subject::Wash, checkWashAssignment},
    Check{"assignment of turning on", Subject::TurnOn, checkTurnOnAssignment},
    Check{"crew", Subject::Task, checkCrew},
    Check{"burner twice", Subject::Burner, checkBurnerTwice},
    Check{"burner fit", Subject::Burner, checkBurnerFit},
    Check{"ware twice", Subject::Ware, checkWareTwice},
    Check{"ware fit", Subject::Ware, checkWareFit},
    Check{"not yet washed", Subject::Ware, checkNotYetWashed},
    Check{"wash", Subject::Wash, checkWash},
    Check{"oven slots", Subject::Oven, checkOvenSlots},
    Check{"oven settings", Subject::Oven, checkOvenSettings},
    Check{"oven change-over", Subject::Oven, checkOvenChange},
    Check{"oven warm", Subject::Oven, checkOvenWarm},
    Check{"oven fit", Subject::Oven, checkOvenFit},
    Check{"oven door", Subject::Oven, checkDoorOpened},
    Check{"hands behind the oven door", Subject::Oven, checkHandsBehindDoor},
    Check{"pool", Subject::Pool, checkPool},
    Check{"hands twice", Subject::Cook, checkHandsTwice},
    Check{"talk", Subject::Cook, checkTalk},
    Check{"watches", Subject::Cook, checkWatches},
    Check{"wait", Subject::Wait, checkWait},
    Check{"window", Subject::Window, checkWindow},
    Check{"washes while open", Subject::Wash, checkWashWhileOpen},
    Check{"turning on while open", Subject::TurnOn, checkTurnOnWhileOpen},
    Check{"done ahead", Subject::Whole, checkAhead},
    Check{"core temperature", Subject::Whole, cautionCore},
    Check{"usual duration", Subject::Whole, cautionDuration},
    Check{"depth", Subject::Whole, cautionDepth},
    Check{"handwork", Subject::Whole, cautionHandwork},
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
