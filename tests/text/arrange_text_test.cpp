#include "text/arrange_text.h"

#include <gtest/gtest.h>

#include "text/supper.h"

namespace rangeline::test {
namespace {

QString say(ArrangeStatus status) {
    ArrangeResult result;
    result.status = status;
    result.last.best = minute(-110);
    result.last.bound = minute(-98);
    result.last.aimBest = 110 * 60;
    result.last.aimBound = 98 * 60;
    return arrangeText(result, Supper().lesson.head, american);
}

TEST(ArrangeText, SaysWhatIsKnown) {
    EXPECT_EQ(say(ArrangeStatus::Proved), "Proved: no plan starts later than 4:40 PM.");
    EXPECT_EQ(say(ArrangeStatus::Found),
              "Found a plan: it starts at 4:40 PM, at most 12 min from the best there can be.");
    EXPECT_EQ(say(ArrangeStatus::NotPossible),
              "Not possible: no plan keeps all the rules. The placements stay as they were.");
    EXPECT_EQ(say(ArrangeStatus::Stopped),
              "Stopped before a plan was found. The placements stay as they were.");
}

TEST(ArrangeText, Progress) {
    ArrangeProgress progress;
    progress.bound = minute(-98);
    const Head head = Supper().lesson.head;
    EXPECT_EQ(progressText(progress, head, american),
              "No plan yet; none can start later than 4:52 PM.");
    progress.best = minute(-110);
    EXPECT_EQ(progressText(progress, head, american),
              "A plan that starts at 4:40 PM is found; looking for a better one.");
    progress.aimBest = 110 * 60;
    progress.aimBound = 98 * 60;
    EXPECT_EQ(progressText(progress, head, american),
              "The best plan so far: it starts at 4:40 PM, at most 12 min from the best there can "
              "be.");
}

TEST(ArrangeText, OtherAimsSayWhatTheyComeTo) {
    ArrangeResult result;
    result.status = ArrangeStatus::Proved;
    result.last.aim = Aim::Fresh;
    result.last.aimBest = 90 * 60;
    const Head head = Supper().lesson.head;
    EXPECT_EQ(arrangeText(result, head, american),
              "Proved best: food waits and ovens are on for 1 h 30 min in all.");
    result.last.aim = Aim::FewPans;
    result.last.aimBest = 7;
    EXPECT_EQ(arrangeText(result, head, american), "Proved best: vessels used: 7.");
}

}  // namespace
}  // namespace rangeline::test
