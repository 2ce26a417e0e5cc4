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

std::optional<Fault> saveBytes(const std::string& path, const Result<QByteArray, Fault>& pdf) {
    if (!pdf.ok()) {
        return pdf.error();
    }
    const QByteArray& bytes = pdf.value();
    return writeFile(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

void playSheet(const PrintedSheet& sheet, bool first, QPdfWriter& writer, QPainter& painter) {
    const QtFonts fonts(sheet.pages.style, pixelsPerPoint);
    for (const Picture& page : sheet.pages.pages) {
        if (!first) {
            // Decides the size of the page that comes next.
            writer.setPageLayout(sheet.layout.qtLayout());
            writer.newPage();
        }
        first = false;
        play(page, painter, Palette::greyPrint(), fonts);
    }
}

}  // namespace

Result<QByteArray, Fault> writePdf(std::span<const PrintedSheet> sheets, const QString& title) {
    if (!hasFonts()) {
        return cannotWrite(QT_TRANSLATE_NOOP("PdfWriter", "no fonts are installed"));
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageLayout(sheets.front().layout.qtLayout());
    writer.setResolution(static_cast<int>(pointsPerInch * pixelsPerPoint));
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Rangeline"));
    QPainter painter;
    if (!painter.begin(&writer)) {
        return cannotWrite(QT_TRANSLATE_NOOP("PdfWriter", "the PDF could not be begun"));
    }
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        playSheet(sheets[i], i == 0, writer, painter);
    }
    painter.end();
    return bytes;
}

std::optional<Fault> savePdf(const std::string& path, std::span<const PrintedSheet> sheets,
                             const QString& title) {
    return saveBytes(path, writePdf(sheets, title));
}

Result<QByteArray, Fault> writePdf(const SheetPages& sheet, const PageLayout& layout) {
    const PrintedSheet only{sheet, layout};
    return writePdf({&only, 1}, sheet.title);
}

std::optional<Fault> savePdf(const std::string& path, const SheetPages& sheet,
                             const PageLayout& layout) {
    return saveBytes(path, writePdf(sheet, layout));
}

}  // namespace rangeline
