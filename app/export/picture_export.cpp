#include "export/picture_export.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>
#include <cmath>

#include "export/export_text.h"
#include "print/timeline_picture.h"
#include "timeline/primitives_qt.h"

namespace rangeline {
namespace {

constexpr double pointsPerInch = 72;
/// Two pixels to a point: sharp on a screen, and letters of nine points are legible.
constexpr double pixelsInPoint = 2;
/// No side longer: other programs refuse such pictures, and memory would run out.
constexpr int mostPixels = 30'000;

Fault cannotWrite(const char* reason) {
    return {FaultCode::CannotWrite, {}, {Exported::tr(reason).toStdString()}};
}

std::string bytesOf(const QBuffer& buffer) {
    return buffer.data().toStdString();
}

void playOnPaper(const TimelinePicture& made, QPainter& painter, double scale) {
    const Palette& palette = Palette::lightScreen();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(), made.size * scale), QColor::fromRgb(palette[Colour::Paper]));
    play(made.picture, painter, palette, QtFonts(made.style, scale));
}

}  // namespace

QString drawingTitle() {
    return Exported::tr("The station timeline as a drawing");
}

Result<std::string, Fault> makeDrawing(const TimelineInput& input, const ExportSetup&) {
    const TimelinePicture made = makeTimelinePicture(input);
    QBuffer bytes;
    QSvgGenerator generator;
    generator.setOutputDevice(&bytes);
    generator.setResolution(static_cast<int>(pointsPerInch));
    generator.setSize(made.size.toSize());
    generator.setViewBox(QRectF(QPointF(), made.size));
    generator.setTitle(made.title);
    QPainter painter;
    if (!painter.begin(&generator)) {
        return cannotWrite(QT_TRANSLATE_NOOP("Export", "the drawing could not be begun"));
    }
    playOnPaper(made, painter, 1);
    painter.end();
    return bytesOf(bytes);
}

QString pictureTitle() {
    return Exported::tr("The station timeline as a picture");
}

Result<std::string, Fault> makePicture(const TimelineInput& input, const ExportSetup&) {
    const TimelinePicture made = makeTimelinePicture(input);
    const QSize size = (made.size * pixelsInPoint).toSize();
    QImage image = size.width() > mostPixels || size.height() > mostPixels
                       ? QImage()
                       : QImage(size, QImage::Format_RGB32);
    if (image.isNull()) {
        return cannotWrite(QT_TRANSLATE_NOOP(
            "Export", "the lesson is too long for one picture; save it as a drawing (.svg)"));
    }
    const int dotsPerMetre = static_cast<int>(std::lround(pointsPerInch * pixelsInPoint / 0.0254));
    image.setDotsPerMeterX(dotsPerMetre);
    image.setDotsPerMeterY(dotsPerMetre);
    image.setText(QStringLiteral("Title"), made.title);
    QPainter painter(&image);
    playOnPaper(made, painter, pixelsInPoint);
    painter.end();
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    if (!image.save(&bytes, "PNG")) {
        return cannotWrite(QT_TRANSLATE_NOOP("Export", "the picture could not be made"));
    }
    return bytesOf(bytes);
}

}  // namespace rangeline
