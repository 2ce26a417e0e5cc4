#include <gtest/gtest.h>

#include <functional>

#include "model/validate.h"
#include "support/rich_lesson.h"

namespace rangeline {
namespace {

constexpr const char* place = "servings[0].dish.components[0].steps[1]";

/// The first fault after a change to the rich lesson's roasting, whose place is cut to what
/// follows the step's.
Fault faultOf(const std::function<void(Step&)>& spoil) {
    Lesson lesson = test::richLesson();
    spoil(lesson.servings[0].dish.components[0].steps[1]);
    const std::vector<Fault> faults = validate(lesson);
    if (faults.empty()) {
        return {FaultCode::EmptyFile, "no fault", {}};
    }
    Fault fault = faults.front();
    EXPECT_TRUE(fault.place.starts_with(place)) << fault.place;
    fault.place.erase(0, std::string_view(place).size());
    return fault;
}

TEST(ValidateStep, TimesAreInOrderAndInRange) {
    using enum FaultCode;
    const Duration minute = Duration::minutes(1);
    EXPECT_EQ(faultOf([&](Step& s) {
                  s.time = {minute * 3, minute * 2, minute * 4};
              }),
              (Fault{DurationOrder, ".time", {"3 min", "2 min", "4 min"}}));
    EXPECT_EQ(faultOf([&](Step& s) {
                  s.time = {-minute, minute, minute};
              }),
              (Fault{OutOfRange, ".time", {"-1 min", "0 min", "168 h"}}));
    EXPECT_EQ(faultOf([&](Step& s) { s.time.longest = Duration::hours(200); }),
              (Fault{OutOfRange, ".time", {"200 h", "0 min", "168 h"}}));
}

TEST(ValidateStep, FixedSegmentsFitIntoTheShortestTime) {
    const auto segments = [](int minutes) {
        return [minutes](Step& s) {
            s.segments = {{Attention::Hands, Duration::minutes(minutes), false},
                          {Attention::Away, Duration::hours(1), false}};
        };
    };
    EXPECT_EQ(faultOf(segments(20)).place, "no fault");
    EXPECT_EQ(faultOf(segments(21)),
              (Fault{FaultCode::SegmentsTooLong, ".attention", {"21 min", "20 min"}}));
    EXPECT_EQ(faultOf([](Step& s) {
                  s.segments = {{Attention::Hands, {}, true}, {Attention::Away, {}, true}};
              }),
              (Fault{FaultCode::Contradiction, ".attention[1]", {"rest", "rest"}}));
}

TEST(ValidateStep, ATemperatureThatNoOvenReachesIsNamed) {
    const auto at = [](Temperature t) {
        return [t](Step& s) { s.heat = OvenHeat{t, t, OvenMode::Bake, false, {}}; };
    };
    EXPECT_EQ(faultOf(at(Temperature::celsius(290))).place, "no fault");
    EXPECT_EQ(faultOf(at(Temperature::celsius(480))),
              (Fault{FaultCode::AboveOven, ".oven", {"480 °C", "290 °C"}}));
    EXPECT_EQ(faultOf(at(Temperature::celsius(70))),
              (Fault{FaultCode::BelowOven, ".oven", {"70 °C", "170 °F"}}));
    EXPECT_EQ(
        faultOf([](Step& s) {
            s.heat = OvenHeat{
                Temperature::celsius(200), Temperature::celsius(100), OvenMode::Bake, false, {}};
        }),
        (Fault{FaultCode::Contradiction, ".oven", {"to", "from"}}));
}

TEST(ValidateStep, TheHottestOfSeveralOvensCounts) {
    Lesson lesson = test::richLesson();
    Oven second = lesson.kitchen.ovens[0];
    second.id = OvenId{"second"};
    second.highest = Temperature::celsius(500);
    lesson.kitchen.ovens.push_back(second);
    lesson.servings[0].dish.components[0].steps[1].heat =
        OvenHeat{Temperature::celsius(480), Temperature::celsius(480), OvenMode::Bake, false, {}};
    EXPECT_EQ(validate(lesson), std::vector<Fault>());
}

TEST(ValidateStep, ABurnerNeedsAVesselThatGoesOnOne) {
    const auto onBurner = [](const char* kind, bool stays) {
        return [=](Step& s) {
            s.heat = BurnerHeat{"low", {}, 1, stays};
            s.wares[0] = WareNeed{kind, {}, {}, 1, {}, false};
        };
    };
    EXPECT_EQ(faultOf(onBurner("saute-pan", false)).place, "no fault");
    EXPECT_EQ(faultOf(onBurner("bowl", false)), (Fault{FaultCode::NeedsVessel, ".burner", {}}));
    EXPECT_EQ(
        faultOf(onBurner("saute-pan", true)),
        (Fault{FaultCode::Contradiction, ".burner.staysOnHeat", {"staysOnHeat", "carriesOn"}}));
}

TEST(ValidateStep, CarryingOnTakesTheSameWares) {
    using enum FaultCode;
    EXPECT_EQ(faultOf([](Step& s) { s.wares[0].carriesOn = StepId{"gone"}; }),
              (Fault{UnknownReference, ".wares[0].carriesOn", {"gone", "step"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.wares[0].kind = "pot"; }),
              (Fault{CarriesOnUnlike, ".wares[0].carriesOn", {"sear", "other-kind"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.wares[0].count = 1; }),
              (Fault{CarriesOnUnlike, ".wares[0].carriesOn", {"sear", "other-count"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.wares.push_back(s.wares[0]); }),
              (Fault{CarriesOnUnlike, ".wares[1].carriesOn", {"sear", "taken-already"}}));
}

TEST(ValidateStep, WhatIsNamedMustExist) {
    using enum FaultCode;
    EXPECT_EQ(faultOf([](Step& s) { s.uses[0].step = StepId{"gone"}; }),
              (Fault{UnknownReference, ".uses[0]", {"gone", "step"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.uses.push_back(s.uses[0]); }),
              (Fault{DuplicateId, ".uses[1]", {"sear"}}));
    EXPECT_EQ(faultOf([](Step& s) {
                  s.pools = {{PoolId{"pond"}, 1}};
              }),
              (Fault{UnknownReference, ".pools[0]", {"pond", "pool"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.onlyIfAhead = StepId{"gone"}; }),
              (Fault{UnknownReference, ".onlyIfAhead", {"gone", "step"}}));
    EXPECT_EQ(
        faultOf([](Step& s) { s.wares[0] = WareNeed{"cauldron", {}, {}, 1, {}, false}; }).place,
        ".wares[0].kind");
    EXPECT_EQ(faultOf([](Step& s) { s.id = StepId{"sear"}; }),
              (Fault{DuplicateId, ".id", {"sear"}}));
}

TEST(ValidateStep, WhatTellsTheLoadsOfAWareNeedsOne) {
    EXPECT_EQ(faultOf([](Step& s) {
                  s.wares.clear();
                  s.heat = std::monostate();
                  s.millilitresPerCover = 200;
              }),
              (Fault{FaultCode::MissingKey, "", {"wares"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.pieceWidth = Length::inches(2); }),
              (Fault{FaultCode::MissingKey, "", {"piecesPerCover"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.millilitresPerCover = 0; }).place, ".volumePerCover");
}

TEST(ValidateStep, PiecesMustBeCountedToSplitThem) {
    EXPECT_EQ(faultOf([](Step& s) { s.piecesPerBatch = 4; }),
              (Fault{FaultCode::MissingKey, "", {"piecesPerCover"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.timePer = TimePer::Piece; }),
              (Fault{FaultCode::MissingKey, "", {"piecesPerCover"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.piecesPerCover = Rational(-3, 2); }),
              (Fault{FaultCode::OutOfRange, ".piecesPerCover", {"-1", "0", "1000000"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.cooks = 0; }),
              (Fault{FaultCode::OutOfRange, ".cooks", {"0", "1", "50"}}));
}

TEST(ValidateStep, FoodIsKeptWhereItCanBe) {
    using enum FaultCode;
    EXPECT_EQ(faultOf([](Step& s) { s.after.storage = Storage::HotInOven; }),
              (Fault{MissingKey, ".after", {"holdingHeat"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.after.storage = Storage::HotOnBurner; }),
              (Fault{NeedsVessel, ".after.storage", {}}));  // the pan was turned out
    EXPECT_EQ(faultOf([](Step& s) {
                  s.after.place = PoolNeed{PoolId{"sink"}, 1};
              }),
              (Fault{Contradiction, ".after.place", {"place", "storage"}}));
    EXPECT_EQ(faultOf([](Step& s) { s.after.holdingHeat = OvenHeat(); }).code, BelowOven);
    EXPECT_EQ(faultOf([](Step& s) { s.after.cold = Duration::hours(400); }),
              (Fault{OutOfRange, ".after.cold", {"400 h", "0 min", "168 h"}}));
}

}  // namespace
}  // namespace rangeline
