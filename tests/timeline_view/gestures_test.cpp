// The same move by pointer, by key and by click leads to the same lesson, and one undo takes it
// back.

#include <QApplication>
#include <QDropEvent>
#include <QScrollBar>
#include <QtTest>

#include "timeline_view/shelf_drag.h"
#include "timeline_view/view_fixture.h"

namespace rangeline::test {
namespace {

constexpr DropTarget rightBurner{{EquipmentSort::Burner, 1}, -1};
constexpr DropTarget slotTwo{{EquipmentSort::Oven, 0}, 1};

class GesturesTest : public ViewTest {
  protected:
    /// "char" three minutes earlier, on the right burner.
    Lesson expected() const {
        Lesson lesson = before_;
        Placement& sear = lesson.placements.at(key("char"));
        sear.start = minute(-53);
        sear.burners = {BurnerId{"right"}};
        return lesson;
    }
    void expectOneStepOfUndo() {
        ASSERT_EQ(document_.undoStack().count(), 1);
        EXPECT_FALSE(document_.undoStack().undoText().isEmpty());
        document_.undoStack().undo();
        EXPECT_EQ(document_.lesson(), before_);
    }
};

TEST_F(GesturesTest, ByDrag) {
    const QPoint from = middleOf(key("char"));
    const QPoint to = onLane(later(from, -3), rightBurner);
    press(from);
    move(later(from, -1));
    move(to);
    EXPECT_EQ(document_.lesson(), before_);
    release(to);
    EXPECT_EQ(document_.lesson(), expected());
    expectOneStepOfUndo();
}

TEST_F(GesturesTest, ByKeysOnTheBlock) {
    view_.select({key("char")});
    for (int i = 0; i < 3; ++i) {
        type(Qt::Key_Left, Qt::ControlModifier);
    }
    type(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(document_.lesson(), expected());
    expectOneStepOfUndo();
}

TEST_F(GesturesTest, ByKeysWithTheBlockInHand) {
    view_.select({key("char")});
    type(Qt::Key_Return);
    EXPECT_TRUE(view_.hasInHand());
    for (int i = 0; i < 3; ++i) {
        type(Qt::Key_Left);
    }
    type(Qt::Key_Down);
    EXPECT_EQ(document_.lesson(), before_);
    type(Qt::Key_Return);
    EXPECT_FALSE(view_.hasInHand());
    EXPECT_EQ(document_.lesson(), expected());
    expectOneStepOfUndo();
}

TEST_F(GesturesTest, ByClicks) {
    const QPoint from = middleOf(key("char"));
    click(from);
    view_.pickUpSelected();
    // The start goes where the pointer is: five minutes left of the block's middle.
    const QPoint to = onLane(later(from, -8), rightBurner);
    move(to);
    click(to);
    EXPECT_EQ(document_.lesson(), expected());
    expectOneStepOfUndo();
}

TEST_F(GesturesTest, ADoubleClickPicksUp) {
    QTest::mouseDClick(view_.viewport(), Qt::LeftButton, {}, middleOf(key("char")));
    EXPECT_TRUE(view_.hasInHand());
    EXPECT_EQ(document_.lesson(), before_);
    type(Qt::Key_Escape);
    EXPECT_FALSE(view_.hasInHand());
}

TEST_F(GesturesTest, PlusAndMinusMoveByAGrain) {
    view_.select({key("char")});
    type(Qt::Key_Plus);
    EXPECT_EQ(now("char").start, minute(-49));
    type(Qt::Key_Minus);
    type(Qt::Key_Minus);
    EXPECT_EQ(now("char").start, minute(-51));
    expectOneStepOfUndo();
}

TEST_F(GesturesTest, EscapePutsADragBack) {
    const QPoint from = middleOf(key("char"));
    press(from);
    move(onLane(later(from, -3), rightBurner));
    type(Qt::Key_Escape);
    release(later(from, -3));
    EXPECT_EQ(document_.lesson(), before_);
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(GesturesTest, NudgesOfAnotherBlockAreAnotherStep) {
    view_.select({key("char")});
    type(Qt::Key_Plus);
    view_.select({key("roast")});
    type(Qt::Key_Plus);
    view_.select({key("char")});
    type(Qt::Key_Plus);
    EXPECT_EQ(document_.undoStack().count(), 3);
}

TEST_F(GesturesTest, OfWhatHasBegunOnlyTheEndMoves) {
    before_.placements.at(key("char")).started = true;
    document_.setLesson(before_);
    const Instant start = now("char").start;
    const int node = document_.index().nodeOf(key("char"));
    const Instant end = document_.index().placed(node).interval.end;
    const auto endNow = [&] { return document_.index().placed(node).interval.end; };
    const QPoint from = middleOf(key("char"));
    press(from);
    move(onLane(later(from, 4), rightBurner));
    release(onLane(later(from, 4), rightBurner));
    EXPECT_EQ(endNow(), end + Duration::minutes(4));
    type(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(endNow(), end + Duration::minutes(3));
    type(Qt::Key_Delete);
    EXPECT_EQ(now("char").start, start);
    EXPECT_EQ(now("char").burners, before_.placements.at(key("char")).burners);
    EXPECT_EQ(document_.undoStack().count(), 2);
    document_.undoStack().undo();
    document_.undoStack().undo();
    EXPECT_EQ(document_.lesson(), before_);
}

TEST_F(GesturesTest, DeleteTakesOffAndPPins) {
    view_.select({key("char")});
    type(Qt::Key_P);
    EXPECT_TRUE(now("char").pinned);
    type(Qt::Key_P);
    EXPECT_FALSE(now("char").pinned);
    type(Qt::Key_Delete);
    EXPECT_FALSE(document_.lesson().placements.contains(key("char")));
    EXPECT_TRUE(view_.selection().empty());
    EXPECT_EQ(document_.undoStack().count(), 3);
}

TEST_F(GesturesTest, TheFocusGoesFromBlockToBlock) {
    view_.select({key("char")});
    type(Qt::Key_Right);
    EXPECT_EQ(view_.selection(), std::vector<PlacementKey>{key("simmer")});
    type(Qt::Key_Left);
    EXPECT_EQ(view_.selection(), std::vector<PlacementKey>{key("char")});
    type(Qt::Key_Up);
    EXPECT_EQ(view_.selection(), std::vector<PlacementKey>{key("roast")});
    EXPECT_EQ(document_.lesson(), before_);
}

class ShelfTest : public GesturesTest {
  protected:
    ShelfTest() {
        const PlacementKey roast = key("roast");
        document_.apply(takeAway(document_.index(), {&roast, 1}), "away");
        document_.undoStack().clear();
        before_ = document_.lesson();
        target_ = onLane(
            QPoint(
                qRound(
                    view_.toViewport(QRectF(view_.scene().layout().scale.xOf(minute(-40)), 0, 1, 1))
                        .left()),
                0),
            slotTwo);
    }
    void drag(QEvent::Type type) {
        const auto data = makeShelfDrag({key("roast")});
        if (type == QEvent::DragEnter) {
            QDragEnterEvent event(target_, Qt::CopyAction, data.get(), Qt::LeftButton, {});
            QApplication::sendEvent(view_.viewport(), &event);
            EXPECT_TRUE(event.isAccepted());
        } else if (type == QEvent::DragMove) {
            QDragMoveEvent event(target_, Qt::CopyAction, data.get(), Qt::LeftButton, {});
            QApplication::sendEvent(view_.viewport(), &event);
        } else if (type == QEvent::DragLeave) {
            QDragLeaveEvent event;
            QApplication::sendEvent(view_.viewport(), &event);
        } else {
            QDropEvent event(target_, Qt::CopyAction, data.get(), Qt::LeftButton, {});
            QApplication::sendEvent(view_.viewport(), &event);
        }
    }

    QPoint target_;
};

TEST_F(ShelfTest, ADropPlacesTheStep) {
    drag(QEvent::DragEnter);
    drag(QEvent::DragMove);
    EXPECT_EQ(document_.lesson(), before_);
    drag(QEvent::Drop);
    EXPECT_EQ(now("roast").start, minute(-40));
    EXPECT_EQ(now("roast").oven->firstSlot, 1);
    EXPECT_EQ(view_.selection(), std::vector<PlacementKey>{key("roast")});
    expectOneStepOfUndo();
}

TEST_F(ShelfTest, ClicksPlaceTheSame) {
    view_.pickUp({key("roast")});
    EXPECT_TRUE(view_.hasInHand());
    click(target_);
    const Lesson clicked = document_.lesson();
    document_.undoStack().undo();
    drag(QEvent::DragEnter);
    drag(QEvent::Drop);
    EXPECT_EQ(document_.lesson(), clicked);
}

TEST_F(ShelfTest, ADragThatComesInOverTheEdgeScrollsOnlyWhenItComesBackThere) {
    view_.zoom(4, 500);
    view_.reveal(key("plate"));
    const QPoint inside = target_ + QPoint(view_.viewport()->width() / 2 - target_.x(), 0);
    const QPoint edge(qRound(view_.scene().layout().plot.left()) + 6, inside.y());
    target_ = edge;
    const int before = view_.horizontalScrollBar()->value();
    drag(QEvent::DragEnter);
    drag(QEvent::DragMove);
    QTest::qWait(100);
    EXPECT_EQ(view_.horizontalScrollBar()->value(), before);
    target_ = inside;
    drag(QEvent::DragMove);
    target_ = edge;
    drag(QEvent::DragMove);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return view_.horizontalScrollBar()->value() < before; }, 5000));
    drag(QEvent::DragLeave);
}

TEST_F(ShelfTest, ADragThatLeavesChangesNothing) {
    drag(QEvent::DragEnter);
    drag(QEvent::DragLeave);
    EXPECT_FALSE(view_.hasInHand());
    EXPECT_EQ(document_.lesson(), before_);
}

TEST_F(ShelfTest, DragsFromElsewhereAreNotTaken) {
    QMimeData text;
    text.setText("roast");
    QDragEnterEvent event(target_, Qt::CopyAction, &text, Qt::LeftButton, {});
    event.accept();
    QApplication::sendEvent(view_.viewport(), &event);
    EXPECT_FALSE(event.isAccepted());
}

TEST_F(ShelfTest, ABlockDroppedOnTheShelfIsTakenOff) {
    QWidget shelf;
    shelf.setGeometry(view_.mapToGlobal(QPoint(0, 700)).x(), view_.mapToGlobal(QPoint(0, 700)).y(),
                      300, 300);
    shelf.show();
    view_.setShelf(&shelf);
    const QPoint onShelf = view_.viewport()->mapFromGlobal(shelf.mapToGlobal(QPoint(100, 100)));
    press(middleOf(key("char")));
    move(onShelf);
    release(onShelf);
    EXPECT_FALSE(document_.lesson().placements.contains(key("char")));
    expectOneStepOfUndo();
}

TEST_F(ShelfTest, OnTheWayToTheShelfTheViewComesBackToWhereItWas) {
    QWidget shelf;
    shelf.setGeometry(QRect(view_.mapToGlobal(QPoint(-400, 0)), QSize(300, 700)));
    shelf.show();
    view_.setShelf(&shelf);
    view_.zoom(4, 500);
    view_.reveal(key("char"));
    const int before = view_.horizontalScrollBar()->value();
    ASSERT_GT(before, 60);
    const QPoint from = middleOf(key("char"));
    press(from);
    move(from - QPoint(40, 0));
    move(QPoint(4, from.y()));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return view_.horizontalScrollBar()->value() < before - 20; }, 5000));
    move(QPoint(-200, from.y()));
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return view_.horizontalScrollBar()->value() == before; }, 5000));
    release(QPoint(-200, from.y()));
    EXPECT_FALSE(document_.lesson().placements.contains(key("char")));
    EXPECT_EQ(view_.horizontalScrollBar()->value(), before);
}

TEST(ShelfDrag, CarriesStepsInTheirOrder) {
    const std::vector<StepKey> steps{key("roast", 1, 2), key("char")};
    EXPECT_EQ(readShelfDrag(*makeShelfDrag(steps)), steps);
    QMimeData broken;
    broken.setData(QString::fromLatin1(shelfMimeType), QByteArray("\0\0\0\5ab", 6));
    EXPECT_TRUE(readShelfDrag(broken).empty());
}

TEST_F(GesturesTest, TheEdgeScrollsWhileDragging) {
    view_.zoom(4, 500);
    view_.reveal(key("char"));
    const int left = view_.horizontalScrollBar()->value();
    press(middleOf(key("char")));
    const QPoint edge(view_.viewport()->width() - 4, middleOf(key("char")).y());
    move(edge);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return view_.horizontalScrollBar()->value() > left + 60; }, 5000));
    type(Qt::Key_Escape);
    const int stopped = view_.horizontalScrollBar()->value();
    QTest::qWait(80);
    EXPECT_EQ(view_.horizontalScrollBar()->value(), stopped);
    EXPECT_EQ(document_.lesson(), before_);
}

}  // namespace
}  // namespace rangeline::test
