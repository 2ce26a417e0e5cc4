#pragma once
// The lesson itself, and its placements, in a lesson file: see describe_kitchen.h.

#include "exchange/describe_dish.h"
#include "exchange/describe_kitchen.h"
#include "exchange/of.h"
#include "exchange/placement_entry.h"
#include "model/lesson.h"

namespace rangeline {

template <class F>
void describe(F& f, Of<Groups>) {
    f.may("count", &Groups::count);
    f.may("shared", &Groups::shared);
    f.may("stagger", &Groups::stagger);
}

template <class F>
void describe(F& f, Of<Head>) {
    f.may("name", &Head::name);
    f.must("servingTime", &Head::servingTime);
    f.must("zone", &Head::zone);
    f.may("grain", &Head::grain);
    f.may("kitchenOpens", &Head::kitchenOpens);
    f.may("cookingMayStart", &Head::cookingMayStart);
    f.may("tasting", &Head::tasting);
    f.may("everyoneOut", &Head::everyoneOut);
    f.must("crew", &Head::crew);
    f.may("groups", &Head::groups);
    f.may("units", &Head::units);
    f.may("profile", &Head::profile);
    f.may("aim", &Head::aim);
    f.may("lateAllowed", &Head::lateAllowed);
    f.may("guestAllergens", &Head::guestAllergens);
}

template <class F>
void describe(F& f, Of<Serving>) {
    f.must("covers", &Serving::covers);
    f.may("offset", &Serving::offset);
    f.must("dish", &Serving::dish);
}

template <class F>
void describe(F& f, Of<DoneAhead>) {
    f.must("step", &DoneAhead::step);
    f.must("before", &DoneAhead::before);
    f.may("storage", &DoneAhead::storage);
    f.may("place", &DoneAhead::place);
    f.may("wares", &DoneAhead::wares);
}

template <class F>
void describe(F& f, Of<SwapIn>) {
    f.must("step", &SwapIn::step);
    f.may("wares", &SwapIn::wares);
}

template <class F>
void describe(F& f, Of<StatedBatches>) {
    f.must("step", &StatedBatches::step);
    f.must("batches", &StatedBatches::batches);
}

template <class F>
void describe(F& f, Of<Choices>) {
    f.may("doneAhead", &Choices::doneAhead);
    f.may("swapIns", &Choices::swapIns);
    f.may("batches", &Choices::batches);
}

template <class F>
void describe(F& f, Of<OvenSpot>) {
    f.must("oven", &OvenSpot::oven);
    f.ordinal("slot", &OvenSpot::firstSlot);
    f.must("setTo", &OvenSpot::setTo);
    f.may("mode", &OvenSpot::mode);
}

template <class F>
void describe(F& f, Of<Share>) {
    f.orJust(&Share::cook);
    f.must("cook", &Share::cook);
    f.may("pieces", &Share::pieces);
}

template <class F>
void describe(F& f, Of<PlacementEntry>) {
    f.may("step", &PlacementEntry::step);
    f.may("washAfter", &PlacementEntry::washAfter);
    f.may("turnOn", &PlacementEntry::turnOn);
    f.ordinal("batch", &PlacementEntry::batch);
    f.ordinal("spot", &PlacementEntry::spot);
    f.ordinal("group", &PlacementEntry::group);
    f.must("start", &PlacementEntry::start);
    f.may("burners", &PlacementEntry::burners);
    f.may("oven", &PlacementEntry::oven);
    f.may("wares", &PlacementEntry::wares);
    f.may("hands", &PlacementEntry::hands);
    f.may("watchers", &PlacementEntry::watchers);
    f.may("keptOn", &PlacementEntry::keptOn);
    f.may("keptIn", &PlacementEntry::keptIn);
    f.may("pinned", &PlacementEntry::pinned);
    f.may("started", &PlacementEntry::started);
    f.may("lasts", &PlacementEntry::lasts);
}

}  // namespace rangeline
