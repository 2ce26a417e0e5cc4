#include "cli/print_command.h"

#include <QCoreApplication>
#include <QFile>

#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "print/pdf_writer.h"
#include "print/sheets.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Print", text);
}

std::optional<Paper> paperOf(const Invocation& invocation, Units units) {
    const QString name = invocation.value("--paper").toLower();
    if (!invocation.has("--paper")) {
        return usualPaper(units);
    }
    if (name == QStringLiteral("a4")) {
        return Paper::A4;
    }
    if (name == QStringLiteral("letter")) {
        return Paper::Letter;
    }
    complain(tr("There is no paper “%1”; choose a4 or letter.").arg(name));
    return std::nullopt;
}

const Sheet* sheetOf(const Invocation& invocation) {
    const QString name = invocation.has("--sheet") ? invocation.value("--sheet")
                                                   : QString::fromUtf8(sheets().front().key.data());
    const Sheet* sheet = findSheet(name.toStdString());
    if (sheet == nullptr) {
        QStringList known;
        for (const Sheet& each : sheets()) {
            known << QString::fromUtf8(each.key.data(), static_cast<int>(each.key.size()));
        }
        complain(tr("There is no sheet “%1”; choose from: %2.").arg(name, known.join(", ")));
    }
    return sheet;
}

}  // namespace

Exit runPrint(const Invocation& invocation) {
    if (!invocation.has("-o")) {
        complain(tr("Where to? Name the PDF with -o OUT.pdf."));
        return Exit::Unusable;
    }
    const auto opened = openLesson(invocation);
    const Sheet* sheet = opened ? sheetOf(invocation) : nullptr;
    const auto paper = sheet ? paperOf(invocation, opened->lesson().head.units) : std::nullopt;
    if (!paper) {
        return Exit::Unusable;
    }
    const PageLayout layout{*paper, sheet->orientation};
    const TimelineInput input{opened->index(), opened->text(), opened->findings(),
                              opened->plating()};
    const SheetPages pages = sheet->make(input, layout);
    const QString path = invocation.value("-o");
    if (const auto fault = savePdf(QFile::encodeName(path).toStdString(), pages, layout)) {
        complain(QStringLiteral("%1: %2").arg(path, sentence(*fault)));
        return Exit::Unusable;
    }
    if (invocation.has("--json")) {
        say(QJsonObject{{"file", path}, {"pages", static_cast<int>(pages.pages.size())}});
    } else {
        say(tr("%1 printed to %2 (pages: %3).\n")
                .arg(sheet->title(), path)
                .arg(pages.pages.size()));
    }
    return Exit::Fine;
}

}  // namespace rangeline
