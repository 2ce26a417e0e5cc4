// One run of a plan: what waits for what, what goes on for too long, one thing more than planned.

#include "rehearse/run.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cstdlib>

#include "arrange/verified.h"
#include "model/edit.h"
#include "rehearse/help.h"
#include "support/lesson_builder.h"
#include "support/natural_lesson.h"

namespace rangeline::test {
namespace {

/// Always takes just that long, whatever is planned.
Activity taking(std::int64_t plannedAt, Duration planned, Duration takes,
                std::uint64_t stream = 1) {
    Activity made;
    made.planned = minute(plannedAt);
    made.length = planned;
    made.range = {takes, planned, takes};
    made.stretchEnd = planned;
    made.stream = stream;
    return made;
}

Following after(const Network& network, int from, int to,
                EquipmentSort sort = EquipmentSort::None) {
    Following made;
    made.from = from;
    made.to = to;
    made.fromOffset = network.activities[static_cast<std::size_t>(from)].length;
    made.by = sort == EquipmentSort::None   ? HeldBy::Wait
              : sort == EquipmentSort::Cook ? HeldBy::Cook
                                            : HeldBy::Equipment;
    made.equipment = {sort, 0};
    return made;
}

double minutesOf(double seconds) {
    return seconds / 60;
}

TEST(RunOfAPlan, FoodWaitsTooLongWhereWhatUsesItComesLate) {
    Network network;
    network.activities = {taking(0, 10_min, 10_min), taking(0, 12_min, 20_min),
                          taking(12, 2_min, 2_min)};
    network.followings = {after(network, 0, 2), after(network, 1, 2)};
    WaitLimit limit;
    limit.from = {{0, 10_min}};
    limit.to = {{2, {}}};
    limit.most = 4_min;
    network.limits = {limit};
    const Rehearsal it = rehearse(network, {10, 1, 1});
    ASSERT_EQ(it.waitsTooLong.size(), 1U);
    EXPECT_EQ(it.waitsTooLong[0].share, 1);
    EXPECT_EQ(it.waitsTooLong[0].by, 6_min);
    network.limits[0].most = 10_min;
    EXPECT_TRUE(rehearse(network, {10, 1, 1}).waitsTooLong.empty()) << "just as long as it may";
}

TEST(RunOfAPlan, HandsRunShortByWhatOnlyTheCookIsWaitedFor) {
    Network network;
    network.activities = {taking(0, 10_min, 25_min), taking(0, 10_min, 16_min),
                          taking(10, 2_min, 2_min)};
    network.followings = {after(network, 0, 2, EquipmentSort::Cook), after(network, 1, 2)};
    const Rehearsal it = rehearse(network, {10, 1, 1});
    ASSERT_EQ(it.waitsForCook.size(), 1U);
    EXPECT_EQ(it.waitsForCook[0].of, 0);
    EXPECT_EQ(it.waitsForCook[0].by, 9_min) << "its food is ready at 16, the cook at 25";
    network.activities[0].range = network.activities[1].range;
    EXPECT_TRUE(rehearse(network, {10, 1, 1}).waitsForCook.empty());
}

/// Uses of alike pans, each of which the plan gives one.
struct Uses {
    Network network;
    std::vector<int> pans;
};

Uses usesOfPans(Random& random, int count, int pans) {
    Uses made;
    std::vector<int> last(static_cast<std::size_t>(pans), -1);
    std::int64_t planned = 0;
    for (int i = 0; i < count; ++i) {
        planned += random.between(0, 6);
        made.network.activities.push_back(taking(planned, 5_min,
                                                 Duration::minutes(random.between(1, 30)),
                                                 static_cast<std::uint64_t>(i)));
        const auto pan = static_cast<std::size_t>(random.between(0, pans - 1));
        if (last[pan] >= 0) {
            made.network.followings.push_back(
                after(made.network, last[pan], i, EquipmentSort::Ware));
            made.network.followings.back().spare = 0;
        }
        last[pan] = i;
        made.pans.push_back(static_cast<int>(pan));
    }
    made.network.spares = 1;
    return made;
}

/// The other way round: who is next in the plan takes its own pan or the one over, whichever is
/// free first; that the two then change places is what all pans being alike comes to.
std::vector<double> byHand(const Uses& uses, int pans) {
    std::vector<double> free(static_cast<std::size_t>(pans) + 1, -1e9);
    std::vector<double> begins;
    for (std::size_t i = 0; i < uses.network.activities.size(); ++i) {
        const Activity& activity = uses.network.activities[i];
        double& own = free[static_cast<std::size_t>(uses.pans[i])];
        const auto due = static_cast<double>(activity.planned.inSeconds());
        if (own > due && free.back() < own) {
            std::swap(own, free.back());
        }
        begins.push_back(std::max(due, own));
        own = begins.back() + static_cast<double>(activity.range.shortest.inSeconds());
    }
    return begins;
}

TEST(RunOfAPlan, OnePanMoreGoesToWhoWouldWait) {
    const std::uint64_t seed = std::getenv("RANGELINE_SEED")
                                   ? std::strtoull(std::getenv("RANGELINE_SEED"), nullptr, 10)
                                   : 5;
    SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed));
    Random random(seed);
    for (int trial = 0; trial < 200; ++trial) {
        const int pans = static_cast<int>(random.between(1, 3));
        const Uses uses = usesOfPans(random, 15, pans);
        OneRun run(uses.network);
        run.go(1, 0);
        const std::vector<double> begins = byHand(uses, pans);
        for (std::size_t i = 0; i < begins.size(); ++i) {
            ASSERT_DOUBLE_EQ(minutesOf(run.begin(i)), minutesOf(begins[i])) << trial << ' ' << i;
        }
    }
}

