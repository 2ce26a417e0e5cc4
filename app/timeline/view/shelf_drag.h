#pragma once
// What a drag from the shelf carries.

#include <QMimeData>
#include <memory>
#include <vector>

#include "model/placement.h"

namespace rangeline {

inline constexpr char shelfMimeType[] = "application/x-rangeline-step";

/// The steps in the order in which they are to be placed. The caller owns it; QDrag takes it.
std::unique_ptr<QMimeData> makeShelfDrag(const std::vector<StepKey>& steps);
/// Empty if the data are not from a shelf.
std::vector<StepKey> readShelfDrag(const QMimeData& data);

}  // namespace rangeline
