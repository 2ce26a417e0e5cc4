#pragma once

#include <QIcon>
#include <QPalette>

namespace rangeline {

/// An icon of resources/icons by its name, in the colours of the palette's button text. Empty if
/// there is no such icon.
QIcon makeIcon(const QString& name, const QPalette& palette);

}  // namespace rangeline
