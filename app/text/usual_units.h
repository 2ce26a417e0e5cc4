#pragma once

#include <QLocale>

#include "model/lesson.h"

namespace rangeline {

/// The units of the country: °F, inches and cups in the United States and where people measure as
/// there, else °C, centimetres and grams. A locale of no country says nothing; US units then, as
/// in the sample lessons.
Units usualUnits(const QLocale& locale);

}  // namespace rangeline
