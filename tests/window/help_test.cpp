#include "window/help_dialog.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <algorithm>

#include "timeline/legend.h"

namespace rangeline {
namespace {

TEST(Help, SaysWhatEachLookOnTheTimelineMeans) {
    HelpDialog help;
    help.open(HelpDialog::Page::Looks);
    const QList<QLabel*> labels = help.findChildren<QLabel*>();
    for (const auto& looks : {coloursOfBlocks(), looksOfBlocks(), looksOfMarks()}) {
        for (const LegendEntry& entry : looks) {
            EXPECT_TRUE(std::ranges::any_of(labels, [&](const QLabel* label) {
                return label->isVisible() && label->text() == entry.meaning();
            })) << entry.text;
        }
    }
}

}  // namespace
}  // namespace rangeline
