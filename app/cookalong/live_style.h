#pragma once
// Fonts, colours and sizes of the page, for a screen two metres away.

#include <QSize>
#include <QString>

#include "cookalong/live_colours.h"

namespace rangeline {

/// 1 at 1280 x 860; figures are then 46 pixels high and more.
double liveScale(const QSize& page);
QString liveStyleSheet(const LiveColours& colours, double scale);

}  // namespace rangeline
