#pragma once

#include <QLocale>
#include <QStringList>

#include "model/dish.h"

namespace rangeline {

/// Steps whose likely time is outside what their technique usually takes, a sentence each: worth
/// knowing, never a refusal.
QStringList unusualTimes(const Dish& dish, const QLocale& locale);

}  // namespace rangeline
