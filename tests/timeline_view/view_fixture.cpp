#include "timeline_view/view_fixture.h"

#include <QApplication>
#include <QtTest>

namespace rangeline::test {

ViewTest::ViewTest() {
    document_.setLesson(placedSupper().lesson);
    before_ = document_.lesson();
    view_.resize(1000, 640);
    view_.show();
    view_.activateWindow();
    view_.setFocus();
    QApplication::processEvents();
}

QPoint ViewTest::middleOf(const PlacementKey& key) const {
    const int block = view_.scene().mainBlockOf(itemOf(key));
    return view_.toViewport(view_.scene().rectOf(block)).center().toPoint();
}

QPoint ViewTest::later(const QPoint& point, double minutes) const {
    return point + QPoint(qRound(minutes * view_.unitsPerMinute()), 0);
}

QPoint ViewTest::onLane(const QPoint& point, const DropTarget& target) const {
    for (const LaneBox& box : view_.scene().layout().lanes) {
        if (view_.scene().targetOf(box.lane) == target) {
            const QRectF lane(0, box.top, 1, box.height);
            return {point.x(), qRound(view_.toViewport(lane).center().y())};
        }
    }
    return point;
}

void ViewTest::press(const QPoint& at, Qt::KeyboardModifiers modifiers) {
    QTest::mousePress(view_.viewport(), Qt::LeftButton, modifiers, at);
}

void ViewTest::move(const QPoint& at) {
    QMouseEvent event(QEvent::MouseMove, at, view_.viewport()->mapToGlobal(at), Qt::NoButton,
                      Qt::LeftButton, {});
    QApplication::sendEvent(view_.viewport(), &event);
}

void ViewTest::release(const QPoint& at) {
    QTest::mouseRelease(view_.viewport(), Qt::LeftButton, {}, at);
}

void ViewTest::click(const QPoint& at) {
    press(at);
    release(at);
}

void ViewTest::type(int keyCode, Qt::KeyboardModifiers modifiers) {
    QTest::keyClick(&view_, static_cast<Qt::Key>(keyCode), modifiers);
}

}  // namespace rangeline::test
