#pragma once
// What the looks on a timeline mean: the same words on paper and in the window's help. A look is
// one row in legend.cpp.

#include <span>

#include "timeline/primitives.h"
#include "timeline/timeline_style.h"

namespace rangeline {

struct LegendEntry {
    const char* text;  ///< for translation in the context "Legend"
    /// Paints the look as it is on a timeline of that style into `room`.
    void (*paint)(const TimelineStyle& style, const QRectF& room, Picture& out);

    QString meaning() const;
};

/// What the colours of blocks mean: on what they stand.
std::span<const LegendEntry> coloursOfBlocks();
/// How blocks look, on every medium.
std::span<const LegendEntry> looksOfBlocks();
/// Marks on blocks and lines beside them.
std::span<const LegendEntry> looksOfMarks();

}  // namespace rangeline
