#include <algorithm>

#include "model/quantity_text.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

constexpr std::int64_t mostAtOnce = 50;

/// One step, and where to look up what it names.
struct StepChecks {
    ValueChecks& checks;
    const Place& place;
    const Step& step;
    const Kitchen& kitchen;
    const StepIndex& steps;

    void texts() const;
    void time() const;
    void attention() const;
    void loads() const;
    void burner(const BurnerHeat& heat) const;
    void staysOnHeat(const Place& at) const;
    void oven(const Place& at, const OvenHeat& heat) const;
    void wares() const;
    void carriesOn(const Place& at, const WareNeed& need) const;
    void pools() const;
    void uses() const;
    void keeping() const;
    void keepingPlace(const Place& at) const;
    void hazards() const;
    bool hasWare(bool EquipmentKind::*goes, bool keptIn) const;
};

void StepChecks::texts() const {
    checks.text(place.key("name"), step.name);
    checks.text(place.key("technique"), step.technique);
    checks.text(place.key("cue"), step.cue);
    checks.text(place.key("needsAbility"), step.needsAbility);
}

void StepChecks::time() const {
    const Place at = place.key("time");
    const auto& [shortest, likely, longest] = step.time;
    checks.duration(at, shortest);
    checks.duration(at, likely);
    checks.duration(at, longest);
    if (shortest > likely || likely > longest) {
        checks.report(at, FaultCode::DurationOrder,
                      {toText(shortest), toText(likely), toText(longest)});
    }
}

void StepChecks::attention() const {
    const Place at = place.key("attention");
    checks.whole(at, static_cast<std::int64_t>(step.segments.size()), 0, 100);
    if (step.segments.empty()) {
        return;
    }
    const std::size_t stretching = step.stretchingSegment();
    Duration fixed;
    for (std::size_t i = 0; i < step.segments.size(); ++i) {
        const Segment& segment = step.segments[i];
        checks.duration(at.at(i), segment.length);
        if (segment.stretches && i != stretching) {
            checks.report(at.at(i), FaultCode::Contradiction, {"rest", "rest"});
        }
        fixed += i == stretching ? Duration() : std::min(segment.length, longestDuration);
    }
    if (fixed > step.time.shortest) {
        checks.report(at, FaultCode::SegmentsTooLong, {toText(fixed), toText(step.time.shortest)});
    }
}

