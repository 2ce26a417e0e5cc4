#include "text/supper.h"

namespace rangeline::test {

namespace {

void addKitchen(LessonBuilder& builder) {
    builder.oven("oven").name = "oven";
    builder.burner("left").name = "front left";
    builder.ware("pan", "saute-pan", 2).name = "sauté pan";
    builder.ware("sheet", "sheet", 2).name = "half sheet";
    builder.lesson.kitchen.cooks[0].name = "Robin";
}

WareNeed turnedOut(const char* kind) {
    WareNeed need = fresh(kind);
    need.turnedOut = true;
    return need;
}

void addOvenStep(LessonBuilder& builder, const char* id, const char* name, Duration takes,
                 Temperature lowest) {
    Step& step = builder.step(id, {away(takes)});
    step.name = name;
    step.heat = inOven(lowest, lowest);
    step.wares = {turnedOut("sheet")};
}

void placeInOven(LessonBuilder& builder, const char* id, std::int64_t at, Temperature setTo,
                 int slot) {
    Placement& placement = builder.place(id, at);
    placement.oven = spot("oven", setTo, slot);
    placement.wares = {{WareId{"sheet"}, slot}};
}

}  // namespace

LessonBuilder supperBuilder() {
    LessonBuilder builder;
    addKitchen(builder);
    addOvenStep(builder, "roast", "Roast the thighs", 60_min, 425_F);
    addOvenStep(builder, "bake", "Bake the gratin", 45_min, 375_F);
    Step& leeks = builder.step("char", {hands(10_min)});
    leeks.name = "Char the leeks";
    leeks.cue = "until the edges are black";
    leeks.heat = onBurner();
    leeks.wares = {turnedOut("saute-pan")};
    placeInOven(builder, "roast", -100, 425_F, 0);
    placeInOven(builder, "bake", -80, 375_F, 1);
    Placement& charring = builder.place("char", -50);
    charring.burners = {BurnerId{"left"}};
    charring.wares = {{WareId{"pan"}, 1}};
    assign(charring, "ann");
    return builder;
}

Supper::Supper(LessonBuilder builder, const QLocale& locale)
    : lesson(std::move(builder.lesson)),
      expanded(expand(lesson)),
      context{lesson, expanded, locale} {}

}  // namespace rangeline::test
