#include "print/page_layout.h"

namespace rangeline {

QPageLayout PageLayout::qtLayout() const {
    const QPageSize page(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
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
