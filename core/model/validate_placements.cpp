#include <algorithm>

#include "model/stations.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

constexpr std::int64_t mostBatches = 1000;
constexpr std::int64_t mostNumber = 10'000;

/// Stored food stands in wares that there are.
void storedIn(ValueChecks& checks, const Place& place, const std::vector<WareSpot>& spots,
              const Kitchen& kitchen) {
    for (std::size_t i = 0; i < spots.size(); ++i) {
        const int item = wareItem(kitchen, spots[i].ware);
        if (item < 0) {
            checks.report(place.at(i), FaultCode::UnknownReference, {spots[i].ware.text, "ware"});
        } else {
            checks.whole(place.at(i), std::int64_t{spots[i].number} + 1, 1,
                         kitchen.wares[static_cast<std::size_t>(item)].count);
        }
    }
}

/// Each step at most once in a list of choices.
void chosenStep(ValueChecks& checks, const Place& place, const StepId& id, const StepIndex& steps,
                MetIds& met) {
    validateStepReference(checks, place.key("step"), id, steps);
    if (!met.insert(id.text).second) {
        checks.report(place.key("step"), FaultCode::DuplicateId, {id.text});
    }
}

void doneAhead(ValueChecks& checks, const Place& list, const Lesson& lesson, const StepIndex& steps,
               MetIds& met) {
    for (std::size_t i = 0; i < lesson.choices.doneAhead.size(); ++i) {
        const DoneAhead& ahead = lesson.choices.doneAhead[i];
        const Place place = list.at(i);
        chosenStep(checks, place, ahead.step, steps, met);
        const StepAt* at = steps.find(ahead.step);
        if (at != nullptr && !at->step->after.mayBeDoneAhead) {
            checks.report(place.key("step"), FaultCode::Contradiction,
                          {"doneAhead", "mayBeDoneAhead"});
        }
        checks.duration(place.key("before"), ahead.before);
        if (ahead.storage && *ahead.storage != Storage::Room && *ahead.storage != Storage::Cold) {
            checks.report(place.key("storage"), FaultCode::BadChoice, {"hot", "room, cold"});
        }
        if (ahead.place) {
            validatePoolNeed(checks, place.key("place"), *ahead.place, lesson.kitchen);
        }
        storedIn(checks, place.key("wares"), ahead.wares, lesson.kitchen);
    }
}

void swapIns(ValueChecks& checks, const Place& list, const Lesson& lesson, const StepIndex& steps,
             MetIds& met) {
    for (std::size_t i = 0; i < lesson.choices.swapIns.size(); ++i) {
        const SwapIn& swap = lesson.choices.swapIns[i];
        const Place place = list.at(i);
        chosenStep(checks, place, swap.step, steps, met);
        const StepAt* at = steps.find(swap.step);
        if (at != nullptr && !at->step->after.mayBeSwappedIn) {
            checks.report(place.key("step"), FaultCode::Contradiction,
                          {"swapIns", "mayBeSwappedIn"});
        }
        storedIn(checks, place.key("wares"), swap.wares, lesson.kitchen);
    }
}

void validateKey(ValueChecks& checks, const Place& place, const PlacementKey& key) {
    const auto* wash = std::get_if<WashKey>(&key);
    const auto* turnOn = std::get_if<TurnOnKey>(&key);
    const StepKey step = wash != nullptr     ? wash->after
                         : turnOn != nullptr ? StepKey{{}, 0, turnOn->group}
                                             : std::get<StepKey>(key);
    if (turnOn != nullptr) {
        checks.id(place.key("turnOn"), turnOn->oven.text);
    } else {
        checks.id(place.key(wash != nullptr ? "washAfter" : "step"), step.step.text);
    }
    checks.whole(place.key("batch"), std::int64_t{step.batch} + 1, 1, mostNumber);
    checks.whole(place.key("group"), std::int64_t{step.group} + 1, 1, mostNumber);
    checks.whole(place.key("spot"), wash == nullptr ? 1 : std::int64_t{wash->spot} + 1, 1,
                 mostNumber);
}

void ovenSpot(ValueChecks& checks, const Place& place, const std::optional<OvenSpot>& spot) {
    if (spot) {
        checks.id(place.key("oven"), spot->oven.text);
        checks.whole(place.key("slot"), std::int64_t{spot->firstSlot} + 1, 1, mostNumber);
        checks.temperature(place.key("setTo"), spot->setTo);
    }
}

template <class Tag>
void ids(ValueChecks& checks, const Place& place, const std::vector<Id<Tag>>& values) {
    for (std::size_t i = 0; i < values.size(); ++i) {
        checks.id(place.at(i), values[i].text);
    }
}

void placement(ValueChecks& checks, const Place& place, const Placement& placement) {
    checks.offset(place.key("start"), placement.start - Instant::serving());
    ids(checks, place.key("burners"), placement.burners);
    ovenSpot(checks, place.key("oven"), placement.oven);
    const Place wares = place.key("wares");
    for (std::size_t i = 0; i < placement.wares.size(); ++i) {
        checks.id(wares.at(i), placement.wares[i].ware.text);
        checks.whole(wares.at(i), std::int64_t{placement.wares[i].number} + 1, 1, mostNumber);
    }
    const Place hands = place.key("hands");
    for (std::size_t i = 0; i < placement.hands.size(); ++i) {
        checks.id(hands.at(i), placement.hands[i].cook.text);
        checks.whole(hands.at(i), placement.hands[i].pieces, 0, 1'000'000'000);
    }
    ids(checks, place.key("watchers"), placement.watchers);
    ids(checks, place.key("keptOn"), placement.keptOn);
    ovenSpot(checks, place.key("keptIn"), placement.keptIn);
    checks.duration(place.key("lasts"), placement.lasts);
}

}  // namespace

void validateChoices(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps) {
    const Place file;
    const Place place = file.key("choices");
    MetIds replaced;  // a step is done ahead or swapped in, not both
    doneAhead(checks, place.key("doneAhead"), lesson, steps, replaced);
    swapIns(checks, place.key("swapIns"), lesson, steps, replaced);
    const Place batches = place.key("batches");
    MetIds met;
    for (std::size_t i = 0; i < lesson.choices.batches.size(); ++i) {
        const Place at = batches.at(i);
        chosenStep(checks, at, lesson.choices.batches[i].step, steps, met);
        checks.whole(at.key("batches"), lesson.choices.batches[i].batches, 1, mostBatches);
    }
}

void validatePlacements(ValueChecks& checks, const Placements& placements) {
    const Place file;
    const Place list = file.key("placements");
    std::size_t index = 0;
    for (const auto& [key, value] : placements) {
        if (checks.full()) {
            return;
        }
        const Place place = list.at(index++);
        validateKey(checks, place, key);
        placement(checks, place, value);
    }
}

}  // namespace rangeline
