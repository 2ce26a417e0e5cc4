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
    return arrangeText(result, Supper().lesson.head, american);
}

TEST(ArrangeText, SaysWhatIsKnown) {
    EXPECT_EQ(say(ArrangeStatus::Proved), "Proved: no plan starts later than 4:40 PM.");
    EXPECT_EQ(
        say(ArrangeStatus::Found),
        "Found a plan that starts at 4:40 PM. None can start later than 4:52 PM; there may be "
        "a better one.");
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
              "The best plan so far starts at 4:40 PM; none can start later than 4:52 PM.");
}

}  // namespace
}  // namespace rangeline::test
