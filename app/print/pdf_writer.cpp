#include "print/pdf_writer.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFontInfo>
#include <QGuiApplication>
#include <QPainter>
#include <QPdfWriter>

#include "exchange/safe_write.h"
#include "timeline/primitives_qt.h"

namespace rangeline {
namespace {

constexpr int pointsPerInch = 72;

/// Without any font Qt still lists families, but finds none for a font that is asked for; all texts
/// would become boxes.
bool hasFonts() {
    return !QFontInfo(QGuiApplication::font()).family().isEmpty();
}

Fault cannotWrite(const char* reason) {
    return {FaultCode::CannotWrite,
            {},
            {QCoreApplication::translate("PdfWriter", reason).toStdString()}};
}

}  // namespace

Result<QByteArray, Fault> writePdf(const SheetPages& sheet, const PageLayout& layout) {
    if (!hasFonts()) {
        return cannotWrite(QT_TRANSLATE_NOOP("PdfWriter", "no fonts are installed"));
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageLayout(layout.qtLayout());
    writer.setResolution(static_cast<int>(pointsPerInch * pixelsPerPoint));
    writer.setTitle(sheet.title);
    writer.setCreator(QStringLiteral("Rangeline"));
    const QtFonts fonts(sheet.style, pixelsPerPoint);
    QPainter painter;
    if (!painter.begin(&writer)) {
        return cannotWrite(QT_TRANSLATE_NOOP("PdfWriter", "the PDF could not be begun"));
    }
    for (std::size_t page = 0; page < sheet.pages.size(); ++page) {
        if (page > 0) {
            writer.newPage();
        }
        play(sheet.pages[page], painter, Palette::greyPrint(), fonts);
    }
    painter.end();
    return bytes;
}

std::optional<Fault> savePdf(const std::string& path, const SheetPages& sheet,
                             const PageLayout& layout) {
    const Result<QByteArray, Fault> pdf = writePdf(sheet, layout);
    if (!pdf.ok()) {
        return pdf.error();
    }
    const QByteArray& bytes = pdf.value();
    return writeFile(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

}  // namespace rangeline
