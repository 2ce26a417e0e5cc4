#pragma once
// Changes to a dish as it is written: steps come and go, and what refers to them follows.

#include <optional>
#include <string>
#include <vector>

#include "model/dish.h"

namespace rangeline {

struct StepPlace {
    std::size_t component = 0;
    std::size_t step = 0;

    friend bool operator==(const StepPlace&, const StepPlace&) = default;
};
std::optional<StepPlace> placeOf(const Dish& dish, const StepId& id);
/// Null if there is none of that id.
const Step* findStep(const Dish& dish, const StepId& id);

/// A dish with one component and no step yet.
Dish newDish(const std::string& name);

/// The only component goes by the new name too, as long as it had the old one.
void renameDish(Dish& dish, const std::string& name);

/// Puts an empty component there; its number.
std::size_t addComponent(Dish& dish, std::size_t at, const std::string& name);
/// With its steps, and all that refers to them.
void removeComponent(Dish& dish, std::size_t component);

/// A step of five minutes of hands at that place. It uses the step before it in its component, and
/// what used that one uses it instead, so that it stands between them.
StepId addStep(Dish& dish, const StepPlace& at, const std::string& name);
/// Everything that leads nowhere yet goes into that step: what is plated last.
void useAllLoose(Dish& dish, const StepId& id);
/// What used it uses what it used; links, pans carried on and twins that refer to it go.
void removeStep(Dish& dish, const StepId& id);
/// One place up (-1) or down (1), out of its component into the next at its ends. False at the end
/// of all. What it uses stays.
bool moveStep(Dish& dish, const StepId& id, int by);

/// Before the step that is at that place now; past the last one to the end. What it uses stays.
void moveStepTo(Dish& dish, const StepId& id, StepPlace to);

/// The steps that it may use: all but itself and those that use it, directly or through others.
std::vector<StepId> mayUse(const Dish& dish, const StepId& id);

}  // namespace rangeline
