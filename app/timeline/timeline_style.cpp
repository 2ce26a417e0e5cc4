#include "timeline/timeline_style.h"

namespace rangeline {

//                            Title Heading Body BodyStrong LaneName Block BlockStrong Axis Small
const TimelineStyle& TimelineStyle::screen() {
    static const TimelineStyle style{.fontSizes = {20, 15, 13, 13, 13, 13, 13, 12, 12},
                                     .headWidth = 150,
                                     .axisRow = 20,
                                     .sectionHeight = 22,
                                     .rowHeight = 26,
                                     .lanePadding = 2,
                                     .heatHeight = 44,
                                     .lineGap = 12,
                                     .labelGap = 64,
                                     .inset = 5,
                                     .numberRoom = 0,
                                     .rightRoom = 0,
                                     .heavyLine = 3,
                                     .thinLine = 1,
                                     .markSize = 10,
                                     .numbers = false};
    return style;
}

const TimelineStyle& TimelineStyle::paper() {
    static const TimelineStyle style{.fontSizes = {19, 12, 10, 10, 9, 9.5, 9.5, 9, 8.5},
                                     .headWidth = 104,
                                     .axisRow = 14,
                                     .sectionHeight = 13,
                                     .rowHeight = 15,
                                     .lanePadding = 1.5,
                                     .heatHeight = 30,
                                     .lineGap = 9,
                                     .labelGap = 40,
                                     .inset = 3,
                                     .numberRoom = 18,
                                     .rightRoom = 20,
                                     .heavyLine = 2,
                                     .thinLine = 0.6,
                                     .markSize = 7,
                                     .numbers = true};
    return style;
}

namespace {

void enlargeSpaces(TimelineStyle& style, double factor) {
    for (double* size : {&style.headWidth, &style.axisRow, &style.sectionHeight, &style.rowHeight,
                         &style.lanePadding, &style.heatHeight, &style.lineGap, &style.labelGap,
                         &style.inset, &style.numberRoom, &style.rightRoom, &style.markSize}) {
        *size *= factor;
    }
}

}  // namespace

TimelineStyle TimelineStyle::screenEnlarged(double factor) {
    TimelineStyle style = screen();
    for (double& size : style.fontSizes) {
        size *= factor;
    }
    enlargeSpaces(style, factor);
    return style;
}

TimelineStyle TimelineStyle::paperEnlarged(double factor) {
    TimelineStyle style = paper();
    for (const FontRole role :
         {FontRole::LaneName, FontRole::Block, FontRole::BlockStrong, FontRole::Axis}) {
        style.fontSizes[static_cast<std::size_t>(role)] *= factor;
    }
    enlargeSpaces(style, factor);
    return style;
}

}  // namespace rangeline
