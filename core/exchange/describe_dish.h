#pragma once
// Dishes in a lesson file: see describe_kitchen.h.

#include "exchange/of.h"
#include "model/dish.h"

namespace rangeline {

template <class F>
void describe(F& f, Of<BurnerHeat>) {
    f.orJust(&BurnerHeat::level);
    f.may("level", &BurnerHeat::level);
    f.may("leastPower", &BurnerHeat::leastPower);
    f.may("burners", &BurnerHeat::burners);
    f.may("staysOnHeat", &BurnerHeat::staysOnHeat);
}

template <class F>
void describe(F& f, Of<OvenHeat>) {
    f.range(&OvenHeat::lowest, &OvenHeat::highest);
    f.may("mode", &OvenHeat::mode);
    f.may("doorShut", &OvenHeat::doorShut);
    f.may("slots", &OvenHeat::slots);
}

template <class F>
void describe(F& f, Of<WareNeed>) {
    f.orJust(&WareNeed::kind);
    f.must("kind", &WareNeed::kind);
    f.may("leastWidth", &WareNeed::leastWidth);
    f.volume("leastVolume", &WareNeed::leastMillilitres);
    f.may("count", &WareNeed::count);
    f.may("carriesOn", &WareNeed::carriesOn);
    f.may("turnedOut", &WareNeed::turnedOut);
}

template <class F>
void describe(F& f, Of<PoolNeed>) {
    f.orJust(&PoolNeed::pool);
    f.must("pool", &PoolNeed::pool);
    f.may("amount", &PoolNeed::amount);
}

template <class F>
void describe(F& f, Of<Use>) {
    f.orJust(&Use::step);
    f.must("step", &Use::step);
    f.may("each", &Use::each);
}

template <class F>
void describe(F& f, Of<Keeping>) {
    f.may("atRoom", &Keeping::atRoom);
    f.may("cold", &Keeping::cold);
    f.may("hot", &Keeping::hot);
    f.may("storage", &Keeping::storage);
    f.may("place", &Keeping::place);
    f.may("holdingHeat", &Keeping::holdingHeat);
    f.may("waitingWeight", &Keeping::waitingWeight);
    f.may("mayBeDoneAhead", &Keeping::mayBeDoneAhead);
    f.may("mayBeSwappedIn", &Keeping::mayBeSwappedIn);
}

template <class F>
void describe(F& f, Of<Hazards>) {
    f.may("food", &Hazards::food);
    f.may("target", &Hazards::target);
    f.may("allergens", &Hazards::allergens);
    f.may("dangers", &Hazards::dangers);
    f.may("raw", &Hazards::raw);
    f.may("readyToEat", &Hazards::readyToEat);
}

template <class F>
void describe(F& f, Of<Step>) {
    f.must("id", &Step::id);
    f.may("name", &Step::name);
    f.may("technique", &Step::technique);
    f.may("cue", &Step::cue);
    f.must("time", &Step::time);
    f.may("timePer", &Step::timePer);
    f.may("attention", &Step::segments);
    f.may("piecesPerCover", &Step::piecesPerCover);
    f.may("piecesPerBatch", &Step::piecesPerBatch);
    f.may("pieceWidth", &Step::pieceWidth);
    f.volume("volumePerCover", &Step::millilitresPerCover);
    f.may("batchesNeedWash", &Step::batchesNeedWash);
    f.may("mayBeShared", &Step::mayBeShared);
    f.may("cooks", &Step::cooks);
    f.may("needsAbility", &Step::needsAbility);
    f.may("classWatches", &Step::classWatches);
    f.template alternative<BurnerHeat>("burner", &Step::heat);
    f.template alternative<OvenHeat>("oven", &Step::heat);
    f.may("wares", &Step::wares);
    f.may("pools", &Step::pools);
    f.may("uses", &Step::uses);
    f.may("after", &Step::after);
    f.may("hazards", &Step::hazards);
    f.may("plates", &Step::plates);
    f.may("afterServing", &Step::afterServing);
    f.may("onlyIfAhead", &Step::onlyIfAhead);
}

template <class F>
void describe(F& f, Of<Link>) {
    f.point("from", &Link::from);
    f.point("to", &Link::to);
    f.may("least", &Link::least);
    f.may("most", &Link::most);
    f.may("each", &Link::each);
}

template <class F>
void describe(F& f, Of<Ingredient>) {
    f.must("name", &Ingredient::name);
    f.may("amount", &Ingredient::amount);
    f.may("cut", &Ingredient::cut);
    f.may("note", &Ingredient::note);
    f.may("allergens", &Ingredient::allergens);
    f.may("scaling", &Ingredient::scaling);
    f.may("kind", &Ingredient::kind);
    f.may("usablePercent", &Ingredient::usablePercent);
}

template <class F>
void describe(F& f, Of<SimplerForm>) {
    f.must("how", &SimplerForm::how);
    f.must("without", &SimplerForm::without);
}

template <class F>
void describe(F& f, Of<Component>) {
    f.must("id", &Component::id);
    f.may("name", &Component::name);
    f.may("ingredients", &Component::ingredients);
    f.may("steps", &Component::steps);
    f.may("simpler", &Component::simpler);
}

template <class F>
void describe(F& f, Of<Dish>) {
    f.must("id", &Dish::id);
    f.may("name", &Dish::name);
    f.may("writtenFor", &Dish::writtenFor);
    f.may("perCover", &Dish::perCover);
    f.may("platesHold", &Dish::platesHold);
    f.may("components", &Dish::components);
    f.may("links", &Dish::links);
}

}  // namespace rangeline
