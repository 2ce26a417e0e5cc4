#include "document/lesson_document.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "document/placing.h"
#include "document/small_supper.h"
#include "model/validate.h"

namespace rangeline::test {
namespace {

class LessonDocumentTest : public testing::Test {
  protected:
    LessonDocumentTest() {
        document_.setLesson(placedSupper().lesson);
        QObject::connect(&document_, &LessonDocument::changed, &document_,
                         [this](const LessonChange& change) { changes_.push_back(change); });
    }

    SetPlacements later(const char* step, Duration by) {
        const PlacementKey moved = key(step);
        return moveBy(document_.index(), {&moved, 1}, by);
    }
    Instant startOf(const char* step) const {
        return document_.lesson().placements.at(key(step)).start;
    }

    LessonDocument document_;
    std::vector<LessonChange> changes_;
};

TEST_F(LessonDocumentTest, AnEmptyDocumentHoldsAUsableLesson) {
    const LessonDocument fresh;
    EXPECT_TRUE(validate(fresh.lesson()).empty());
    EXPECT_FALSE(fresh.isModified());
}

TEST_F(LessonDocumentTest, AnEditIsUndoneAndDoneAgain) {
    const Lesson before = document_.lesson();
    document_.apply(later("plate", 1_min), "later");
    const Lesson after = document_.lesson();
    EXPECT_EQ(startOf("plate"), minute(-2));
    EXPECT_EQ(document_.undoStack().undoText(), "later");
    document_.undoStack().undo();
    EXPECT_EQ(document_.lesson(), before);
    document_.undoStack().redo();
    EXPECT_EQ(document_.lesson(), after);
}

TEST_F(LessonDocumentTest, SaysWhichPlacementsChanged) {
    document_.apply(later("plate", 1_min), {});
    ASSERT_EQ(changes_.size(), 1U);
    EXPECT_FALSE(changes_[0].structure);
    EXPECT_EQ(changes_[0].placements, std::vector<PlacementKey>{key("plate")});
    Head head = document_.lesson().head;
    head.name = "Another";
    document_.apply(SetHead{head}, {});
    EXPECT_TRUE(changes_.back().structure);
    document_.setLesson(smallSupper().lesson);
    EXPECT_TRUE(changes_.back().all);
}

TEST_F(LessonDocumentTest, WhatChangesNothingIsDropped) {
    document_.apply(later("plate", 0_min), {});
    document_.apply(SetHead{document_.lesson().head}, {});
    EXPECT_EQ(document_.undoStack().count(), 0);
    EXPECT_FALSE(document_.isModified());
}

TEST_F(LessonDocumentTest, AnUnusableEditIsRefusedWithItsReason) {
    const Lesson before = document_.lesson();
    auto servings = before.servings;
    servings[0].covers = 0;
    const auto fault = document_.apply(SetServings{servings}, {});
    ASSERT_TRUE(fault.has_value());
    EXPECT_EQ(fault->place, "servings[0].covers");
    EXPECT_EQ(document_.lesson(), before);
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(LessonDocumentTest, OneGestureIsOneStepOfUndo) {
    const Lesson before = document_.lesson();
    const GestureId gesture = document_.newGesture();
    for (int i = 0; i < 3; ++i) {
        document_.apply(later("plate", -1_min), "earlier", gesture);
        document_.apply(later("trim", -1_min), "earlier", gesture);
    }
    EXPECT_EQ(document_.undoStack().count(), 1);
    EXPECT_EQ(startOf("plate"), minute(-6));
    const Lesson after = document_.lesson();
    document_.undoStack().undo();
    EXPECT_EQ(document_.lesson(), before);
    document_.undoStack().redo();
    EXPECT_EQ(document_.lesson(), after);
}

TEST_F(LessonDocumentTest, OtherGesturesAndEditsOnTheirOwnStayApart) {
    document_.apply(later("plate", -1_min), {}, document_.newGesture());
    document_.apply(later("plate", -1_min), {}, document_.newGesture());
    document_.apply(later("plate", -1_min), {});
    document_.apply(later("plate", -1_min), {});
    EXPECT_EQ(document_.undoStack().count(), 4);
}

TEST_F(LessonDocumentTest, AGestureThatLeadsBackLeavesNoStep) {
    const GestureId gesture = document_.newGesture();
    document_.apply(later("plate", -1_min), {}, gesture);
    document_.apply(later("plate", 1_min), {}, gesture);
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(LessonDocumentTest, UndoCrossesAChangeOfTheHead) {
    const Lesson before = document_.lesson();
    document_.apply(later("plate", -1_min), {});
    Head head = document_.lesson().head;
    head.crew = {CookId{"ann"}};
    document_.apply(SetHead{head}, {});
    document_.apply(later("trim", -1_min), {});
    while (document_.undoStack().canUndo()) {
        document_.undoStack().undo();
    }
    EXPECT_EQ(document_.lesson(), before);
    EXPECT_EQ(document_.findings(), checkLesson(before, expand(before)));
}

TEST_F(LessonDocumentTest, SavesAndLoads) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("supper.json");
    document_.apply(later("plate", -1_min), {});
    EXPECT_TRUE(document_.isModified());
    ASSERT_FALSE(document_.save(path).has_value());
    EXPECT_FALSE(document_.isModified());
    EXPECT_EQ(document_.path(), path);
    LessonDocument other;
    ASSERT_FALSE(other.load(path).has_value());
    EXPECT_EQ(other.lesson(), document_.lesson());
    EXPECT_EQ(other.path(), path);
}

TEST_F(LessonDocumentTest, AFileThatCannotBeReadLeavesEverythingAsItWas) {
    const Lesson before = document_.lesson();
    const auto fault = document_.load("/there/is/no/such.json");
    ASSERT_TRUE(fault.has_value());
    EXPECT_EQ(fault->code, FaultCode::CannotOpen);
    EXPECT_EQ(document_.lesson(), before);
    EXPECT_TRUE(changes_.empty());
}

TEST_F(LessonDocumentTest, AFailedSaveStaysModified) {
    document_.apply(later("plate", -1_min), {});
    EXPECT_TRUE(document_.save("/there/is/no/such.json").has_value());
    EXPECT_TRUE(document_.isModified());
    EXPECT_TRUE(document_.path().isEmpty());
}

}  // namespace
}  // namespace rangeline::test
