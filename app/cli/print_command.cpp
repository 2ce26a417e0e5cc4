#include "cli/print_command.h"

#include <QCoreApplication>
#include <QFile>

#include "cli/chosen_cook.h"
#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "export/exports.h"
#include "print/pdf_writer.h"
#include "print/sheets.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Print)
};

QString textOf(std::string_view latin) {
    return QString::fromUtf8(latin.data(), static_cast<qsizetype>(latin.size()));
}

std::optional<Paper> paperOf(const Invocation& invocation, Units units) {
    if (!invocation.has("--paper")) {
        return usualPaper(units);
    }
    const QString name = invocation.value("--paper").toLower();
    QStringList known;
    for (const PaperKind& kind : papers()) {
        known << textOf(kind.key);
        if (name == known.back()) {
            return kind.paper;
        }
    }
    complain(Text::tr("There is no paper “%1”; choose from: %2.").arg(name, known.join(", ")));
    return std::nullopt;
}

/// One sheet, or for "all" every one; none, after saying so, if there is no such sheet.
std::vector<const Sheet*> sheetsOf(const Invocation& invocation) {
    const QString name =
        invocation.has("--sheet") ? invocation.value("--sheet") : textOf(sheets().front().key);
    std::vector<const Sheet*> chosen;
    QStringList known{QStringLiteral("all")};
    for (const Sheet& each : sheets()) {
        const QString key = textOf(each.key);
        known << key;
        if (name == key || name == known.front()) {
            chosen.push_back(&each);
        }
    }
    if (chosen.empty()) {
        complain(Text::tr("There is no sheet “%1”; choose from: %2.").arg(name, known.join(", ")));
    }
    return chosen;
}

/// What is asked for in options; false after saying what is wrong.
bool readSetup(const Invocation& invocation, const Lesson& lesson, SheetSetup& setup) {
    const auto paper = paperOf(invocation, lesson.head.units);
    double classes = 1;
    if (!paper || !readNumber(invocation, "--classes", 1, 100, classes) ||
        !readCook(invocation, lesson, setup.cook)) {
        return false;
    }
    setup.layout.paper = *paper;
    setup.classes = static_cast<int>(classes);
    return true;
}

}  // namespace

Exit runPrint(const Invocation& invocation) {
    if (!invocation.has("-o")) {
        complain(Text::tr("Where to? Name the PDF with -o OUT.pdf."));
        return Exit::Unusable;
    }
    const QString path = invocation.value("-o");
    if (const Export* other = exportFor(path)) {
        complain(Text::tr("%1: sheets are printed as PDF. For %2 use rangeline export.")
                     .arg(path, textOf(other->ending)));
        return Exit::Unusable;
    }
    const auto opened = openLesson(invocation);
    const auto chosen = opened ? sheetsOf(invocation) : std::vector<const Sheet*>();
    SheetSetup setup;
    if (chosen.empty() || !readSetup(invocation, opened->lesson(), setup)) {
        return Exit::Unusable;
    }
    const std::vector<PrintedSheet> made = makeSheets(
        {opened->index(), opened->text(), opened->findings(), opened->plating()}, chosen, setup);
    const bool one = made.size() == 1;
    const QString title =
        one ? made.front().pages.title : QString::fromStdString(opened->lesson().head.name);
    if (const auto fault = savePdf(QFile::encodeName(path).toStdString(), made, title)) {
        complain(QStringLiteral("%1: %2").arg(path, sentence(*fault)));
        return Exit::Unusable;
    }
    const int pages = pageCount(made);
    if (invocation.has("--json")) {
        say(QJsonObject{{"file", path}, {"pages", pages}});
    } else {
        say(Text::tr("%1 printed to %2 (pages: %3).\n")
                .arg(one ? chosen.front()->title() : Text::tr("All sheets"), path)
                .arg(pages));
    }
    return Exit::Fine;
}

}  // namespace rangeline
