#include "timeline/primitives.h"

namespace rangeline {
namespace {

QRectF boundsOf(const BoxShape& box) {
    return box.rect;
}

QRectF boundsOf(const RoundShape& round) {
    return round.rect;
}

QRectF boundsOf(const LineShape& line) {
    const double half = line.width / 2;
    return QRectF(line.from, line.to).normalized().adjusted(-half, -half, half, half);
}

QRectF boundsOf(const TextShape& text) {
    return text.box;
}

QRectF boundsOf(const MarkShape& mark) {
    return mark.box;
}

}  // namespace

QRectF inkBounds(const Primitive& primitive) {
    return std::visit([](const auto& shape) { return boundsOf(shape); }, primitive.shape);
}

}  // namespace rangeline
