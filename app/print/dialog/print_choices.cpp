#include "print/dialog/print_choices.h"

#include <QSettings>
#include <algorithm>

namespace rangeline {
namespace {

QString textOf(std::string_view latin) {
    return QString::fromUtf8(latin.data(), static_cast<qsizetype>(latin.size()));
}

}  // namespace

PrintChoices PrintChoices::remembered() {
    const QSettings settings;
    PrintChoices choices;
    choices.sheets =
        settings.value(QStringLiteral("print/sheets"), QStringLiteral("timeline")).toStringList();
    const QString paper = settings.value(QStringLiteral("print/paper")).toString();
    for (const PaperKind& kind : papers()) {
        if (paper == textOf(kind.key)) {
            choices.paper = kind.paper;
        }
    }
    choices.classes =
        std::clamp(settings.value(QStringLiteral("print/classes"), 1).toInt(), 1, 100);
    return choices;
}

void PrintChoices::remember() const {
    QSettings settings;
    settings.setValue(QStringLiteral("print/sheets"), sheets);
    settings.setValue(QStringLiteral("print/classes"), classes);
    if (paper) {
        settings.setValue(QStringLiteral("print/paper"),
                          textOf(papers()[static_cast<std::size_t>(*paper)].key));
    }
}

}  // namespace rangeline
