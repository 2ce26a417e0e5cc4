#pragma once

#include <QPageLayout>
#include <QRectF>
#include <cstdint>

namespace rangeline {

enum class Paper : std::uint8_t { A4, Letter };
enum class Orientation : std::uint8_t { Landscape, Portrait };

/// A sheet of paper, in points.
struct PageLayout {
    Paper paper = Paper::A4;
    Orientation orientation = Orientation::Landscape;
    double margin = 34;  ///< on all sides; most printers reach that far

    /// The page without margins of its own: they are kept by what is painted.
    QPageLayout qtLayout() const;
    QSizeF size() const;
    QRectF frame() const;  ///< inside the margins
};

}  // namespace rangeline
