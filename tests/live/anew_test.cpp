// The rest of a service arranged anew: by hand, and at random with the checker as the judge.

#include <gmock/gmock.h>

#include "arrange/arrange.h"
#include "check/check.h"
#include "live/anew.h"
#include "support/lesson_builder.h"
#include "support/off_plan.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

live::AnewLimits exact() {
    return {60, 1000};
}

Instant startIn(const live::Anew& anew, const PlacementKey& key) {
    for (const PlacementChange& one : anew.change.changes) {
        if (one.key == key && one.placement) {
            return one.placement->start;
        }
    }
    ADD_FAILURE() << "not changed";
    return {};
}

TEST(LiveAnew, WhatGoesAsPlannedIsLeftAlone) {
    live::Service service(roastDinner().lesson);
    service.apply(live::Started{key("roast")}, minute(-70));
    const live::Anew anew = live::rearrange(service, minute(-50), exact());
    EXPECT_THAT(anew.change.changes, IsEmpty());
    EXPECT_EQ(anew.outlook.behind, 0_min);
    EXPECT_THAT(anew.broken, IsEmpty());
}

TEST(LiveAnew, OrderIsKeptWhereAnotherGainsNothing) {
    live::Service service(roastDinner().lesson);
    service.apply(live::Started{key("roast")}, minute(-70));
    service.apply(live::Done{key("roast")}, minute(-30));
    service.apply(live::Started{key("carve")}, minute(-30));
    const live::Anew anew = live::rearrange(service, minute(-8), exact());  // still carving
    EXPECT_THAT(anew.change.changes, IsEmpty());
    EXPECT_EQ(anew.outlook.behind, 7_min);
}

TEST(LiveAnew, WhatCanBeDoneMeanwhileIsDoneWhileTheRoastIsLate) {
    live::Service service(roastDinner().lesson);
    service.apply(live::Started{key("roast")}, minute(-58));  // done at -18 instead of -30
    EXPECT_EQ(live::outlook(service, minute(-32)).behind, 7_min);
    const live::Anew anew = live::rearrange(service, minute(-32), exact());
    EXPECT_EQ(anew.outlook.behind, 0_min);
    EXPECT_GE(startIn(anew, key("carve")), minute(-18));
    EXPECT_LE(startIn(anew, key("salad")), startIn(anew, key("carve")) - 10_min);
    EXPECT_THAT(anew.change.changes, SizeIs(2)) << "the plate stays at its time";
    EXPECT_THAT(anew.moves.moved, SizeIs(3)) << "in its old order it would have been late";
    ASSERT_TRUE(service.apply(live::PlanReplaced{anew.change}, minute(-32)));
    EXPECT_EQ(live::outlook(service, minute(-32)).plating, minute(0));
}

TEST(LiveAnew, WhatTheCookPutOffIsNotBegunSooner) {
    live::Service service(roastDinner().lesson);
    service.apply(live::Started{key("roast")}, minute(-55));  // done at -15
    service.apply(live::NotReady{key("salad"), 10_min}, minute(-36));
    const live::Anew anew = live::rearrange(service, minute(-36), exact());
    EXPECT_GE(startIn(anew, key("salad")), minute(-26));
    EXPECT_LE(startIn(anew, key("salad")), minute(-25));
    EXPECT_EQ(startIn(anew, key("carve")), minute(-15));
}

TEST(LiveAnew, PinIsKeptWhereThatHelpsTooThoughLess) {
    LessonBuilder builder = roastDinner();
    builder.lesson.placements[key("salad")].pinned = true;
    live::Service service(builder.lesson);
    service.apply(live::Started{key("roast")}, minute(-55));  // done at -15
    const live::Anew anew = live::rearrange(service, minute(-32), exact());
    EXPECT_EQ(startIn(anew, key("carve")), minute(-10)) << "after the salad, at -20";
    EXPECT_EQ(anew.outlook.behind, 5_min) << "and not 10, in the order of the plan";
}

TEST(LiveAnew, StoppedItKeepsTheOrder) {
    live::Service service(roastDinner().lesson);
    service.apply(live::Started{key("roast")}, minute(-58));
    std::stop_source source;
    source.request_stop();
    const live::Anew anew = live::rearrange(service, minute(-32), exact(), source.get_token());
    EXPECT_THAT(anew.change.changes, IsEmpty());
    EXPECT_EQ(anew.outlook.behind, 7_min);
}

