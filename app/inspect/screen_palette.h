#pragma once

#include <QWidget>

#include "timeline/palette.h"

namespace rangeline {

/// The colours that go with the widget's own: light or dark by its window's lightness.
inline const Palette& screenPalette(const QWidget& widget) {
    constexpr int middle = 128;
    return widget.palette().color(QPalette::Window).lightness() < middle ? Palette::darkScreen()
                                                                         : Palette::lightScreen();
}

}  // namespace rangeline
