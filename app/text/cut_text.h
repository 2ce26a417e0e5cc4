#pragma once

#include <QLocale>
#include <QString>
#include <string>

#include "model/lesson.h"

namespace rangeline {

/// "small dice (¼ in)" for a cut of the trade, any other word as it is.
QString cutText(const std::string& cut, Units units, const QLocale& locale);
/// Takes the dimension off again that cutText() has put there, in either units.
QString cutWithoutDimension(const QString& text, const QLocale& locale);

}  // namespace rangeline
