#pragma once
// Two lessons side by side: what moved, what else is different, and what each comes to.

#include <QLocale>
#include <QString>
#include <QStringList>
#include <vector>

#include "model/lesson.h"

namespace rangeline {

struct Outcome {
    int placed = 0;  ///< steps, washes and turning on
    Duration total;  ///< from the first thing done to the end of the last
    QString from;    ///< on the clock; empty if nothing is placed
    int open = 0;    ///< what is not placed yet, or lacks something
    int collisions = 0;
    int late = 0;
    int toMind = 0;

    friend bool operator==(const Outcome&, const Outcome&) = default;
};

/// One thing that is placed otherwise; an empty text where it is not placed.
struct Moved {
    QString step;
    QString before;
    QString after;
};

struct Comparison {
    Outcome before;
    Outcome after;
    std::vector<Moved> moved;  ///< in the order of the clock
    QStringList different;     ///< besides what is placed where, a few words each
};

/// Requires that both are valid.
Comparison compare(const Lesson& before, const Lesson& after, const QLocale& locale, Units units);

}  // namespace rangeline
