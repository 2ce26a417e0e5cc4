#pragma once

#include <QLocale>
#include <QString>
#include <vector>

#include "model/dish.h"
#include "writing/own_terms.h"

namespace rangeline {

struct UnusualTime {
    StepId step;
    QString text;  ///< a sentence
};

/// Steps whose likely time is outside what their technique usually takes, a sentence each: worth
/// knowing, never a refusal.
std::vector<UnusualTime> unusualTimes(const Dish& dish, const OwnTerms& terms,
                                      const QLocale& locale);

}  // namespace rangeline
