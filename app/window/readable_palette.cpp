#include "window/readable_palette.h"

#include <QColor>
#include <algorithm>
#include <cmath>

namespace rangeline {
namespace {

constexpr double leastContrast = 4.5;

/// WCAG 2.2, glossary, "relative luminance".
double luminance(const QColor& colour) {
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

/// A step of the way to black or to white.
QColor nearer(const QColor& colour, double end) {
    constexpr double step = 0.04;
    const auto part = [&](float channel) {
        return static_cast<float>(channel + (end - channel) * step);
    };
    return QColor::fromRgbF(part(colour.redF()), part(colour.greenF()), part(colour.blueF()));
}

}  // namespace

QPalette withReadableHighlight(QPalette palette) {
    constexpr double middle = 0.179;  // as far from black as from white: sqrt(1.05 * 0.05) - 0.05
    constexpr int mostSteps = 100;
    for (const QPalette::ColorGroup group : {QPalette::Active, QPalette::Inactive}) {
        QColor ground = palette.color(group, QPalette::Highlight);
        const QColor text = palette.color(group, QPalette::HighlightedText);
        const double end = luminance(text) > middle ? 0 : 1;
        for (int step = 0; step < mostSteps && contrast(ground, text) < leastContrast; ++step) {
            ground = nearer(ground, end);
        }
        palette.setColor(group, QPalette::Highlight, ground);
    }
    return palette;
}

}  // namespace rangeline
