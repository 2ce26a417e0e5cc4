#pragma once
// Relative luminance and contrast ratio as WCAG 2.2 defines them (section "Relative luminance" of
// its glossary); thresholds of SC 1.4.3 (text 4.5:1) and SC 1.4.11 (parts 3:1).

#include <QRgb>
#include <algorithm>
#include <cmath>

namespace rangeline::test {

inline double linear(int channel) {
    const double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

inline double luminance(QRgb c) {
    return 0.2126 * linear(qRed(c)) + 0.7152 * linear(qGreen(c)) + 0.0722 * linear(qBlue(c));
}

inline double contrast(QRgb a, QRgb b) {
    const double high = std::max(luminance(a), luminance(b));
    const double low = std::min(luminance(a), luminance(b));
    return (high + 0.05) / (low + 0.05);
}

}  // namespace rangeline::test
