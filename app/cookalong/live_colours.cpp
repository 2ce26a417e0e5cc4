#include "cookalong/live_colours.h"

namespace rangeline {

const LiveColours& LiveColours::of(bool dark) {
    static const LiveColours light{QColor(0xF1EEE6), QColor(0xFFFFFF), QColor(0x1B1B1B),
                                   QColor(0x4A4A46), QColor(0x807C72), QColor(0x00507A),
                                   QColor(0x8A4B00), QColor(0x1F5F3A), QColor(0x9B1C1C),
                                   QColor(0x7A0F0F), QColor(0xFFFFFF)};
    static const LiveColours night{QColor(0x121311), QColor(0x1E201D), QColor(0xF5F3EC),
                                   QColor(0xC4C1B6), QColor(0x85837A), QColor(0x8CC8F0),
                                   QColor(0xF0B760), QColor(0x8FD6A5), QColor(0xFF9E94),
                                   QColor(0xFFD166), QColor(0x1B1B1B)};
    return dark ? night : light;
}

}  // namespace rangeline
