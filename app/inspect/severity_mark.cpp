#include "inspect/severity_mark.h"

#include <QPainter>

#include "timeline/palette.h"

namespace rangeline {
namespace {

constexpr int size = 64;  // scaled down by the icon as needed

void paintMark(QPainter& painter, Severity severity) {
    switch (severity) {
        case Severity::Collision:
            painter.drawPolygon(QPolygonF({{32, 4}, {62, 58}, {2, 58}}));
            return;
        case Severity::Late:
            painter.drawPolygon(QPolygonF({{8, 4}, {56, 4}, {8, 60}, {56, 60}}));
            return;
        case Severity::Open:
            painter.setPen(QPen(painter.brush().color(), 10, Qt::DotLine));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(QRectF(8, 14, 48, 36));
            return;
        case Severity::Caution:
            painter.setPen(QPen(painter.brush().color(), 10));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(QRectF(8, 8, 48, 48));
            return;
    }
}

Colour colourOf(Severity severity) {
    switch (severity) {
        case Severity::Collision:
        case Severity::Late:
            return Colour::Collision;
        case Severity::Open:
            return Colour::InkSoft;
        case Severity::Caution:
            break;
    }
    return Colour::Temperature;
}

}  // namespace

QIcon severityMark(Severity severity, const QPalette& palette) {
    constexpr int middle = 128;
    const bool dark = palette.color(QPalette::Base).lightness() < middle;
    const Palette& colours = dark ? Palette::darkScreen() : Palette::lightScreen();
    QPixmap pixmap(size, size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor::fromRgba(colours[colourOf(severity)]));
    paintMark(painter, severity);
    return QIcon(pixmap);
}

}  // namespace rangeline
