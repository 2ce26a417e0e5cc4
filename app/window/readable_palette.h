#pragma once

#include <QPalette>

namespace rangeline {

/// The palette with what is chosen as far from its text as WCAG 2.2 asks of text (SC 1.4.3, 4.5 to
/// 1): some desktops choose it too light.
QPalette withReadableHighlight(QPalette palette);

}  // namespace rangeline
