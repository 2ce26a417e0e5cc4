#include "print/dialog/print_pages.h"

#include <QPainter>

#include "print/pdf_writer.h"
#include "timeline/primitives_qt.h"

namespace rangeline {

bool printPages(QPrinter& printer, std::span<const PrintedSheet> sheets) {
    printer.setFullPage(true);
    QPainter painter;
    bool first = true;
    for (const PrintedSheet& sheet : sheets) {
        printer.setPageLayout(sheet.layout.qtLayout());
        const QtFonts fonts(sheet.pages.style, pixelsPerPoint);
        for (const Picture& page : sheet.pages.pages) {
            if (first ? !painter.begin(&printer) : !printer.newPage()) {
                return false;
            }
            first = false;
            painter.save();
            const double scale = printer.resolution() / 72.0 / pixelsPerPoint;
            painter.scale(scale, scale);
            play(page, painter, Palette::greyPrint(), fonts);
            painter.restore();
        }
    }
    return !first && painter.end();
}

}  // namespace rangeline
