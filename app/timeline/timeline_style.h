#pragma once
// Sizes for one medium, in its units: pixels on screen, points on paper.

#include <array>

#include "timeline/primitives.h"

namespace rangeline {

struct TimelineStyle {
    std::array<double, fontRoleCount> fontSizes{};
    double headWidth = 0;      ///< column of lane names
    double axisRow = 0;        ///< height of the clock row, and of the minutes row
    double sectionHeight = 0;  ///< title above the lanes of a section
    double rowHeight = 0;      ///< of one row of blocks in a lane
    double lanePadding = 0;    ///< above and below a lane's rows
    double heatHeight = 0;     ///< of the lane with the oven's set temperature
    double lineGap = 0;        ///< least distance of grid lines
    double labelGap = 0;       ///< least distance of axis labels
    double inset = 0;          ///< of text in its block
    /// A block narrower than this has its number beside it, and the layout keeps as much room free
    /// there. Zero: no room is kept.
    double numberRoom = 0;
    double rightRoom = 0;  ///< beyond the end of the window, for such numbers
    double heavyLine = 0;
    double thinLine = 0;
    double markSize = 0;
    bool numbers = false;  ///< blocks show their number before their name

    double fontSize(FontRole role) const { return fontSizes[static_cast<std::size_t>(role)]; }

    static const TimelineStyle& screen();
    /// For readers who want larger (or smaller) letters: everything in proportion.
    static TimelineStyle screenEnlarged(double factor);
    /// No text on paper is smaller than 8 points, none in a block smaller than 9.
    static const TimelineStyle& paper();
    /// Paper with everything that belongs to the timeline enlarged; the page's own texts stay.
    static TimelineStyle paperEnlarged(double factor);
};

}  // namespace rangeline
