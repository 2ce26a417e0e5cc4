#pragma once

#include <QWidget>

namespace rangeline {

/// What becomes of what was written and is not in the book.
enum class Leaving : std::uint8_t { GoOn, ForLater, GiveUp };

/// Asks, with `title` above the question.
Leaving askHowToLeave(QWidget* parent, const QString& title);

}  // namespace rangeline
