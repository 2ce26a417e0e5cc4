#include "text/fault_text.h"

#include <gtest/gtest.h>

namespace rangeline {
namespace {

constexpr int lastCode = static_cast<int>(FaultCode::Contradiction);

TEST(FaultText, EveryCodeHasASentence) {
    for (int code = 0; code <= lastCode; ++code) {
        const QString text =
            sentence({static_cast<FaultCode>(code), "", {"first", "second", "third"}});
        EXPECT_FALSE(text.isEmpty()) << code;
        EXPECT_FALSE(text.contains('%')) << text.toStdString();
    }
}

TEST(FaultText, SaysWhereAndWhat) {
    EXPECT_EQ(sentence({FaultCode::AboveOven,
                        "servings[0].dish.components[2].steps[0].oven",
                        {"900 °F", "550 °F"}}),
              "servings[0].dish.components[2].steps[0].oven: 900 °F is above this oven’s 550 °F");
    EXPECT_EQ(sentence({FaultCode::EmptyFile, "", {}}), "the file is empty");
}

TEST(FaultText, TellsTheKeysOfReasonsInWords) {
    EXPECT_EQ(sentence({FaultCode::BadText, "lesson.zone", {"not-a-time-zone", "Here"}}),
              "lesson.zone: this text cannot be used: not a time zone");
    EXPECT_EQ(sentence({FaultCode::CarriesOnUnlike, "", {"sear", "other-count"}}),
              "it cannot carry on from “sear”: it has another count of them");
    EXPECT_EQ(sentence({FaultCode::CarriesOnUnlike, "", {"too-long", "other-kind"}}),
              "it cannot carry on from “too-long”: it has no ware of this kind");
}

TEST(FaultText, OffersTheNearestKey) {
    EXPECT_EQ(sentence({FaultCode::UnknownKey, "kitchen", {"oven", "ovens"}}),
              "kitchen: “oven” is not known here; did you mean “ovens”?");
    EXPECT_EQ(sentence({FaultCode::UnknownKey, "kitchen", {"oven", ""}}),
              "kitchen: “oven” is not known here");
}

TEST(FaultText, AFigureMayItselfLookLikeAMark) {
    EXPECT_EQ(sentence({FaultCode::LinkOrder, "", {"%2", "%1"}}),
              "the least wait, %2, is more than the most, %1");
}

TEST(FaultText, AMissingFigureLeavesAGapAndNoMark) {
    EXPECT_FALSE(sentence({FaultCode::OutOfRange, "x", {}}).contains('%'));
}

}  // namespace
}  // namespace rangeline
