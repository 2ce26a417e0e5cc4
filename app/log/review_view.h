#pragma once

#include <QLocale>
#include <QWidget>

#include "live/review.h"

namespace rangeline {

/// What became of the plan: planned against real for each step, and what decided plating in fact.
class ReviewView : public QWidget {
    Q_OBJECT

  public:
    ReviewView(const Lesson& planned, const live::Review& review, const QLocale& locale,
               QWidget* parent = nullptr);
};

}  // namespace rangeline
