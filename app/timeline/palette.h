#pragma once
// Real colours for the roles, on a light screen, a dark screen and in grey on paper.

#include <QRgb>
#include <array>

#include "timeline/primitives.h"

namespace rangeline {

class Palette {
  public:
    static const Palette& lightScreen();
    static const Palette& darkScreen();
    static const Palette& greyPrint();

    /// Opaque, except for Colour::None, which is fully transparent.
    QRgb operator[](Colour role) const { return colours_[static_cast<std::size_t>(role)]; }

  private:
    using Table = std::array<QRgb, colourCount>;
    explicit Palette(const Table& colours) : colours_(colours) {}

    Table colours_;
};

}  // namespace rangeline
