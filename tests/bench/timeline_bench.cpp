// How long the timeline takes on screen: to paint it all, and to follow one move of a drag. Painted
// into an image of a full screen, without a display.

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QImage>
#include <QMouseEvent>
#include <QPainter>

#include "bench/rough_lesson.h"
#include "timeline_view/timeline_view.h"

namespace rangeline::test {
namespace {

void beAnApplication() {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    static int argc = 1;
    static char name[] = "bench";
    static char* argv[] = {name, nullptr};
    static QApplication application(argc, argv);
}

/// A lesson of that many steps in a shown timeline; all of its time is in view.
class Shown {
  public:
    explicit Shown(int steps) {
        document_.setLesson(roughlyPlaced(steps));
        view_ = std::make_unique<TimelineView>(document_);
        view_->resize(1920, 1080);
        view_->show();
        QApplication::processEvents();
        view_->zoomToFit();
        image_ = QImage(view_->viewport()->size(), QImage::Format_RGB32);
    }

    void paint() { view_->viewport()->render(&image_); }
    TimelineView& view() { return *view_; }
    int blocks() const { return static_cast<int>(view_->scene().layout().blocks.size()); }
    /// Those that are at least partly in the window.
    int blocksInWindow() const {
        const QRectF window(view_->viewport()->rect());
        int seen = 0;
        for (const BlockBox& box : view_->scene().layout().blocks) {
            seen += view_->toViewport(box.rect).adjusted(0, 0, 1, 0).intersects(window) ? 1 : 0;
        }
        return seen;
    }
    /// Presses the button on the middle of a step's block, or moves the pointer.
    void point(QEvent::Type type, const QPointF& at) {
        QMouseEvent event(type, at, view_->viewport()->mapToGlobal(at),
                          type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton, Qt::LeftButton,
                          {});
        QApplication::sendEvent(view_->viewport(), &event);
    }
    QPointF middleOfSomeBlock() const {
        const TimelineScene& scene = view_->scene();
        const QRectF window = QRectF(view_->viewport()->rect()).adjusted(300, 200, -300, -200);
        for (int item = 0; item < std::ssize(scene.model().items); ++item) {
            const QRectF rect = view_->toViewport(scene.rectOf(scene.mainBlockOf(item)));
            if (rect.width() > 1 && window.contains(rect.center())) {
                return rect.center();
            }
        }
        return window.center();
    }

  private:
    LessonDocument document_;
    std::unique_ptr<TimelineView> view_;
    QImage image_;
};

/// The first time widths of texts are not known yet, as after another size of letters.
void paintForTheFirstTime(benchmark::State& state) {
    beAnApplication();
    Shown shown(static_cast<int>(state.range(0)));
    for (auto _ : state) {
        state.PauseTiming();
        QEvent other(QEvent::FontChange);
        QApplication::sendEvent(&shown.view(), &other);
        state.ResumeTiming();
        shown.paint();
    }
    state.counters["blocks"] = shown.blocks();
    state.counters["in_window"] = shown.blocksInWindow();
}
BENCHMARK(paintForTheFirstTime)->Arg(150)->Arg(1540)->Unit(benchmark::kMillisecond);

void paintAgain(benchmark::State& state) {
    beAnApplication();
    Shown shown(static_cast<int>(state.range(0)));
    for (auto _ : state) {
        shown.paint();
    }
    state.counters["blocks"] = shown.blocks();
    state.counters["in_window"] = shown.blocksInWindow();
}
BENCHMARK(paintAgain)->Arg(60)->Arg(150)->Arg(300)->Arg(1540)->Unit(benchmark::kMillisecond);

/// One move of the pointer: the proposal, what it collides with, and the picture of it.
void dragByOneMove(benchmark::State& state) {
    beAnApplication();
    Shown shown(static_cast<int>(state.range(0)));
    const QPointF at = shown.middleOfSomeBlock();
    shown.point(QEvent::MouseButtonPress, at);
    int moved = 0;
    for (auto _ : state) {
        moved = (moved + 7) % 97;
        shown.point(QEvent::MouseMove, at + QPointF(moved - 40, moved % 30));
        shown.paint();
    }
    shown.view().letGo();
    state.counters["blocks"] = shown.blocks();
    state.counters["in_window"] = shown.blocksInWindow();
}
BENCHMARK(dragByOneMove)->Arg(60)->Arg(300)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace rangeline::test
