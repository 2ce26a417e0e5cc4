#pragma once

#include "analysis/use_index.h"
#include "support/lesson_builder.h"
#include "text/names.h"

namespace rangeline::test {

inline const QLocale american{QLocale::English, QLocale::UnitedStates};
inline const QLocale german{QLocale::German, QLocale::Germany};

/// Chicken roasted at 425 °F from 4:50 to 5:50 PM and a gratin baked at 375 °F from 5:10 to 5:55 PM
/// in one oven, leeks charred at 5:40 PM in the second of two pans; served at 6:30 PM.
LessonBuilder supperBuilder();

/// The lesson with what sentences need.
struct Supper {
    explicit Supper(LessonBuilder builder = supperBuilder(), const QLocale& locale = american);

    Lesson lesson;
    Expanded expanded;
    TextContext context;
};

}  // namespace rangeline::test