/// Random lengths, the same in the run and in the placements that are made of it.
Network fixedAtRandom(Random& random, Network network) {
    for (Activity& activity : network.activities) {
        const Duration takes = Duration::seconds(random.between(
            activity.range.shortest.inSeconds(), activity.range.longest.inSeconds()));
        activity.range = {takes, activity.range.likely, takes};
    }
    return network;
}

/// What a run may break: it is late, or food waits. All else holds in every run.
bool mayBe(const Finding& finding) {
    const auto limits = {FindingCode::TooLateAfter,  FindingCode::KeptTooLong,
                         FindingCode::StoredTooLong, FindingCode::PlatedTooEarly,
                         FindingCode::NotFinished,   FindingCode::OffGrain};
    return finding.severity != Severity::Collision ||
           std::ranges::find(limits, finding.code) != limits.end();
}

TEST(RunOfAPlan, IsAPlanThatTheCheckerFindsPossible) {
    const std::uint64_t seed = std::getenv("RANGELINE_SEED")
                                   ? std::strtoull(std::getenv("RANGELINE_SEED"), nullptr, 10)
                                   : 3;
    SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed));
    Random random(seed);
    int arranged = 0;
    for (int trial = 0; trial < 8; ++trial) {
        Lesson lesson = naturalLesson(random, 25);
        ArrangeOptions options;
        options.conflictLimit = 2000;
        lesson.placements = arrangeVerified(lesson, options).placements;
        arranged += lesson.placements.empty() ? 0 : 1;
        const Expanded expanded = expand(lesson);
        const UseIndex index(lesson, expanded);
        const Network network = networkOf(index);
        for (int turn = 0; turn < 10; ++turn) {
            const Network fixed = fixedAtRandom(random, network);
            OneRun run(fixed);
            run.go(1, 0);
            Lesson real = lesson;
            for (std::size_t i = 0; i < fixed.activities.size(); ++i) {
                Placement& placement = real.placements.at(index.keyOf(fixed.activities[i].node));
                placement.start = Instant::atSeconds(std::lround(run.begin(i)));
                placement.lasts = Duration::seconds(std::lround(run.end(i) - run.begin(i)));
            }
            for (const Finding& finding : checkLesson(real, expanded)) {
                EXPECT_TRUE(mayBe(finding))
                    << trial << ' ' << turn << ' ' << describe(real, {finding});
            }
        }
    }
    EXPECT_GT(arranged, 4);
}

