#pragma once

#include <QPageLayout>
#include <QRectF>
#include <cstdint>
#include <span>
#include <string_view>

namespace rangeline {

enum class Paper : std::uint8_t { A4, Letter, A3 };

struct PaperKind {
    Paper paper;
    std::string_view key;   ///< as given on the command line: "a4"
    std::string_view name;  ///< as the paper is sold: "A4"
    QPageSize::PageSizeId size;
};
/// In the order of Paper.
std::span<const PaperKind> papers();

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
