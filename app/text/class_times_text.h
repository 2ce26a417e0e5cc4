#pragma once

#include <QStringList>

#include "model/lesson.h"

namespace rangeline {

/// What stands in an order that can hardly be meant, a sentence each: "Tasting comes before the
/// plates are served." It is the cook's own business and forbids nothing.
QStringList timesOutOfOrder(const Head& head);

}  // namespace rangeline
