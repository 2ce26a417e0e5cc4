#include "window/toolkit_options.h"

#include <gtest/gtest.h>

namespace rangeline::test {
namespace {

TEST(ToolkitOptions, AreNotTheProgramsOwnWords) {
    EXPECT_EQ(withoutToolkitOptions({"-reverse", "supper.json"}), QStringList({"supper.json"}));
    EXPECT_EQ(withoutToolkitOptions({"-style", "fusion", "supper.json"}),
              QStringList({"supper.json"}));
    EXPECT_EQ(withoutToolkitOptions({"--style=fusion"}), QStringList());
    EXPECT_EQ(withoutToolkitOptions({"-style"}), QStringList());
}

TEST(ToolkitOptions, TheProgramsOwnWordsStay) {
    const QStringList own{"arrange", "supper.json", "-o", "plan.json", "--aim", "calm"};
    EXPECT_EQ(withoutToolkitOptions(own), own);
    EXPECT_EQ(withoutToolkitOptions({"check", "-"}), QStringList({"check", "-"}));
}

}  // namespace
}  // namespace rangeline::test
