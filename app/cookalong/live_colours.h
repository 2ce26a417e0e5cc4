#pragma once
// The colours of cook-along, light and dark; text on its ground has 4.5:1 and more, marks and
// borders 3:1 and more.

#include <QColor>
#include <array>

namespace rangeline {

struct LiveColours {
    QColor ground;
    QColor panel;
    QColor text;
    QColor quiet;  ///< text of less weight
    QColor line;   ///< borders
    QColor chosen;
    QColor due;
    QColor runs;
    QColor look;
    QColor alarm;  ///< ground of an alarm's bar
    QColor onAlarm;

    static const LiveColours& of(bool dark);
};

}  // namespace rangeline
