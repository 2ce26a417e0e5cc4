#pragma once

#include <QIcon>
#include <QPalette>

#include "check/finding.h"

namespace rangeline {

/// A shape of its own for each severity: a triangle for a collision, an hourglass for lateness, a
/// ring for a caution. Readable without colours.
QIcon severityMark(Severity severity, const QPalette& palette);

}  // namespace rangeline
