#include "cookalong/live_style.h"

#include <algorithm>

namespace rangeline {

double liveScale(const QSize& page) {
    return std::clamp(std::min(page.width() / 1280.0, page.height() / 860.0), 0.6, 4.0);
}

QString liveStyleSheet(const LiveColours& colours, double scale) {
    const auto px = [scale](double size) { return QString::number(qRound(size * scale)); };
    const QString sheet = QStringLiteral(R"(
#cookAlong { background: @ground; }
QLabel { color: @text; font-size: @17px; }
QLabel[role="headline"] { font-size: @46px; font-weight: 600; }
QLabel[role="headline"][behind="true"] { color: @look; }
QLabel[role="clock"] { font-size: @46px; font-weight: 600; }
QLabel[role="title"] { font-size: @18px; font-weight: 600; color: @quiet; }
QLabel[role="said"] { font-size: @22px; }
QLabel[role="name"] { font-size: @28px; font-weight: 600; }
QLabel[role="where"] { font-size: @21px; color: @quiet; }
QLabel[role="state"] { font-size: @21px; font-weight: 600; }
QLabel[role="figure"] { font-size: @52px; font-weight: 600; }
QLabel[role="next"] { font-size: @24px; }
QFrame[role="alarm"] { background: @alarm; border: 3px solid @onAlarm; }
QFrame[role="alarm"] QLabel { color: @onAlarm; font-size: @26px; font-weight: 600; }
QFrame[role="alarm"] QLabel[role="alarm-number"] { font-size: @46px; }
QFrame[role="question"] { background: @panel; border: 3px solid @look; }
QPushButton { background: @panel; color: @text; border: 2px solid @line; font-size: @20px;
  padding: 2px 4px; min-height: @54px; }
QPushButton:focus { border: 4px solid @chosen; }
QPushButton:pressed { background: @line; }
QPushButton[usual="true"] { background: @chosen; color: @ground; border-color: @chosen;
  font-weight: 600; }
QPushButton[usual="true"]:focus { border: 4px solid @text; }
QPushButton[role="stop"] { font-size: @26px; font-weight: 600; min-height: @58px;
  min-width: @140px; }
QPushButton[role="small"] { min-height: @46px; padding: 2px 12px; }
QTimeEdit { font-size: @26px; min-height: @46px; background: @panel; color: @text; }
QScrollArea, #cards { background: transparent; border: none; }
)");
    QString done;
    for (qsizetype i = 0; i < sheet.size(); ++i) {
        if (sheet[i] != u'@') {
            done += sheet[i];
            continue;
        }
        qsizetype end = i + 1;
        while (end < sheet.size() &&
               (sheet[i + 1].isDigit() ? sheet[end].isDigit() : sheet[end].isLetter())) {
            ++end;
        }
        const QString word = sheet.mid(i + 1, end - i - 1);
        const std::pair<const char*, QColor> names[] = {
            {"ground", colours.ground}, {"panel", colours.panel}, {"text", colours.text},
            {"quiet", colours.quiet},   {"line", colours.line},   {"chosen", colours.chosen},
            {"look", colours.look},     {"alarm", colours.alarm}, {"onAlarm", colours.onAlarm}};
        const auto* named = std::ranges::find(
            names, word, [](const auto& each) { return QString::fromLatin1(each.first); });
        done += named == std::end(names) ? px(word.toDouble()) : named->second.name();
        i = end - 1;
    }
    return done;
}

}  // namespace rangeline