void StepChecks::loads() const {
    checks.fraction(place.key("piecesPerCover"), step.piecesPerCover);
    checks.whole(place.key("piecesPerBatch"), step.piecesPerBatch.value_or(1), 1, 1'000'000);
    const bool counted = step.piecesPerCover > Rational(0);
    if (!counted && (step.piecesPerBatch || step.pieceWidth || step.timePer == TimePer::Piece)) {
        checks.report(place, FaultCode::MissingKey, {"piecesPerCover"});
    }
    if (step.wares.empty() && (step.pieceWidth || step.millilitresPerCover)) {
        checks.report(place, FaultCode::MissingKey, {"wares"});
    }
    if (step.pieceWidth) {
        checks.length(place.key("pieceWidth"), *step.pieceWidth);
        if (*step.pieceWidth == Length()) {
            checks.report(place.key("pieceWidth"), FaultCode::OutOfRange,
                          {"0 mm", "1 mm", "10000 mm"});
        }
    }
    checks.whole(place.key("volumePerCover"), step.millilitresPerCover.value_or(1), 1, 100'000);
    checks.whole(place.key("cooks"), step.cooks, 1, mostAtOnce);
}

/// Whether the step uses a ware that goes there (and, if asked, whose food stays in it).
bool StepChecks::hasWare(bool EquipmentKind::*goes, bool keptIn) const {
    return std::ranges::any_of(step.wares, [&](const WareNeed& need) {
        const EquipmentKind* kind = findEquipmentKind(need.kind);
        return kind != nullptr && kind->*goes && !(keptIn && need.turnedOut);
    });
}

void StepChecks::burner(const BurnerHeat& heat) const {
    const Place at = place.key("burner");
    checks.text(at.key("level"), heat.level);
    checks.whole(at.key("leastPower"), heat.leastPower ? heat.leastPower->amount : 1, 1, 1'000'000);
    checks.whole(at.key("burners"), heat.burners, 1, mostAtOnce);
    if (!hasWare(&EquipmentKind::goesOnBurner, false)) {
        checks.report(at, FaultCode::NeedsVessel, {});
    }
    if (heat.staysOnHeat) {
        staysOnHeat(at);
    }
}

/// The vessel must come from a step on as many burners.
void StepChecks::staysOnHeat(const Place& at) const {
    bool comes = false;
    for (const WareNeed& need : step.wares) {
        const StepAt* before = need.carriesOn ? steps.find(*need.carriesOn) : nullptr;
        const auto* heat =
            before == nullptr ? nullptr : std::get_if<BurnerHeat>(&before->step->heat);
        comes =
            comes || (heat != nullptr && heat->burners == std::get<BurnerHeat>(step.heat).burners);
    }
    if (!comes) {
        checks.report(at.key("staysOnHeat"), FaultCode::Contradiction,
                      {"staysOnHeat", "carriesOn"});
    }
}

void StepChecks::oven(const Place& at, const OvenHeat& heat) const {
    checks.temperature(at, heat.lowest);
    checks.temperature(at, heat.highest);
    checks.whole(at.key("slots"), heat.slots.value_or(1), 1, mostAtOnce);
    if (heat.highest < heat.lowest) {
        checks.report(at, FaultCode::Contradiction, {"to", "from"});
    }
    if (kitchen.ovens.empty()) {
        return;
    }
    const Temperature top = std::ranges::max(kitchen.ovens, {}, &Oven::highest).highest;
    const Temperature bottom = std::ranges::min(kitchen.ovens, {}, &Oven::lowest).lowest;
    const Units units = checks.units();
    if (heat.lowest > top) {
        checks.report(at, FaultCode::AboveOven, {toText(heat.lowest, units), toText(top, units)});
    } else if (heat.highest < bottom) {
        checks.report(at, FaultCode::BelowOven,
                      {toText(heat.highest, units), toText(bottom, units)});
    }
}

void StepChecks::wares() const {
    const Place list = place.key("wares");
    checks.whole(list, static_cast<std::int64_t>(step.wares.size()), 0, mostAtOnce);
    for (std::size_t i = 0; i < step.wares.size(); ++i) {
        const WareNeed& need = step.wares[i];
        const Place at = list.at(i);
        checks.kind(at.key("kind"), need.kind, EquipmentRole::Ware);
        checks.length(at.key("leastWidth"), need.leastWidth);
        checks.whole(at.key("leastVolume"), need.leastMillilitres.value_or(1), 1, 1'000'000);
        checks.whole(at.key("count"), need.count, 1, mostAtOnce);
        if (need.carriesOn) {
            carriesOn(at.key("carriesOn"), need);
        }
    }
}

/// A step can go on only in what the other had of that kind, and only once.
void StepChecks::carriesOn(const Place& at, const WareNeed& need) const {
    const StepAt* before = steps.find(*need.carriesOn);
    if (before == nullptr) {
        checks.report(at, FaultCode::UnknownReference, {need.carriesOn->text, "step"});
        return;
    }
    const auto unlike = [&](const char* what) {
        checks.report(at, FaultCode::CarriesOnUnlike, {need.carriesOn->text, what});
    };
    const auto& had = before->step->wares;
    if (std::ranges::find(had, need.kind, &WareNeed::kind) == had.end()) {
        unlike("other-kind");
    } else if (std::ranges::none_of(had, [&](const WareNeed& other) {
                   return other.kind == need.kind && other.count == need.count;
               })) {
        unlike("other-count");
    }
    const auto again = [&](const WareNeed& other) {
        return &other < &need && other.kind == need.kind && other.carriesOn == need.carriesOn;
    };
    if (std::ranges::any_of(step.wares, again)) {
        unlike("taken-already");
    }
}

void StepChecks::pools() const {
    const Place list = place.key("pools");
    MetIds met;
    for (std::size_t i = 0; i < step.pools.size(); ++i) {
        validatePoolNeed(checks, list.at(i), step.pools[i], kitchen);
        if (!met.insert(step.pools[i].pool.text).second) {
            checks.report(list.at(i), FaultCode::DuplicateId, {step.pools[i].pool.text});
        }
    }
}

void StepChecks::uses() const {
    const Place list = place.key("uses");
    MetIds met;
    for (std::size_t i = 0; i < step.uses.size(); ++i) {
        validateStepReference(checks, list.at(i), step.uses[i].step, steps);
        if (!met.insert(step.uses[i].step.text).second) {
            checks.report(list.at(i), FaultCode::DuplicateId, {step.uses[i].step.text});
        }
    }
    if (step.onlyIfAhead) {
        validateStepReference(checks, place.key("onlyIfAhead"), *step.onlyIfAhead, steps);
    }
    if (step.onlyIfAhead == step.id) {
        checks.report(place.key("onlyIfAhead"), FaultCode::CycleInSteps, {step.id.text});
    }
}

void StepChecks::keeping() const {
    const Keeping& after = step.after;
    const Place at = place.key("after");
    checks.duration(at.key("atRoom"), after.atRoom);
    checks.duration(at.key("cold"), after.cold);
    checks.duration(at.key("hot"), after.hot);
    checks.whole(at.key("waitingWeight"), after.waitingWeight, 0, 1000);
    const bool inOven = after.storage == Storage::HotInOven;
    if (after.holdingHeat) {
        oven(at.key("holdingHeat"), *after.holdingHeat);
        if (!inOven) {
            checks.report(at, FaultCode::Contradiction, {"holdingHeat", "storage"});
        }
    } else if (inOven) {
        checks.report(at, FaultCode::MissingKey, {"holdingHeat"});
    }
    if (after.storage == Storage::HotOnBurner && !hasWare(&EquipmentKind::goesOnBurner, true)) {
        checks.report(at.key("storage"), FaultCode::NeedsVessel, {});
    }
    if (after.place) {
        keepingPlace(at.key("place"));
    }
}

void StepChecks::keepingPlace(const Place& at) const {
    const Keeping& after = step.after;
    validatePoolNeed(checks, at, *after.place, kitchen);
    const auto pool = std::ranges::find(kitchen.pools, after.place->pool, &Pool::id);
    const EquipmentKind* kind =
        pool == kitchen.pools.end() ? nullptr : findEquipmentKind(pool->kind);
    const bool hot = after.storage != Storage::Room && after.storage != Storage::Cold;
    const bool warmPlace = after.storage == Storage::Cold && kind != nullptr && !kind->keepsCold;
    if (hot || warmPlace) {
        checks.report(at, FaultCode::Contradiction, {"place", "storage"});
    }
}

void StepChecks::hazards() const {
    const Place at = place.key("hazards");
    checks.text(at.key("food"), step.hazards.food);
    if (step.hazards.target) {
        checks.temperature(at.key("target"), *step.hazards.target);
    }
    checks.texts(at.key("allergens"), step.hazards.allergens);
    checks.texts(at.key("dangers"), step.hazards.dangers);
}

}  // namespace

void validateStep(ValueChecks& checks, const Place& place, const Step& step, const Kitchen& kitchen,
                  const StepIndex& steps) {
    const StepChecks one{checks, place, step, kitchen, steps};
    one.texts();
    one.time();
    one.attention();
    one.loads();
    if (const auto* burner = std::get_if<BurnerHeat>(&step.heat)) {
        one.burner(*burner);
    } else if (const auto* oven = std::get_if<OvenHeat>(&step.heat)) {
        one.oven(place.key("oven"), *oven);
    }
    one.wares();
    one.pools();
    one.uses();
    one.keeping();
    one.hazards();
    if (step.plates && step.afterServing) {
        checks.report(place, FaultCode::Contradiction, {"afterServing", "plates"});
    }
}

}  // namespace rangeline
