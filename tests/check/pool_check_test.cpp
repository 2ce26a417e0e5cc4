#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Steps of ten minutes on a counter for three.
LessonBuilder counter() {
    LessonBuilder builder;
    builder.pool("counter", "counter", 3);
    return builder;
}

void spread(LessonBuilder& builder, const char* id, std::int64_t at, int amount) {
    builder.step(id, {away(10_min)}).pools = {{PoolId{"counter"}, amount}};
    builder.place(id, at);
}

std::vector<Finding> over(const LessonBuilder& builder) {
    return findingsOf(builder.lesson, FindingCode::PoolOver);
}

TEST(Pool, UpToItsCapacityAndTouching) {
    auto builder = counter();
    spread(builder, "a", -40, 2);
    spread(builder, "b", -35, 1);
    spread(builder, "c", -30, 2);
    EXPECT_THAT(over(builder), IsEmpty());
}

TEST(Pool, OneFindingForAnUnbrokenTimeOverCapacity) {
    auto builder = counter();
    spread(builder, "a", -40, 2);
    spread(builder, "b", -38, 2);
    spread(builder, "c", -31, 2);
    const auto found = over(builder);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("a"), key("b"), key("c")));
    EXPECT_EQ(found[0].interval, minutes(-38, -28));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(std::int64_t{6}), Figure(std::int64_t{3})));
}

TEST(Pool, TwoTimesOverCapacityAreTwoFindings) {
    auto builder = counter();
    spread(builder, "a", -60, 2);
    spread(builder, "b", -55, 2);
    spread(builder, "c", -30, 4);
    const auto found = over(builder);
    ASSERT_THAT(found, SizeIs(2));
    EXPECT_EQ(found[0].interval, minutes(-55, -50));
    EXPECT_THAT(found[1].keys, ElementsAre(key("c")));
}

TEST(Pool, FoodTakesItsPlaceUntilItIsUsed) {
    auto builder = counter();
    spread(builder, "a", -60, 1);
    builder.get("a").after.place = PoolNeed{PoolId{"counter"}, 3};
    spread(builder, "b", -30, 1);
    builder.uses("b", "a");
    spread(builder, "c", -41, 1);
    const auto found = over(builder);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("a"), key("c")));
    EXPECT_EQ(found[0].interval, minutes(-41, -31));
}

TEST(Pool, WashesTakeTheSink) {
    LessonBuilder builder;
    builder.cook("ben");
    builder.pool("sink", "sink", 1);
    builder.ware("bowl", "bowl", 2).cleaning = {2_min, PoolId{"sink"}};
    for (const int bowl : {0, 1}) {
        const std::string id = bowl == 0 ? "a" : "b";
        builder.step(id, {away(10_min)}).wares = {fresh("bowl")};
        builder.place(id, -40).wares = {{WareId{"bowl"}, bowl}};
    }
    builder.placeWash("a", -30, "ann");
    builder.placeWash("b", -28, "ben");
    EXPECT_THAT(over(builder), IsEmpty());
    builder.placeWash("b", -29, "ben");
    ASSERT_THAT(over(builder), SizeIs(1));
    EXPECT_THAT(over(builder)[0].keys, ElementsAre(washAfter("a"), washAfter("b")));
}

}  // namespace
}  // namespace rangeline::test
