#pragma once
// The functions of all checks of what must not be; the registry in checks.cpp lists them. Cautions
// are in cautions.h.

#include "check/check.h"

namespace rangeline {

// ahead_check.cpp
void checkAhead(const UseIndex& index, int whole, std::vector<Finding>& findings);

// assignment_check.cpp
void checkTaskAssignment(const UseIndex& index, int task, std::vector<Finding>& findings);
void checkWashAssignment(const UseIndex& index, int chain, std::vector<Finding>& findings);
void checkTurnOnAssignment(const UseIndex& index, int ovenUnit, std::vector<Finding>& findings);

// burner_check.cpp
void checkBurnerTwice(const UseIndex& index, int unit, std::vector<Finding>& findings);
void checkBurnerFit(const UseIndex& index, int unit, std::vector<Finding>& findings);

// crew_check.cpp
void checkCrew(const UseIndex& index, int task, std::vector<Finding>& findings);

// hands_check.cpp
void checkHandsTwice(const UseIndex& index, int cook, std::vector<Finding>& findings);
void checkTalk(const UseIndex& index, int cook, std::vector<Finding>& findings);

// oven_door_check.cpp
void checkDoorOpened(const UseIndex& index, int unit, std::vector<Finding>& findings);
void checkHandsBehindDoor(const UseIndex& index, int unit, std::vector<Finding>& findings);

// oven_fit_check.cpp
void checkOvenFit(const UseIndex& index, int unit, std::vector<Finding>& findings);

// oven_setting_check.cpp
void checkOvenSettings(const UseIndex& index, int unit, std::vector<Finding>& findings);
void checkOvenChange(const UseIndex& index, int unit, std::vector<Finding>& findings);

// oven_slot_check.cpp
void checkOvenSlots(const UseIndex& index, int unit, std::vector<Finding>& findings);

// oven_warm_check.cpp
void checkOvenWarm(const UseIndex& index, int unit, std::vector<Finding>& findings);

// placement_check.cpp
void checkNotPlaced(const UseIndex& index, int task, std::vector<Finding>& findings);
void checkTaskGrain(const UseIndex& index, int task, std::vector<Finding>& findings);
void checkWashGrain(const UseIndex& index, int chain, std::vector<Finding>& findings);
void checkTurnOnGrain(const UseIndex& index, int ovenUnit, std::vector<Finding>& findings);

// pool_check.cpp
void checkPool(const UseIndex& index, int unit, std::vector<Finding>& findings);

// wait_check.cpp
void checkWait(const UseIndex& index, int wait, std::vector<Finding>& findings);

// ware_check.cpp
void checkWareTwice(const UseIndex& index, int unit, std::vector<Finding>& findings);
void checkWareFit(const UseIndex& index, int unit, std::vector<Finding>& findings);

// wash_check.cpp
void checkNotYetWashed(const UseIndex& index, int unit, std::vector<Finding>& findings);
void checkWash(const UseIndex& index, int chain, std::vector<Finding>& findings);

// watch_check.cpp
void checkWatches(const UseIndex& index, int unit, std::vector<Finding>& findings);

// window_check.cpp
void checkWindow(const UseIndex& index, int window, std::vector<Finding>& findings);
void checkWashWhileOpen(const UseIndex& index, int chain, std::vector<Finding>& findings);
void checkTurnOnWhileOpen(const UseIndex& index, int ovenUnit, std::vector<Finding>& findings);

}  // namespace rangeline
