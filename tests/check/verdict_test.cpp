#include "check/verdict.h"

#include <gtest/gtest.h>

#include <vector>

namespace rangeline {
namespace {

std::vector<Finding> findingsOf(std::initializer_list<Severity> severities) {
    std::vector<Finding> findings;
    for (const Severity severity : severities) {
        findings.emplace_back().severity = severity;
    }
    return findings;
}

TEST(Verdict, ALessonWithNothingOrCautionsOnlyKeepsTheRules) {
    EXPECT_TRUE(keepsRules({}, false));
    EXPECT_TRUE(keepsRules(findingsOf({Severity::Caution, Severity::Caution}), false));
}

TEST(Verdict, LatenessBreaksThemUnlessItIsAllowedAndCanBeFollowedAllTheSame) {
    const auto late = findingsOf({Severity::Caution, Severity::Late});
    EXPECT_FALSE(keepsRules(late, false));
    EXPECT_TRUE(keepsRules(late, true));
    EXPECT_TRUE(canBeFollowed(late));
}

TEST(Verdict, WhatCollidesOrHasNoPlaceCannotBeFollowed) {
    for (const Severity severity : {Severity::Collision, Severity::Open}) {
        EXPECT_FALSE(canBeFollowed(findingsOf({Severity::Caution, severity})));
        EXPECT_FALSE(keepsRules(findingsOf({severity}), true));
    }
}

}  // namespace
}  // namespace rangeline
