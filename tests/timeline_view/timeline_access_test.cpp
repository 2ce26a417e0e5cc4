#include <QAccessible>
#include <set>

#include "timeline_view/view_fixture.h"

namespace rangeline::test {
namespace {

class TimelineAccessTest : public ViewTest {
  protected:
    QAccessibleInterface* root() { return QAccessible::queryAccessibleInterface(&view_); }
    QAccessibleInterface* blockOf(const PlacementKey& key) { return root()->child(itemOf(key)); }
};

void expectNamed(QAccessibleInterface* node) {
    ASSERT_NE(node, nullptr);
    if (node->state().focusable) {
        EXPECT_FALSE(node->text(QAccessible::Name).isEmpty()) << node->role();
    }
    for (int i = 0; i < node->childCount(); ++i) {
        expectNamed(node->child(i));
    }
}

TEST_F(TimelineAccessTest, NothingThatTakesTheFocusIsNameless) {
    expectNamed(root());
}

TEST_F(TimelineAccessTest, EveryPlacementIsAChild) {
    ASSERT_EQ(root()->childCount(), static_cast<int>(before_.placements.size()));
    std::set<QAccessibleInterface*> met;
    for (int i = 0; i < root()->childCount(); ++i) {
        QAccessibleInterface* child = root()->child(i);
        EXPECT_TRUE(met.insert(child).second);
        EXPECT_EQ(root()->indexOfChild(child), i);
        EXPECT_EQ(child->parent(), root());
        EXPECT_FALSE(child->rect().isEmpty());
    }
}

TEST_F(TimelineAccessTest, ABlockSaysStepStationTimesAndState) {
    const PlacementKey sear = key("char");
    document_.apply(setPinned(document_.index(), {&sear, 1}, true), {});
    const QString name = blockOf(sear)->text(QAccessible::Name);
    for (const char* part : {"Char", "Left", "5:40", "5:50", "pinned"}) {
        EXPECT_TRUE(name.contains(part)) << part << " in " << name.toStdString();
    }
}

TEST_F(TimelineAccessTest, ABlockStaysTheSameChildWhileItMoves) {
    QAccessibleInterface* block = blockOf(key("char"));
    const QString before = block->text(QAccessible::Name);
    block->actionInterface()->doAction(QAccessibleActionInterface::increaseAction());
    EXPECT_EQ(now("char").start, minute(-49));
    EXPECT_EQ(blockOf(key("char")), block);
    EXPECT_NE(block->text(QAccessible::Name), before);
    EXPECT_TRUE(block->state().selected);
}

TEST_F(TimelineAccessTest, TheValueIsTheStartAndCanBeSet) {
    QAccessibleValueInterface* value = blockOf(key("char"))->valueInterface();
    EXPECT_EQ(value->currentValue().toInt(), -50);
    value->setCurrentValue(-55);
    EXPECT_EQ(now("char").start, minute(-55));
}

TEST_F(TimelineAccessTest, PressingPicksUpAndPutsDown) {
    QAccessibleActionInterface* actions = blockOf(key("char"))->actionInterface();
    actions->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_TRUE(view_.hasInHand());
    actions->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_FALSE(view_.hasInHand());
}

TEST_F(TimelineAccessTest, WhatIsGoneIsFreed) {
    QAccessibleInterface* block = blockOf(key("char"));
    const QAccessible::Id id = QAccessible::uniqueId(block);
    const PlacementKey sear = key("char");
    document_.apply(takeAway(document_.index(), {&sear, 1}), {});
    EXPECT_EQ(QAccessible::accessibleInterface(id), nullptr);
}

TEST(TimelineAccess, IsFreedWithTheView) {
    LessonDocument document;
    document.setLesson(placedSupper().lesson);
    auto view = std::make_unique<TimelineView>(document);
    QAccessibleInterface* block = QAccessible::queryAccessibleInterface(view.get())->child(0);
    const QAccessible::Id id = QAccessible::uniqueId(block);
    ASSERT_NE(QAccessible::accessibleInterface(id), nullptr);
    view.reset();
    EXPECT_EQ(QAccessible::accessibleInterface(id), nullptr);
}

}  // namespace
}  // namespace rangeline::test
