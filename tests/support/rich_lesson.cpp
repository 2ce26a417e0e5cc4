#include "support/rich_lesson.h"

namespace rangeline::test {
namespace {

Kitchen richKitchen() {
    Kitchen k;
    k.name = "Teaching kitchen \"B\"";
    k.rangeWidth = Length::inches(30);
    k.burners = {{BurnerId{"front-left"}, "Front left", Length::inches(12),
                  Power{12'000, Power::Unit::BtuPerHour}, Length::millimetres(190),
                  Length::nanometres(165'100'001)},
                 {BurnerId{"back"}, "Back", Length::millimetres(265),
                  Power{1800, Power::Unit::Watt}, Length::inches(20), Length::inches(18)}};
    Oven oven;
    oven.id = OvenId{"oven"};
    oven.name = "Oven";
    oven.slots = 4;
    oven.lowest = Temperature::fahrenheit(170);
    oven.highest = Temperature::celsius(290);
    oven.dialStep = TemperatureDelta::celsius(10);
    oven.modes = {OvenMode::Convection, OvenMode::Bake, OvenMode::Broil};
    oven.warmUp = {{Temperature::fahrenheit(350), Duration::minutes(12)},
                   {Temperature::fahrenheit(450), Duration::seconds(1105)}};
    oven.heatsPerMinute = TemperatureDelta::fahrenheit(12);
    oven.coolsPerMinute = TemperatureDelta::ofUnits(225);  // 4.5 °F, which is 2.5 °C
    oven.modeChange = Duration::minutes(2);
    k.ovens = {oven};
    Ware pan;
    pan.id = WareId{"wide-pan"};
    pan.name = "Wide pan";
    pan.kind = "saute-pan";
    pan.count = 2;
    pan.width = Length::inches(12);
    pan.depth = Length::nanometres(1'587'500 * 161);  // 10 1/16 in
    pan.millilitres = 2500;
    pan.rackSlots = 2;
    pan.cleaning = {Duration::minutes(3), PoolId{"sink"}};
    k.wares = {pan};
    k.pools = {{PoolId{"sink"}, "Sink", "sink", 2}, {PoolId{"shelf"}, "Shelf", "fridge-shelf", 3}};
    k.cooks = {{CookId{"teacher"}, "Teacher", 90, {"teacher", "filleting"}},
               {CookId{"helper"}, "Helper", 125, {}}};
    k.watchLimit = 2;
    k.room = Temperature::fahrenheit(77);
    return k;
}

Step searing() {
    Step s;
    s.id = StepId{"sear"};
    s.name = "Sear the thighs";
    s.technique = "sear";
    s.cue = "until the skin lets go — crème brûlée brown";
    s.time = {Duration::minutes(6), Duration::minutes(8), Duration::seconds(725)};
    s.timePer = TimePer::Piece;
    s.segments = {{Attention::Hands, Duration::minutes(2), false},
                  {Attention::Watch, Duration(), true},
                  {Attention::Away, Duration::seconds(45), false}};
    s.piecesPerCover = Rational(3, 2);
    s.piecesPerBatch = 6;
    s.pieceWidth = Length::inches(2);
    s.millilitresPerCover = 90;
    s.batchesNeedWash = true;
    s.mayBeShared = true;
    s.cooks = 2;
    s.needsAbility = "teacher";
    s.classWatches = true;
    s.heat = BurnerHeat{"medium-high", Power{9000, Power::Unit::BtuPerHour}, 2, false};
    s.wares = {{"saute-pan", Length::inches(10), 2000, 2, {}, false}};
    s.pools = {{PoolId{"sink"}, 2}};
    s.after.atRoom = Duration::minutes(20);
    s.after.cold = Duration::hours(48);
    s.after.hot = Duration::minutes(45);
    s.after.storage = Storage::HotInOven;
    s.after.holdingHeat = OvenHeat{Temperature::fahrenheit(170), Temperature::fahrenheit(200),
                                   OvenMode::Convection, true, 2};
    s.after.waitingWeight = 3;
    s.after.mayBeDoneAhead = true;
    s.after.mayBeSwappedIn = true;
    s.hazards = {"poultry", Temperature::tenthsCelsius(739), {"celery"}, {"hot-fat", "steam"}, true,
                 true};
    return s;
}

Step roasting() {
    Step s;
    s.id = StepId{"roast"};
    s.time = {Duration::minutes(20), Duration::minutes(25), Duration::minutes(40)};
    s.segments = {{Attention::Watch, {}, false}};
    s.heat = OvenHeat{
        Temperature::fahrenheit(425), Temperature::fahrenheit(425), OvenMode::Convection, true, {}};
    s.wares = {{"saute-pan", {}, {}, 2, StepId{"sear"}, true}};
    s.uses = {{StepId{"sear"}, true}};
    s.after.storage = Storage::Cold;
    s.after.place = PoolNeed{PoolId{"shelf"}, 2};
    return s;
}

Step plating() {
    Step s;
    s.id = StepId{"plate"};
    s.time = {Duration::minutes(3), Duration::minutes(3), Duration::minutes(3)};
    s.segments = {{Attention::Hands, {}, false}};
    s.uses = {{StepId{"roast"}, false}};
    s.plates = true;
    return s;
}

Step washingUp() {
    Step s;
    s.id = StepId{"wash-up"};
    s.time = {Duration::minutes(9), Duration::minutes(9), Duration::minutes(9)};
    s.afterServing = true;
    s.onlyIfAhead = StepId{"sear"};
    return s;
}

Dish richDish() {
    Dish d;
    d.id = DishId{"thighs"};
    d.name = "Thighs";
    d.writtenFor = 6;
    d.perCover = "two thighs and a spoon of glaze";
    d.platesHold = Duration::minutes(4);
    Component c;
    c.id = ComponentId{"meat"};
    c.name = "Meat";
    c.ingredients = {
        {"thighs",
         Amount{Rational(12), Rational(14), ""},
         "boned",
         "skin on",
         {"celery"},
         Scaling::WithCovers,
         "meat",
         85},
        {"cider", Amount{Rational(3, 2), Rational(3, 2), "fl oz"}, "", "", {}, Scaling::Fixed},
        {"salt", {}, "", "to taste", {}, Scaling::WithCovers}};
    c.steps = {searing(), roasting(), plating(), washingUp()};
    c.simpler = SimplerForm{"carved from the pan, no oven", {StepId{"roast"}}};
    d.components = {c};
    d.links = {{{StepId{"sear"}, StepEnd::End},
                {StepId{"roast"}, StepEnd::Start},
                Duration::minutes(-2),
                Duration::minutes(10),
                true},
               {{StepId{"sear"}, StepEnd::Start},
                {StepId{"plate"}, StepEnd::End},
                Duration::minutes(5),
                {},
                false}};
    return d;
}

void placeAll(Lesson& lesson) {
    Placement sear;
    sear.start = Instant::atMinutes(-95);
    sear.burners = {BurnerId{"front-left"}, BurnerId{"back"}};
    sear.wares = {{WareId{"wide-pan"}, 0}, {WareId{"wide-pan"}, 1}};
    sear.hands = {{CookId{"teacher"}, 4}, {CookId{"helper"}, 0}};
    sear.watchers = {CookId{"helper"}};
    sear.keptOn = {BurnerId{"back"}};
    sear.keptIn = OvenSpot{OvenId{"oven"}, 2, Temperature::fahrenheit(175), OvenMode::Bake};
    sear.pinned = true;
    sear.started = true;
    sear.lasts = Duration::seconds(500);
    lesson.placements[StepKey{StepId{"sear"}, 1, 1}] = sear;
    Placement wash;
    wash.start = Instant::atMinutes(-30);
    wash.hands = {{CookId{"helper"}, 0}};
    lesson.placements[WashKey{{StepId{"gone-since"}, 2, 1}, 1}] = wash;
    Placement turnOn;
    turnOn.start = Instant::atSeconds(-7230);
    turnOn.oven = OvenSpot{OvenId{"oven"}, 0, Temperature::celsius(220), OvenMode::Convection};
    lesson.placements[TurnOnKey{OvenId{"oven"}, 1}] = turnOn;
}

}  // namespace

Lesson richLesson() {
    Lesson lesson;
    Head& head = lesson.head;
    head.name = "Thighs, twice";
    head.servingTime = "2028-02-29T18:30";
    head.zone = "America/Chicago";
    head.grain = Duration::seconds(30);
    head.kitchenOpens = Instant::atMinutes(-240);
    head.cookingMayStart = Instant::atMinutes(-200);
    head.tasting = Instant::atMinutes(15);
    head.everyoneOut = Instant::atMinutes(90);
    head.crew = {CookId{"teacher"}, CookId{"helper"}};
    head.groups = {2, {"oven", "teacher"}, Duration::minutes(5)};
    head.units = Units::Metric;
    head.profile = SafetyProfile::FoodCode;
    head.aim = Aim::Calm;
    head.lateAllowed = true;
    head.guestAllergens = {"sesame"};
    lesson.kitchen = richKitchen();
    lesson.servings = {{richDish(), 8, Duration::minutes(-10)}};
    lesson.choices.doneAhead = {{StepId{"sear"},
                                 Duration::hours(20),
                                 Storage::Cold,
                                 PoolNeed{PoolId{"shelf"}, 1},
                                 {{WareId{"wide-pan"}, 1}}}};
    lesson.choices.batches = {{StepId{"roast"}, 3}};
    lesson.servings[0].dish.components[0].steps[2].after.mayBeSwappedIn = true;
    lesson.choices.swapIns = {{StepId{"plate"}, {{WareId{"wide-pan"}, 0}}}};
    placeAll(lesson);
    return lesson;
}

}  // namespace rangeline::test
