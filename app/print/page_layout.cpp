#include "print/page_layout.h"

#include <array>

namespace rangeline {

namespace {

constexpr std::array kinds = {
    PaperKind{Paper::A4, "a4", "A4", QPageSize::A4},
    PaperKind{Paper::Letter, "letter", "Letter", QPageSize::Letter},
    PaperKind{Paper::A3, "a3", "A3", QPageSize::A3},
};

}  // namespace

std::span<const PaperKind> papers() {
    return kinds;
}

QPageLayout PageLayout::qtLayout() const {
    const QPageSize page(kinds[static_cast<std::size_t>(paper)].size);
    const auto turned =
        orientation == Orientation::Landscape ? QPageLayout::Landscape : QPageLayout::Portrait;
    return QPageLayout(page, turned, QMarginsF());
}

QSizeF PageLayout::size() const {
    return qtLayout().fullRect(QPageLayout::Point).size();
}

QRectF PageLayout::frame() const {
    return QRectF(QPointF(), size()).adjusted(margin, margin, -margin, -margin);
}

}  // namespace rangeline
