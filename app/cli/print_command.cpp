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

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Print)
};

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
    complain(Text::tr("There is no paper “%1”; choose a4 or letter.").arg(name));
    return std::nullopt;
}

/// One sheet, or for "all" every one; none, after saying so, if there is no such sheet.
std::vector<const Sheet*> sheetsOf(const Invocation& invocation) {
    const QString name = invocation.has("--sheet") ? invocation.value("--sheet")
                                                   : QString::fromUtf8(sheets().front().key.data());
    std::vector<const Sheet*> chosen;
    QStringList known{QStringLiteral("all")};
    for (const Sheet& each : sheets()) {
        const QString key =
            QString::fromUtf8(each.key.data(), static_cast<qsizetype>(each.key.size()));
        known << key;
        if (name == key || (name == known.front() && each.inAll)) {
            chosen.push_back(&each);
        }
    }
    if (chosen.empty()) {
        complain(Text::tr("There is no sheet “%1”; choose from: %2.").arg(name, known.join(", ")));
    }
    return chosen;
}

std::vector<PrintedSheet> makeSheets(const OpenedLesson& opened,
                                     const std::vector<const Sheet*>& chosen, Paper paper) {
    const TimelineInput input{opened.index(), opened.text(), opened.findings(), opened.plating()};
    std::vector<PrintedSheet> made;
    for (const Sheet* sheet : chosen) {
        const PageLayout layout{paper, sheet->orientation};
        made.push_back({sheet->make(input, layout), layout});
    }
    return made;
}

}  // namespace

Exit runPrint(const Invocation& invocation) {
    if (!invocation.has("-o")) {
        complain(Text::tr("Where to? Name the PDF with -o OUT.pdf."));
        return Exit::Unusable;
    }
    const auto opened = openLesson(invocation);
    const auto chosen = opened ? sheetsOf(invocation) : std::vector<const Sheet*>();
    const auto paper =
        chosen.empty() ? std::nullopt : paperOf(invocation, opened->lesson().head.units);
    if (!paper) {
        return Exit::Unusable;
    }
    const std::vector<PrintedSheet> made = makeSheets(*opened, chosen, *paper);
    const bool one = made.size() == 1;
    const QString title =
        one ? made.front().pages.title : QString::fromStdString(opened->lesson().head.name);
    const QString path = invocation.value("-o");
    if (const auto fault = savePdf(QFile::encodeName(path).toStdString(), made, title)) {
        complain(QStringLiteral("%1: %2").arg(path, sentence(*fault)));
        return Exit::Unusable;
    }
    std::size_t pages = 0;
    for (const PrintedSheet& sheet : made) {
        pages += sheet.pages.pages.size();
    }
    if (invocation.has("--json")) {
        say(QJsonObject{{"file", path}, {"pages", static_cast<int>(pages)}});
    } else {
        say(Text::tr("%1 printed to %2 (pages: %3).\n")
                .arg(one ? chosen.front()->title() : Text::tr("All sheets"), path)
                .arg(pages));
    }
    return Exit::Fine;
}

}  // namespace rangeline
