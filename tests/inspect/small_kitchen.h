#pragma once
// Two burners, an oven, two pans and a pot; what is placed is worked out by hand.

#include "support/lesson_builder.h"

namespace rangeline::test {

/// "sear" in pan 1 on the front left burner from -30 to -20, "simmer" in the pot on the back right
/// one from -25 to -5, "roast" in the oven's upper slot at 400 °F from -60 to -30, the oven turned
/// on at -80, "plate" from -5 to 0, "garnish" not placed. All by ann.
inline LessonBuilder smallKitchen() {
    LessonBuilder builder;
    builder.lesson.kitchen.rangeWidth = Length::millimetres(760);
    Burner& front = builder.burner("front-left");
    front.name = "front left";
    front.fromLeft = Length::millimetres(190);
    front.fromFront = Length::millimetres(160);
    front.widestVessel = Length::millimetres(280);
    Burner& back = builder.burner("back-right");
    back.name = "back right";
    back.fromLeft = Length::millimetres(570);
    back.fromFront = Length::millimetres(430);
    back.widestVessel = Length::millimetres(280);
    builder.oven("oven");
    builder.ware("pan", "saute-pan", 2).width = Length::millimetres(280);
    builder.ware("pot", "pot").width = Length::millimetres(140);
    builder.ware("sheet", "sheet");

    Step& sear = builder.step("sear", {hands(10_min)});
    sear.heat = onBurner();
    sear.wares = {fresh("saute-pan")};
    Step& simmer = builder.step("simmer", {watch(20_min)});
    simmer.heat = onBurner();
    simmer.wares = {fresh("pot")};
    Step& roast = builder.step("roast", {away(30_min)});
    roast.heat = inOven(375_F, 425_F);
    roast.wares = {fresh("sheet")};
    builder.step("garnish", {hands(5_min)});
    builder.step("plate", {hands(5_min)}).plates = true;

    Placement& onFront = builder.place("sear", -30);
    onFront.burners = {BurnerId{"front-left"}};
    onFront.wares = {{WareId{"pan"}, 0}};
    assign(onFront, "ann");
    Placement& onBack = builder.place("simmer", -25);
    onBack.burners = {BurnerId{"back-right"}};
    onBack.wares = {{WareId{"pot"}, 0}};
    onBack.watchers = {CookId{"ann"}};
    Placement& inside = builder.place("roast", -60);
    inside.oven = spot("oven", 400_F);
    inside.wares = {{WareId{"sheet"}, 0}};
    builder.placeTurnOn("oven", minute(-80), 400_F, "ann");
    assign(builder.place("plate", -5), "ann");
    return builder;
}

}  // namespace rangeline::test
