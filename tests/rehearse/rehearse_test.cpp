// Rehearsals against published networks, closed forms and an independent simulation.

#include <gmock/gmock.h>

#include <cmath>
#include <map>
#include <random>

#include "arrange/verified.h"
#include "exchange/lesson_file.h"
#include "rehearse/pert.h"
#include "rehearse/simulate.h"
#include "support/lesson_builder.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

/// Lengths in tenths of a week, kept as minutes.
struct Known {
    char name;
    int shortest, likely, longest;
    const char* after;
};

/// Hillier and Lieberman, Introduction to Operations Research, chapter on PERT/CPM, the Reliable
/// Construction Company (data from memory; the sums worked anew): the critical path A-B-C-E-F-J-L-N
/// has mean 44 weeks and variance 9, and 47 weeks are kept with Phi(1) = 0.8413 on it alone.
constexpr Known construction[] = {
    {'A', 10, 20, 30, ""},   {'B', 20, 35, 80, "A"},   {'C', 60, 90, 180, "B"},
    {'D', 40, 55, 100, "C"}, {'E', 10, 45, 50, "C"},   {'F', 40, 40, 100, "E"},
    {'G', 50, 65, 110, "D"}, {'H', 50, 80, 170, "EG"}, {'I', 30, 75, 90, "C"},
    {'J', 30, 90, 90, "FI"}, {'K', 40, 40, 40, "J"},   {'L', 10, 55, 70, "J"},
    {'M', 10, 20, 30, "H"},  {'N', 50, 55, 90, "KL"}};

/// A network with printed means 5.33, 2.33,
/// 5, 8.17, 9.67, 4.67, 5.83, 4.33, 6.67, 4.17, 9.83, 5.33, 2.17 and 7.83 (Taylor, Introduction to
/// Management Science, PERT exercises); the sums worked anew: the critical path A-C-E-H-I-K-M-N has
/// mean 50.83 and variance 11.194, and on it alone 53 are kept with 0.7414 and 55 with 0.8935.
constexpr Known exercise[] = {
    {'A', 50, 50, 70, ""},   {'B', 10, 20, 50, ""},     {'C', 50, 50, 50, "A"},
    {'D', 40, 80, 130, "A"}, {'E', 10, 100, 170, "BC"}, {'F', 10, 50, 70, "D"},
    {'G', 20, 60, 90, "D"},  {'H', 40, 40, 60, "EF"},   {'I', 20, 70, 100, "GH"},
    {'J', 20, 40, 70, "I"},  {'K', 60, 100, 130, "I"},  {'L', 20, 60, 60, "J"},
    {'M', 20, 20, 30, "K"},  {'N', 70, 70, 120, "LM"}};

Network networkFrom(std::span<const Known> activities, int deadline) {
    Network network;
    std::map<char, int> numberOf;
    for (const Known& known : activities) {
        Activity activity;
        activity.planned = Instant::atMinutes(0);
        activity.length = Duration::minutes(known.likely);
        activity.range = {Duration::minutes(known.shortest), activity.length,
                          Duration::minutes(known.longest)};
        activity.stretchEnd = activity.length;
        const int number = static_cast<int>(network.activities.size());
        activity.stream = static_cast<std::uint64_t>(number) + 1;
        numberOf[known.name] = number;
        network.activities.push_back(activity);
        for (const char* before = known.after; *before != 0; ++before) {
            const int from = numberOf.at(*before);
            Following following;
            following.from = from;
            following.to = number;
            following.fromOffset = network.activities[static_cast<std::size_t>(from)].length;
            network.followings.push_back(following);
        }
        network.plating.push_back({number, activity.length, Instant::atMinutes(deadline)});
    }
    return network;
}

/// Only the activities of one path.
std::vector<Known> only(std::span<const Known> all, std::string_view path) {
    std::vector<Known> kept;
    for (Known known : all) {
        if (path.find(known.name) != std::string_view::npos) {
            static const char* const names[] = {"A", "B", "C", "D", "E", "F", "G",
                                                "H", "I", "J", "K", "L", "M", "N"};
            known.after = kept.empty() ? "" : names[kept.back().name - 'A'];
            kept.push_back(known);
        }
    }
    return kept;
}

double meanOf(const std::vector<Duration>& lengths) {
    double sum = 0;
    for (const Duration& each : lengths) {
        sum += static_cast<double>(each.inSeconds());
    }
    return sum / static_cast<double>(lengths.size());
}

