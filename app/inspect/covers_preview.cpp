#include "inspect/covers_preview.h"

#include "check/covers_change.h"
#include "model/validate.h"
#include "text/covers_text.h"

namespace rangeline {
namespace {

QString html(const std::vector<CoversSection>& sections) {
    QString text;
    for (const CoversSection& section : sections) {
        text += QStringLiteral("<p><b>%1</b></p><ul>").arg(section.heading.toHtmlEscaped());
        for (const QString& line : section.lines) {
            text += QStringLiteral("<li>%1</li>").arg(line.toHtmlEscaped());
        }
        text += QStringLiteral("</ul>");
    }
    return text;
}

}  // namespace

CoversPreview::CoversPreview(const QLocale& locale, QWidget* parent)
    : QTextBrowser(parent), locale_(locale) {
    setAccessibleName(tr("What other covers change"));
    setOpenLinks(false);
    const int high = 11 * fontMetrics().lineSpacing();
    setFixedHeight(high);
    setTabChangesFocus(true);
    hide();
}

void CoversPreview::compare(const Lesson& before, const Lesson& after, Units units) {
    if (!validate(after, 1).empty()) {
        hide();
        return;
    }
    const Expanded expandedBefore = expand(before);
    const Expanded expandedAfter = expand(after);
    const UseIndex indexBefore(before, expandedBefore);
    const UseIndex indexAfter(after, expandedAfter);
    const CoversChange change = coversChange(indexBefore, indexAfter);
    setHtml(html(coversSections(change, {after, expandedAfter, locale_, units})));
    setVisible(!change.covers.empty());
}

}  // namespace rangeline
