#include "window/lesson_printer.h"

#include <QFile>

#include "print/pdf_writer.h"

namespace rangeline {

std::optional<Fault> printTo(const QString& path, const Sheet& sheet,
                             const LessonDocument& document, const QLocale& locale) {
    const TextContext text{document.lesson(), document.expanded(), locale};
    const PageLayout layout{usualPaper(document.lesson().head.units), sheet.orientation};
    const SheetPages pages =
        sheet.make({document.index(), text, document.findings(), document.analysis()}, layout);
    return savePdf(QFile::encodeName(path).toStdString(), pages, layout);
}

}  // namespace rangeline