// ---- what helps -------------------------------------------------------------------------------

/// Two components in one pan, and a third beside them; each takes up to twice as long.
LessonBuilder onePan() {
    LessonBuilder builder;
    builder.burner("left");
    builder.burner("right");
    builder.ware("pan", "saute-pan");
    for (const char* id : {"leeks", "glaze"}) {
        Step& step = builder.step(id, {hands(1_min), away(9_min)});
        step.time = {8_min, 10_min, 20_min};
        step.heat = onBurner();
        step.wares = {fresh("saute-pan")};
        step.wares.front().turnedOut = true;
        step.after.mayBeDoneAhead = std::string(id) == "leeks";
        step.after.cold = 24_h;
    }
    builder.step("plate", {hands(2_min)}).plates = true;
    builder.uses("plate", "leeks");
    builder.uses("plate", "glaze");
    for (const auto& [id, at] : {std::pair("leeks", -28), {"glaze", -16}, {"plate", -4}}) {
        assign(builder.place(id, at), "ann");
    }
    for (const char* id : {"leeks", "glaze"}) {
        builder.place(key(id), builder.lesson.placements.at(key(id)).start).wares = {
            {WareId{"pan"}, 0}};
        builder.lesson.placements.at(key(id)).burners = {BurnerId{"left"}};
        assign(builder.lesson.placements.at(key(id)), "ann");
    }
    return builder;
}

TEST(WhatHelps, IsTriedForWhatSomebodyWaitsForAndWhatMayBeDoneAhead) {
    const LessonBuilder builder = onePan();
    const Expanded expanded = expand(builder.lesson);
    const UseIndex index(builder.lesson, expanded);
    const Helps helps = whatHelps(index, {4000, 1, 2});
    EXPECT_TRUE(helps.all);
    EXPECT_LT(helps.onTime, 0.9);
    std::vector<HelpKind> kinds;
    for (const Help& help : helps.tried) {
        kinds.push_back(help.kind);
        EXPECT_GE(help.onTime, helps.onTime) << "more of something never hinders";
    }
    EXPECT_THAT(kinds, testing::UnorderedElementsAre(HelpKind::Ware, HelpKind::Burner,
                                                     HelpKind::Helper, HelpKind::DoneAhead));
    EXPECT_EQ(helps.tried.front().kind, HelpKind::DoneAhead) << "then the pan is free in time";
    EXPECT_GT(helps.tried.front().onTime, helps.onTime);
}

TEST(WhatHelps, OneBurnerMoreIsNoUseWhereThePanIsWaitedForToo) {
    const LessonBuilder builder = onePan();
    const Expanded expanded = expand(builder.lesson);
    const UseIndex index(builder.lesson, expanded);
    for (const Help& help : whatHelps(index, {2000, 1, 1}).tried) {
        if (help.kind == HelpKind::Burner || help.kind == HelpKind::Ware) {
            EXPECT_EQ(help.onTime, whatHelps(index, {2000, 1, 1}).onTime);
        }
    }
}

TEST(WhatHelps, StoppedSaysThatNotAllWasTried) {
    const LessonBuilder builder = onePan();
    const Expanded expanded = expand(builder.lesson);
    const UseIndex index(builder.lesson, expanded);
    std::stop_source source;
    int told = 0;
    const Helps helps = whatHelps(index, {2000, 1, 1}, source.get_token(), [&](int done, int of) {
        EXPECT_LE(done, of);
        if (done > 2500) {
            source.request_stop();
        }
        ++told;
    });
    EXPECT_FALSE(helps.all);
    EXPECT_LT(helps.tried.size(), 2U);
    EXPECT_GT(told, 0);
}

}  // namespace
}  // namespace rangeline::test
