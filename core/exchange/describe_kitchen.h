#pragma once
// The kitchen in a lesson file: for each kind of thing its keys, in the order they are written. The
// same description reads and writes; `f` is a FieldReader or a FieldWriter.

#include "exchange/of.h"
#include "model/kitchen.h"
#include "model/placement.h"

namespace rangeline {

template <class F>
void describe(F& f, Of<Burner>) {
    f.must("id", &Burner::id);
    f.may("name", &Burner::name);
    f.may("widestVessel", &Burner::widestVessel);
    f.may("power", &Burner::power);
    f.may("fromLeft", &Burner::fromLeft);
    f.may("fromFront", &Burner::fromFront);
}

template <class F>
void describe(F& f, Of<WarmUpPoint>) {
    f.must("to", &WarmUpPoint::to);
    f.must("takes", &WarmUpPoint::takes);
}

template <class F>
void describe(F& f, Of<Oven>) {
    f.must("id", &Oven::id);
    f.may("name", &Oven::name);
    f.may("slots", &Oven::slots);
    f.must("lowest", &Oven::lowest);
    f.must("highest", &Oven::highest);
    f.may("dialStep", &Oven::dialStep);
    f.may("modes", &Oven::modes);
    f.must("warmUp", &Oven::warmUp);
    f.may("heatsPerMinute", &Oven::heatsPerMinute);
    f.may("coolsPerMinute", &Oven::coolsPerMinute);
    f.may("modeChange", &Oven::modeChange);
}

template <class F>
void describe(F& f, Of<Cleaning>) {
    f.may("takes", &Cleaning::takes);
    f.may("sink", &Cleaning::sink);
}

template <class F>
void describe(F& f, Of<Ware>) {
    f.must("id", &Ware::id);
    f.may("name", &Ware::name);
    f.must("kind", &Ware::kind);
    f.may("count", &Ware::count);
    f.may("width", &Ware::width);
    f.may("depth", &Ware::depth);
    f.volume("volume", &Ware::millilitres);
    f.may("rackSlots", &Ware::rackSlots);
    f.may("cleaning", &Ware::cleaning);
}

template <class F>
void describe(F& f, Of<Pool>) {
    f.must("id", &Pool::id);
    f.may("name", &Pool::name);
    f.must("kind", &Pool::kind);
    f.may("capacity", &Pool::capacity);
}

template <class F>
void describe(F& f, Of<Cook>) {
    f.must("id", &Cook::id);
    f.may("name", &Cook::name);
    f.percent("pace", &Cook::pacePercent);
    f.may("can", &Cook::can);
}

template <class F>
void describe(F& f, Of<Kitchen>) {
    f.may("name", &Kitchen::name);
    f.may("rangeWidth", &Kitchen::rangeWidth);
    f.may("burners", &Kitchen::burners);
    f.may("ovens", &Kitchen::ovens);
    f.may("wares", &Kitchen::wares);
    f.may("pools", &Kitchen::pools);
    f.may("cooks", &Kitchen::cooks);
    f.may("watchLimit", &Kitchen::watchLimit);
    f.may("room", &Kitchen::room);
}

}  // namespace rangeline
