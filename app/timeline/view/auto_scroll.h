#pragma once

#include <QPoint>
#include <QRect>

namespace rangeline {

/// How far to scroll in one tick while something is dragged: nothing away from the edges, faster
/// the nearer the pointer is to an edge or the farther it is beyond, up to a limit.
QPoint autoScrollStep(const QRect& area, const QPoint& pointer);

}  // namespace rangeline
