#include "text/usual_units.h"

namespace rangeline {

Units usualUnits(const QLocale& locale) {
    const bool us = locale.territory() == QLocale::AnyTerritory ||
                    locale.measurementSystem() == QLocale::ImperialUSSystem;
    return us ? Units::UsCustomary : Units::Metric;
}

}  // namespace rangeline
