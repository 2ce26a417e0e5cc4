#pragma once

#include "inspect/small_kitchen.h"
#include "range/range_scene.h"

namespace rangeline::test {

/// A lesson with everything that is read from it.
struct Seen {
    explicit Seen(Lesson given)
        : lesson(std::move(given)),
          expanded(expand(lesson)),
          index(lesson, expanded),
          text{lesson, expanded, QLocale(QLocale::English, QLocale::UnitedStates)} {}
    Seen(const Seen&) = delete;
    Seen& operator=(const Seen&) = delete;

    RangeScene at(Instant instant) const { return rangeScene(index, text, instant); }

    Lesson lesson;
    Expanded expanded;
    UseIndex index;
    TextContext text;
};

}  // namespace rangeline::test
