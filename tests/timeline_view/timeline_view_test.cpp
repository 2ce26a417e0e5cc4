#include <QApplication>
#include <QImage>
#include <QScrollBar>
#include <QSignalSpy>
#include <QWheelEvent>
#include <QtTest>

#include "support/natural_lesson.h"
#include "timeline_view/view_fixture.h"

namespace rangeline::test {
namespace {

class TimelineViewTest : public ViewTest {
  protected:
    Instant timeAt(double x) const {
        return view_.scene().layout().scale.timeAt(x + view_.horizontalScrollBar()->value());
    }
    void wheel(const QPoint& at, int delta, Qt::KeyboardModifiers modifiers) {
        QWheelEvent event(at, view_.viewport()->mapToGlobal(at), {}, {0, delta}, Qt::NoButton,
                          modifiers, Qt::NoScrollPhase, false);
        QApplication::sendEvent(view_.viewport(), &event);
    }
};

TEST_F(TimelineViewTest, ZoomKeepsTheTimeUnderThePointer) {
    for (const int delta : {120, 120, 120, -120, 120}) {
        const Instant before = timeAt(600);
        const double scale = view_.unitsPerMinute();
        wheel({600, 200}, delta, Qt::ControlModifier);
        EXPECT_NE(view_.unitsPerMinute(), scale);
        const double pixel = 60 / view_.unitsPerMinute();
        EXPECT_NEAR(static_cast<double>((timeAt(600) - before).inSeconds()), 0, 1.5 * pixel);
    }
}

TEST_F(TimelineViewTest, ZoomHasLimits) {
    view_.zoom(1e6, 500);
    const double most = view_.unitsPerMinute();
    view_.zoom(2, 500);
    EXPECT_EQ(view_.unitsPerMinute(), most);
    view_.zoom(1e-9, 500);
    EXPECT_GT(view_.unitsPerMinute(), 0.1);
}

TEST_F(TimelineViewTest, ZoomToFitShowsTheWholeLesson) {
    view_.zoom(8, 500);
    view_.zoomToFit();
    for (int item = 0; item < static_cast<int>(view_.scene().model().items.size()); ++item) {
        const QRectF rect = view_.toViewport(view_.scene().rectOf(view_.scene().mainBlockOf(item)));
        EXPECT_GE(rect.left(), 100) << item;
        EXPECT_LE(rect.right(), view_.viewport()->width()) << item;
    }
}

TEST_F(TimelineViewTest, AnEditDoesNotScroll) {
    view_.zoom(3, 500);
    view_.select({key("char")});
    const Instant left = timeAt(500);
    document_.apply(SetPlacements{{{key("trim"),
                                    [] {
                                        Placement placement;
                                        placement.start = minute(-300);
                                        return placement;
                                    }()}}},
                    {});
    EXPECT_NEAR(static_cast<double>((timeAt(500) - left).inSeconds()), 0, 15);
}

TEST_F(TimelineViewTest, RevealScrollsToWhatIsHidden) {
    view_.zoom(2, 500);
    for (const char* step : {"trim", "plate", "roast"}) {
        view_.reveal(key(step));
        EXPECT_TRUE(view_.viewport()->rect().contains(middleOf(key(step)))) << step;
        EXPECT_EQ(view_.selection(), std::vector<PlacementKey>{key(step)});
    }
}

TEST_F(TimelineViewTest, SelectionIgnoresWhatTheLessonDoesNotHave) {
    QSignalSpy changed(&view_, &TimelineView::selectionChanged);
    view_.select({key("no such step")});
    EXPECT_TRUE(view_.selection().empty());
    EXPECT_EQ(changed.count(), 0);
    view_.select({key("char"), key("no such step")});
    EXPECT_EQ(view_.selection().size(), 1U);
    EXPECT_EQ(changed.count(), 1);
}

TEST_F(TimelineViewTest, HoveringSaysTheTime) {
    QSignalSpy hovered(&view_, &TimelineView::timeHovered);
    const QPoint at = middleOf(key("char"));
    QTest::mouseMove(view_.viewport(), at);
    ASSERT_GE(hovered.count(), 1);
    const auto time = hovered.back().front().value<Instant>();
    const Instant below =
        view_.scene().layout().scale.timeAt(at.x() - view_.toViewport(QRectF(0, 0, 1, 1)).x());
    EXPECT_EQ(time.inSeconds() % 60, 0) << "whole minutes";
    EXPECT_LE(time, below);
    EXPECT_LT(below, time + Duration::minutes(1));
}

TEST_F(TimelineViewTest, DraggingSaysWhatCollides) {
    QSignalSpy status(&view_, &TimelineView::statusChanged);
    const QPoint from = middleOf(key("trim"));
    press(from);
    move(later(from, 4));
    move(later(from, 8));
    ASSERT_GE(status.count(), 1);
    EXPECT_TRUE(status.back().front().toString().contains("6 min too early") ||
                status.back().front().toString().contains("both hands"))
        << status.back().front().toString().toStdString();
    release(later(from, 8));
}

TEST_F(TimelineViewTest, APreviewChangesThePictureAndNotTheLesson) {
    const QImage without = view_.viewport()->grab().toImage();
    const PlacementKey sear = key("char");
    view_.showPreview(moveBy(document_.index(), {&sear, 1}, -10_min));
    EXPECT_NE(view_.viewport()->grab().toImage(), without);
    EXPECT_EQ(document_.lesson(), before_);
    view_.showPreview({});
    EXPECT_EQ(view_.viewport()->grab().toImage(), without);
}

TEST_F(TimelineViewTest, UndoWhileDraggingLetsGo) {
    view_.select({key("char")});
    type(Qt::Key_Plus);
    const QPoint from = middleOf(key("char"));
    press(from);
    move(later(from, 6));
    document_.undoStack().undo();
    release(later(from, 6));
    EXPECT_EQ(document_.lesson(), before_);
}

TEST_F(TimelineViewTest, ThePaletteFollowsTheWindows) {
    const QImage light = view_.viewport()->grab().toImage();
    QPalette dark = view_.palette();
    dark.setColor(QPalette::Base, Qt::black);
    view_.setPalette(dark);
    const QImage image = view_.viewport()->grab().toImage();
    EXPECT_LT(qGray(image.pixel(image.width() - 5, image.height() - 5)),
              qGray(light.pixel(light.width() - 5, light.height() - 5)));
}

TEST_F(TimelineViewTest, AnEmptyLessonTeaches) {
    document_.setLesson(smallSupper().lesson);
    const QImage image = view_.viewport()->grab().toImage();
    EXPECT_FALSE(image.isNull());
    type(Qt::Key_Right);
    type(Qt::Key_Delete);
    type(Qt::Key_Return);
    EXPECT_TRUE(view_.selection().empty());
    EXPECT_FALSE(view_.hasInHand());
}

TEST_F(TimelineViewTest, LargerLettersNeedMoreRoom) {
    const double before = view_.scene().layout().bounds.height();
    QFont font = view_.font();
    font.setPixelSize(26);
    view_.setFont(font);
    EXPECT_GT(view_.scene().layout().bounds.height(), 1.5 * before);
}

}  // namespace
}  // namespace rangeline::test
