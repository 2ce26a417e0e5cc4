// Where a step that is done in the fridge stands, in kitchens with and without the usual shelf.

#include "model/fridge.h"

#include <gmock/gmock.h>

#include "model/validate.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

/// A dish that is chilled, in a kitchen with that pool or with none.
LessonBuilder chilled(const char* pool) {
    LessonBuilder builder;
    if (*pool != '\0') {
        builder.pool(pool, "fridge-shelf", 1);
    }
    keepInFridge(builder.step("chill", {away(60_min)}), true);
    Dish& dish = builder.lesson.servings[0].dish;
    dish = inFridgeOf(builder.lesson.kitchen, dish);
    return builder;
}

TEST(Fridge, StepsStandOnTheUsualShelfOrOnTheKitchensOwn) {
    for (const char* pool : {"fridge-shelf", "cold-drawer"}) {
        LessonBuilder builder = chilled(pool);
        EXPECT_THAT(validate(builder.lesson), testing::IsEmpty()) << pool;
        const Step& step = builder.get("chill");
        EXPECT_THAT(step.pools, testing::ElementsAre(PoolNeed{PoolId{pool}, 1}));
        EXPECT_EQ(step.after.storage, Storage::Cold);
        EXPECT_EQ(step.after.place, (PoolNeed{PoolId{pool}, 1}));
    }
}

TEST(Fridge, StepsStandNowhereInParticularWhereThereIsNone) {
    LessonBuilder builder = chilled("");
    EXPECT_THAT(validate(builder.lesson), testing::IsEmpty());
    EXPECT_THAT(builder.get("chill").pools, testing::IsEmpty());
    EXPECT_EQ(builder.get("chill").after, Keeping());
}

}  // namespace
}  // namespace rangeline::test
