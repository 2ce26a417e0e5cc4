#include "document/small_supper.h"

namespace rangeline::test {

LessonBuilder smallSupper() {
    LessonBuilder b;
    b.cook("bob");
    b.burner("left");
    b.burner("right");
    b.oven("oven");
    b.pool("sink", "sink", 1);
    b.ware("pan", "saute-pan", 2).cleaning = {2_min, PoolId{"sink"}};
    b.ware("sheet", "sheet");
    b.step("trim", {hands(5_min)});
    Step& sear = b.step("char", {hands(2_min), watch(8_min)});
    sear.heat = onBurner();
    sear.wares = {fresh("saute-pan")};
    Step& simmer = b.step("simmer", {away(10_min)});
    simmer.heat = onBurner();
    simmer.wares = {carryOn("saute-pan", "char")};
    simmer.wares.front().turnedOut = true;
    Step& roast = b.step("roast", {hands(1_min), away(29_min)});
    roast.heat = inOven(400_F, 450_F);
    roast.wares = {fresh("sheet")};
    b.step("plate", {hands(3_min)}).plates = true;
    b.uses("char", "trim");
    b.uses("simmer", "char");
    b.uses("plate", "simmer");
    b.uses("plate", "roast");
    return b;
}

LessonBuilder placedSupper() {
    LessonBuilder b = smallSupper();
    assign(b.place("trim", -60), "ann");
    Placement& sear = b.place("char", -50);
    assign(sear, "ann", 1);
    sear.burners = {BurnerId{"left"}};
    sear.wares = {{WareId{"pan"}, 0}};
    b.place("simmer", -40).burners = {BurnerId{"left"}};
    Placement& roast = b.place("roast", -40);
    assign(roast, "ann");
    roast.oven = spot("oven", 425_F);
    roast.wares = {{WareId{"sheet"}, 0}};
    assign(b.place("plate", -3), "ann");
    b.placeTurnOn("oven", minute(-51), 425_F, "bob");
    return b;
}

}  // namespace rangeline::test
