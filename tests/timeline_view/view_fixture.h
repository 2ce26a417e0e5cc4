#pragma once

#include <gtest/gtest.h>

#include "document/small_supper.h"
#include "timeline_view/timeline_view.h"

namespace rangeline::test {

/// The placed supper in a shown view.
class ViewTest : public testing::Test {
  protected:
    ViewTest();

    int itemOf(const PlacementKey& key) const { return view_.scene().itemOf(key); }
    /// The middle of a step's main block, in the viewport.
    QPoint middleOf(const PlacementKey& key) const;
    /// The same time `minutes` later.
    QPoint later(const QPoint& point, double minutes) const;
    /// The middle height of the lane that target is dropped on, at the same time.
    QPoint onLane(const QPoint& point, const DropTarget& target) const;
    void press(const QPoint& at, Qt::KeyboardModifiers modifiers = {});
    void move(const QPoint& at);
    void release(const QPoint& at);
    void click(const QPoint& at);
    void type(int keyCode, Qt::KeyboardModifiers modifiers = {});
    Placement now(const char* step) const { return document_.lesson().placements.at(key(step)); }

    LessonDocument document_;
    TimelineView view_{document_};
    Lesson before_;
};

}  // namespace rangeline::test
