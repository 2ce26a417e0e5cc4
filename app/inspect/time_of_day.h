#pragma once
// A time of day as people type it.

#include <QLocale>
#include <QTime>
#include <optional>

namespace rangeline {

/// Of "5:30 PM", "5.30pm", "5 pm", "530", "17:30", "1730" or "17:30:15": hours, minutes and, if
/// wanted, seconds, with or without marks between them, and with the mark of the half of the day in
/// English or in the locale's words. Nothing where it is no time. Where twelve hours are shown and
/// neither the mark nor the figures say which half of the day is meant, it is that of `near`.
std::optional<QTime> timeOfDay(const QString& typed, const QLocale& locale, bool twelveHours,
                               const QTime& near);

}  // namespace rangeline