double varianceOf(const std::vector<Duration>& lengths) {
    const double mean = meanOf(lengths);
    double sum = 0;
    for (const Duration& each : lengths) {
        const double off = static_cast<double>(each.inSeconds()) - mean;
        sum += off * off;
    }
    return sum / static_cast<double>(lengths.size());
}

constexpr double week = 600;  // seconds: ten minutes stand for it

TEST(Rehearsal, OfThePublishedPathHasItsMeanAndNearlyItsVariance) {
    const auto path = only(construction, "ABCEFJLN");
    const Rehearsal it = rehearse(networkFrom(path, 470), {100'000, 1, 1});
    EXPECT_NEAR((meanOf(it.lateness) + 47 * week) / week, 44, 0.03);
    double exact = 0;
    double usual = 0;
    for (const Known& known : path) {
        const DurationRange range{Duration::minutes(known.shortest),
                                  Duration::minutes(known.likely),
                                  Duration::minutes(known.longest)};
        exact += pertExactVariance(range) / (week * week);
        usual += pertVariance(range) / (week * week);
    }
    EXPECT_NEAR(usual, 9, 1e-9);
    EXPECT_NEAR(varianceOf(it.lateness) / (week * week), exact, 0.1);
    EXPECT_NEAR(it.chanceOnTime(), 0.8413, 0.02);
}

/// The whole network by the standard library's own generator and its gamma distribution.
std::vector<double> independentSpans(std::span<const Known> activities, int runs) {
    std::mt19937_64 random(12345);
    std::vector<double> spans;
    for (int run = 0; run < runs; ++run) {
        std::map<char, double> end;
        double last = 0;
        for (const Known& known : activities) {
            const double a = known.shortest;
            const double b = known.longest;
            double length = a;
            if (b > a) {
                std::gamma_distribution<double> up(1 + 4 * (known.likely - a) / (b - a));
                std::gamma_distribution<double> down(1 + 4 * (b - known.likely) / (b - a));
                const double x = up(random);
                length = a + (b - a) * x / (x + down(random));
            }
            double begin = 0;
            for (const char* before = known.after; *before != 0; ++before) {
                begin = std::max(begin, end.at(*before));
            }
            end[known.name] = begin + length;
            last = std::max(last, begin + length);
        }
        spans.push_back(last);
    }
    return spans;
}

TEST(Rehearsal, OfTheWholeNetworkShowsTheMergingPathsThatTheNormalCurveHides) {
    const Rehearsal it = rehearse(networkFrom(construction, 470), {100'000, 3, 1});
    const std::vector<double> spans = independentSpans(construction, 100'000);
    double sum = 0;
    int kept = 0;
    for (const double span : spans) {
        sum += span;
        kept += span <= 470 ? 1 : 0;
    }
    const double runs = static_cast<double>(spans.size());
    EXPECT_NEAR((meanOf(it.lateness) / 60) + 470, sum / runs, 0.5);
    EXPECT_NEAR(it.chanceOnTime(), kept / runs, 0.01);
    EXPECT_LT(it.chanceOnTime(), 0.8413) << "later than on one path alone";
    EXPECT_GT(it.bands[0].decides, 0.99) << "A is on every path";
    EXPECT_GT(it.bands[9].decides, 0.5) << "J is on the critical one";
    EXPECT_LT(it.bands[3].decides, it.bands[9].decides);
}

TEST(Rehearsal, OfASecondPublishedPathHasItsMeanAndNearlyItsChances) {
    const auto path = only(exercise, "ACEHIKMN");
    double mean = 0;
    double usual = 0;
    double exact = 0;
    for (const Known& known : path) {
        const DurationRange range{Duration::minutes(known.shortest),
                                  Duration::minutes(known.likely),
                                  Duration::minutes(known.longest)};
        mean += pertMean(range) / week;
        usual += pertVariance(range) / (week * week);
        exact += pertExactVariance(range) / (week * week);
    }
    EXPECT_NEAR(mean, 50.8333, 1e-4);
    EXPECT_NEAR(usual, 11.1944, 1e-4);
    const Rehearsal it = rehearse(networkFrom(path, 530), {100'000, 5, 2});
    EXPECT_NEAR((meanOf(it.lateness) + 53 * week) / week, mean, 0.04);
    EXPECT_NEAR(varianceOf(it.lateness) / (week * week), exact, 0.12);
    // The normal curve is only near to the sum of eight skewed lengths, whose variance is larger
    // than the usual formula says: a simulation of its own agrees with what is rehearsed.
    const std::vector<double> spans = independentSpans(path, 100'000);
    for (const auto& [due, normal] : {std::pair(530, 0.7414), std::pair(550, 0.8935)}) {
        const double chance = rehearse(networkFrom(path, due), {100'000, 5, 2}).chanceOnTime();
        const auto kept = std::ranges::count_if(spans, [&](double span) { return span <= due; });
        EXPECT_NEAR(chance, static_cast<double>(kept) / static_cast<double>(spans.size()), 0.01);
        EXPECT_NEAR(chance, normal, 0.04);
    }
}

TEST(Rehearsal, OfTheSecondWholeNetworkAgreesWithALongIndependentSimulation) {
    constexpr int runs = 400'000;
    const std::vector<double> spans = independentSpans(exercise, runs);
    const auto kept = std::ranges::count_if(spans, [](double span) { return span <= 530; });
    const double chance = static_cast<double>(kept) / runs;
    const Rehearsal it = rehearse(networkFrom(exercise, 530), {100'000, 9, 2});
    const double sigma = std::sqrt(chance * (1 - chance) * (1.0 / runs + 1.0 / 100'000));
    EXPECT_NEAR(it.chanceOnTime(), chance, 5 * sigma);
    EXPECT_LT(chance, 0.7414) << "where paths merge the normal curve of one of them hopes too much";
}

TEST(Rehearsal, OfDifferentSeedsDiffersByNoMoreThanTheSamplingError) {
    const Network network = networkFrom(exercise, 530);
    constexpr int runs = 4000;
    constexpr int seeds = 40;
    double sum = 0;
    double squares = 0;
    for (int seed = 0; seed < seeds; ++seed) {
        const double chance =
            rehearse(network, {runs, static_cast<std::uint64_t>(seed) * 7919 + 1, 2})
                .chanceOnTime();
        sum += chance;
        squares += chance * chance;
    }
    const double mean = sum / seeds;
    const double variance = (squares - seeds * mean * mean) / (seeds - 1);
    const double expected = mean * (1 - mean) / runs;
    // Chi-squared with 39 degrees of freedom, over 39: within 0.45 and 1.9 but once in 2,000 times.
    EXPECT_GT(variance / expected, 0.45);
    EXPECT_LT(variance / expected, 1.9);
}

TEST(Pert, DrawsHaveTheMomentsOfTheBetaDistribution) {
    for (const auto& [a, m, b] : {std::tuple{5, 8, 20}, {1, 1, 9}, {1, 9, 9}, {2, 3, 4}}) {
        const DurationRange range{Duration::minutes(a), Duration::minutes(m), Duration::minutes(b)};
        const PertLength length(range);
        Random random(7);
        double sum = 0;
        double squares = 0;
        constexpr int draws = 200'000;
        for (int i = 0; i < draws; ++i) {
            const double drawn = length.draw(random);
            ASSERT_GE(drawn, a * 60);
            ASSERT_LE(drawn, b * 60);
            sum += drawn;
            squares += drawn * drawn;
        }
        const double mean = sum / draws;
        const double deviation = std::sqrt(pertExactVariance(range));
        EXPECT_NEAR(mean, pertMean(range), 4 * deviation / std::sqrt(draws));
        EXPECT_NEAR(std::sqrt(squares / draws - mean * mean), deviation, deviation * 0.02);
    }
}

TEST(Rehearsal, IsTheSameWithAnyNumberOfThreadsAndNearWithAnotherSeed) {
    const Network network = networkFrom(construction, 470);
    const Rehearsal one = rehearse(network, {5000, 1, 1});
    const Rehearsal two = rehearse(network, {5000, 1, 2});
    EXPECT_EQ(one.lateness, two.lateness);
    const Rehearsal other = rehearse(network, {5000, 2, 1});
    const double sigma = std::sqrt(0.25 / 5000);
    EXPECT_NEAR(one.chanceOnTime(), other.chanceOnTime(), 5 * sigma);
    EXPECT_NE(one.lateness, other.lateness);
}

TEST(Rehearsal, EarlierByWhatItSaysIsOnTimeWithThatChance) {
    const Rehearsal it = rehearse(networkFrom(construction, 440), {5000, 1, 1});
    for (const double chance : {0.8, 0.9, 0.95}) {
        const auto earlier = static_cast<int>(it.earlierFor(chance).inMinutes() + 1);
        const Rehearsal moved = rehearse(networkFrom(construction, 440 + earlier), {5000, 1, 1});
        EXPECT_GE(moved.chanceOnTime(), chance);
    }
    EXPECT_LE(it.earlierFor(0.8), it.earlierFor(0.95));
}

TEST(Rehearsal, StoppedAtOnceTellsOfNoRun) {
    std::stop_source source;
    source.request_stop();
    const Rehearsal it = rehearse(networkFrom(construction, 470), {5000, 1, 2}, source.get_token());
    EXPECT_EQ(it.runs, 0);
    EXPECT_TRUE(it.lateness.empty());
    EXPECT_EQ(it.chanceOnTime(), 0);
}

/// A lesson whose steps take just what is planned is on time in every run, as it was planned.
TEST(RehearsalOfALesson, WithoutAnyDoubtIsThePlan) {
    for (const char* file : {"first-lesson", "harvest-plate", "spring-supper"}) {
        SCOPED_TRACE(file);
        auto read =
            loadLesson(std::string(RANGELINE_SOURCE_DIR) + "/sample-data/" + file + ".json");
        ASSERT_TRUE(read.ok());
        Lesson lesson = std::move(read.value());
        for (Serving& serving : lesson.servings) {
            for (Component& component : serving.dish.components) {
                for (Step& step : component.steps) {
                    step.time.shortest = step.time.longest = step.time.likely;
                }
            }
        }
        ArrangeOptions options;
        options.conflictLimit = 20'000;  // the rehearsal is on trial here, not the planner
        lesson.placements = arrangeVerified(lesson, options).placements;
        ASSERT_FALSE(lesson.placements.empty());
        const Expanded expanded = expand(lesson);
        const UseIndex index(lesson, expanded);
        const Network network = networkOf(index);
        const Rehearsal it = rehearse(network, {10, 1, 1});
        EXPECT_EQ(it.chanceOnTime(), 1);
        for (std::size_t i = 0; i < network.activities.size(); ++i) {
            EXPECT_EQ(it.bands[i].beginLate, network.activities[i].planned) << i;
        }
    }
}

/// Ten minutes of which two are fixed, 4 to 20, by a cook who takes so many percent of the time.
DurationRange rangeAtPace(int percent) {
    LessonBuilder builder;
    builder.cook("ben", percent);
    Step& step = builder.step("slice", {hands(2_min), {Attention::Hands, {}, true}});
    step.time = {4_min, 10_min, 20_min};
    assign(builder.place("slice", -60), "ben");
    builder.lesson.placements.at(key("slice")).hands.push_back({CookId{"ben"}, 0});
    const Expanded expanded = expand(builder.lesson);
    const UseIndex index(builder.lesson, expanded);
    return networkOf(index).activities.at(0).range;
}

TEST(RehearsalOfALesson, SpreadsTheTimeOfASlowCookAsMuchWider) {
    EXPECT_EQ(rangeAtPace(100), (DurationRange{4_min, 10_min, 20_min}));
    EXPECT_EQ(rangeAtPace(200), (DurationRange{8_min, 20_min, 40_min}));
    EXPECT_EQ(rangeAtPace(50), (DurationRange{2_min, 5_min, 10_min}));
}

TEST(RehearsalOfALesson, KeepsOrderAndNeverBeginsBeforeThePlan) {
    auto read = loadLesson(std::string(RANGELINE_SOURCE_DIR) + "/sample-data/harvest-plate.json");
    ASSERT_TRUE(read.ok());
    Lesson lesson = std::move(read.value());
    ArrangeOptions options;
    options.conflictLimit = 2000;
    lesson.placements = arrangeVerified(lesson, options).placements;
    const Expanded expanded = expand(lesson);
    const UseIndex index(lesson, expanded);
    const Network network = networkOf(index);
    ASSERT_FALSE(network.plating.empty());
    const Rehearsal it = rehearse(network, {2000, 1, 2});
    EXPECT_LT(it.chanceOnTime(), 1);
    EXPECT_GT(it.earlierFor(0.9), Duration());
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        EXPECT_GE(it.bands[i].beginEarly, network.activities[i].planned);
        EXPECT_LE(it.bands[i].beginEarly, it.bands[i].beginMiddle);
        EXPECT_LE(it.bands[i].endMiddle, it.bands[i].endLate);
    }
}

}  // namespace
}  // namespace rangeline::test
