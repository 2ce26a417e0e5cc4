#include "cli/export_command.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>

#include "cli/chosen_cook.h"
#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "exchange/safe_write.h"
#include "export/exports.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Export)
};

QString textOf(std::string_view latin) {
    return QString::fromUtf8(latin.data(), static_cast<qsizetype>(latin.size()));
}

/// By name, or by the ending of the file; none, after saying so, if there is no such format.
const Export* formatOf(const Invocation& invocation) {
    const QString path = invocation.value("-o");
    const Export* found = invocation.has("--as")
                              ? findExport(invocation.value("--as").toStdString())
                              : exportFor(path);
    if (found != nullptr) {
        return found;
    }
    QStringList known;
    for (const Export& each : exports()) {
        known << textOf(invocation.has("--as") ? each.key : each.ending);
    }
    complain(
        (invocation.has("--as")
             ? Text::tr("There is no format “%1”; choose from: %2.").arg(invocation.value("--as"))
             : Text::tr("What is “%1” to be? Give it one of these endings: %2.").arg(path))
            .arg(known.join(QStringLiteral(", "))));
    return nullptr;
}

}  // namespace

Exit runExport(const Invocation& invocation) {
    if (!invocation.has("-o")) {
        complain(Text::tr("Where to? Name the file with -o OUT.ics (or .csv, .svg, .png ...)."));
        return Exit::Unusable;
    }
    const Export* format = formatOf(invocation);
    const auto opened = format == nullptr ? nullptr : openLesson(invocation);
    ExportSetup setup{QDateTime::currentSecsSinceEpoch()};
    if (opened == nullptr || !readCook(invocation, opened->lesson(), setup.cook)) {
        return Exit::Unusable;
    }
    const QString path = invocation.value("-o");
    const TimelineInput input{opened->index(), opened->text(), opened->findings(),
                              opened->plating()};
    const auto made = format->make(input, setup);
    const std::optional<Fault> fault =
        made.ok() ? writeFile(QFile::encodeName(path).toStdString(), made.value()) : made.error();
    if (fault) {
        complain(QStringLiteral("%1: %2").arg(path, sentence(*fault)));
        return Exit::Unusable;
    }
    if (invocation.has("--json")) {
        say(QJsonObject{{"file", path}, {"format", textOf(format->key)}});
    } else {
        say(Text::tr("%1 written to %2.\n").arg(format->title(), path));
    }
    return Exit::Fine;
}

}  // namespace rangeline
