// The one drag that the display carries: from the shelf onto the timeline. Everything else is
// dragged by press, move and release, and tested without a display.

#include <gtest/gtest.h>

#include <QApplication>
#include <QSettings>
#include <QStandardPaths>
#include <QTimer>
#include <QTreeWidget>
#include <QtTest>

#include "document/free_place.h"
#include "inspect/shelf_panel.h"
#include "timeline_view/timeline_view.h"
#include "window/main_window.h"

namespace rangeline::test {
namespace {

class ShelfDragTest : public ::testing::Test {
  protected:
    void SetUp() override {
        QSettings().clear();
        window_ = std::make_unique<MainWindow>(QLocale(QLocale::English, QLocale::UnitedStates));
        window_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
        ASSERT_TRUE(window_->openFile(
            QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/first-lesson.json")));
        ASSERT_FALSE(document().apply(takeAway(document().index(), {&simmer_, 1}), "take off"));
        document().undoStack().clear();
        QApplication::processEvents();
    }

    LessonDocument& document() { return window_->document(); }
    TimelineView& view() { return window_->timeline(); }

    QPoint inWindow(QWidget* widget, const QPoint& at) const {
        return widget->mapTo(static_cast<QWidget*>(window_.get()), at);
    }
    /// The step's row on the shelf.
    QPoint row() const {
        auto* tree = window_->findChild<ShelfPanel*>()->findChild<QTreeWidget*>();
        const QTreeWidgetItem* step = tree->topLevelItem(0)->child(0);
        return inWindow(tree->viewport(), tree->visualItemRect(step).center());
    }
    /// On the timeline: that time in the lane of that burner.
    QPoint onBurner(Instant at, int unit) {
        const DropTarget target{{EquipmentSort::Burner, unit}, -1};
        const TimelineLayout& layout = view().scene().layout();
        for (const LaneBox& box : layout.lanes) {
            if (view().scene().targetOf(box.lane) == target) {
                const QRectF spot(layout.scale.xOf(at), box.top, 1, box.height);
                return inWindow(view().viewport(), view().toViewport(spot).center().toPoint());
            }
        }
        ADD_FAILURE() << "no such lane";
        return {};
    }
    /// Presses, moves and lets go as a hand does. The drag runs an event loop of its own, so what
    /// comes after its first move is posted before.
    void drag(const QPoint& from, const QPoint& to) {
        QWindow* handle = window_->windowHandle();
        QTest::mousePress(handle, Qt::LeftButton, {}, from);
        constexpr int steps = 8;
        constexpr int pause = 30;
        for (int step = 1; step <= steps; ++step) {
            const QPoint at = from + (to - from) * step / steps;
            QTimer::singleShot(pause * step, handle,
                               [handle, at] { QTest::mouseMove(handle, at); });
        }
        bool released = false;
        QTimer::singleShot(pause * (steps + 3), handle, [handle, to, &released] {
            QTest::mouseRelease(handle, Qt::LeftButton, {}, to);
            released = true;
        });
        QTest::mouseMove(handle, from + QPoint(2 * QApplication::startDragDistance(), 0));
        EXPECT_TRUE(QTest::qWaitFor([&] { return released; }));
        QApplication::processEvents();
    }

    const PlacementKey simmer_ = StepKey{StepId{"simmer-lentils"}, 0, 0};
    std::unique_ptr<MainWindow> window_;
};

TEST_F(ShelfDragTest, PlacesAStepOnTheBurnerItIsDroppedOnAndBackOnTheShelfTakesItOff) {
    const Lesson before = document().lesson();
    const Instant wanted = Instant::atMinutes(-43);
    const int task = document().expanded().taskOf(std::get<StepKey>(simmer_));
    Lesson expected = before;
    expected.placements[simmer_] =
        completePlacement(document().index(), task, wanted, {{EquipmentSort::Burner, 1}, -1});
    drag(row(), onBurner(wanted, 1));
    ASSERT_TRUE(document().lesson().placements.contains(simmer_));
    const Placement& dropped = document().lesson().placements.at(simmer_);
    EXPECT_EQ(dropped.start, wanted) << dropped.start.inSeconds();
    EXPECT_EQ(dropped.burners, expected.placements.at(simmer_).burners);
    EXPECT_TRUE(document().lesson() == expected);
    EXPECT_EQ(document().undoStack().count(), 1);
    document().undoStack().undo();
    EXPECT_TRUE(document().lesson() == before);
    document().undoStack().redo();

    ASSERT_TRUE(document().lesson().placements.contains(simmer_));
    const int block = view().scene().mainBlockOf(view().scene().itemOf(simmer_));
    const QPoint held = view().toViewport(view().scene().rectOf(block)).center().toPoint();
    auto* shelf = window_->findChild<ShelfPanel*>();
    drag(inWindow(view().viewport(), held), inWindow(shelf, shelf->rect().center()));
    EXPECT_TRUE(document().lesson() == before);
    EXPECT_EQ(document().undoStack().count(), 2);
}

TEST_F(ShelfDragTest, EscapeLeavesItOnTheShelf) {
    const Lesson before = document().lesson();
    QWindow* handle = window_->windowHandle();
    const QPoint to = onBurner(Instant::atMinutes(-43), 1);
    QTest::mousePress(handle, Qt::LeftButton, {}, row());
    QTimer::singleShot(50, handle, [&] { QTest::mouseMove(handle, to); });
    QTimer::singleShot(150, handle, [&] { QTest::keyClick(handle, Qt::Key_Escape); });
    bool released = false;
    QTimer::singleShot(250, handle, [&] {
        QTest::mouseRelease(handle, Qt::LeftButton, {}, to);
        released = true;
    });
    QTest::mouseMove(handle, row() + QPoint(2 * QApplication::startDragDistance(), 0));
    EXPECT_TRUE(QTest::qWaitFor([&] { return released; }));
    EXPECT_TRUE(document().lesson() == before);
    EXPECT_FALSE(view().hasInHand());
}

}  // namespace
}  // namespace rangeline::test

int main(int argc, char** argv) {
    ::testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    QCoreApplication::setOrganizationName(QStringLiteral("rangeline-tests"));
    QCoreApplication::setApplicationName(QStringLiteral("shelf-drag-tests"));
    return RUN_ALL_TESTS();
}
