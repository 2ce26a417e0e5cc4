#pragma once

#include <QWidget>

namespace rangeline {

/// A page of the help: each look on the timeline beside what it means.
QWidget* makeHelpOnLooks();

}  // namespace rangeline