TEST(LiveAnew, FoodThatKeepsTooLongWhateverIsDoneIsSaid) {
    LessonBuilder builder = roastDinner();
    builder.get("roast").after.atRoom = 5_min;
    live::Service service(builder.lesson);
    service.apply(live::Started{key("roast")}, minute(-70));
    service.apply(live::Done{key("roast")}, minute(-30));
    const live::Anew anew = live::rearrange(service, minute(-20), exact());
    ASSERT_THAT(anew.broken, SizeIs(testing::Ge(1)));
    EXPECT_EQ(anew.broken.front().code, FindingCode::KeptTooLong);
}

TEST(LiveAnew, APanWhoseWashingWasSkippedIsSaidThoughItHasStoodFreeSince) {
    LessonBuilder builder;
    builder.ware("pan", "saute-pan").cleaning = {3_min, {}};
    const auto inPan = [&](const char* id, std::int64_t at) {
        Step& step = builder.step(id, {away(10_min)});
        step.wares = {fresh("saute-pan")};
        step.wares[0].turnedOut = true;
        builder.place(id, at).wares = {{WareId{"pan"}, 0}};
    };
    inPan("leeks", -40);
    inPan("glaze", -15);
    builder.step("plate", {hands(5_min)}).plates = true;
    builder.uses("plate", "glaze");
    assign(builder.place("plate", -5), "ann");
    builder.placeWash("leeks", -25, "ann");
    live::Service service(builder.lesson);
    service.apply(live::Started{key("leeks")}, minute(-40));
    service.apply(live::Done{key("leeks")}, minute(-30));
    service.apply(live::Skipped{washAfter("leeks")}, minute(-20));
    const live::Anew anew = live::rearrange(service, minute(-20), exact());
    EXPECT_THAT(anew.broken,
                testing::Contains(testing::Field(&Finding::code, FindingCode::NotYetWashed)));
}

// ---- at random ------------------------------------------------------------------------------

/// The service in which everything happened as in the lesson that was cooked off plan.
live::Service serviceOf(const Lesson& planned, const OffPlan& off) {
    live::Service service(planned);
    for (const auto& [key, placement] : off.lesson.placements) {
        if (placement.started) {
            service.apply(live::Started{key}, placement.start);
            const Instant end = placement.start + *placement.lasts;
            if (end <= off.underway.now) {
                service.apply(live::Done{key}, end);
            }
        }
    }
    for (const PlacementKey& key : off.underway.leftOut) {
        service.apply(live::Skipped{key}, off.underway.now);
    }
    for (const auto& [key, until] : off.underway.notBefore) {
        service.apply(live::NotReady{key, until - off.underway.now}, off.underway.now);
    }
    return service;
}

int brokenRules(const live::Service& service, Instant now) {
    const Lesson lesson = service.standing(now);
    const Underway underway = live::underwayOf(service, now);
    int count = 0;
    for (const Finding& finding : checkLesson(lesson, expand(lesson))) {
        count += live::concernsTheRest(finding, lesson, underway) ? 1 : 0;
    }
    return count;
}

TEST(LiveAnew, AtRandomIsNeverWorseThanKeepingTheOrder) {
    const std::uint64_t seed = seedOr(20268);
    int changed = 0;
    for (int i = 0; i < 300; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        Lesson lesson = randomLesson(random, {});
        ArrangeOptions options;
        options.conflictLimit = 500;
        lesson.placements = arrange(lesson, options).placements;
        if (lesson.placements.empty()) {
            continue;
        }
        const OffPlan off = cookOffPlan(random, lesson);
        const Instant now = off.underway.now;
        live::Service service = serviceOf(lesson, off);
        const Placements before = service.lesson().placements;
        const live::Outlook kept = live::outlook(service, now);
        const live::Anew anew = live::rearrange(service, now, exact());
        if (anew.change.changes.empty()) {
            EXPECT_EQ(anew.outlook.behind, kept.behind);
            continue;
        }
        ++changed;
        ASSERT_TRUE(service.apply(live::PlanReplaced{anew.change}, now));
        EXPECT_EQ(brokenRules(service, now), static_cast<int>(anew.broken.size()));
        EXPECT_EQ(live::outlook(service, now).behind, anew.outlook.behind);
        for (const auto& [key, placement] : before) {
            if (placement.started) {
                EXPECT_EQ(service.lesson().placements.at(key), placement);
            }
        }
        if (testing::Test::HasFailure()) {
            return;
        }
    }
    EXPECT_GT(changed, 5);
}

}  // namespace
}  // namespace rangeline::test
