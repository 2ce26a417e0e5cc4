#include "timeline/text_measure.h"

#include <QStringList>

namespace rangeline {
namespace {

constexpr qsizetype fewestLetters = 3;
constexpr qsizetype mostRemembered = 20'000;
const QChar ellipsis(0x2026);

}  // namespace

double TextMeasure::width(FontRole font, const QString& text) const {
    QHash<QString, double>& known = widths_[static_cast<std::size_t>(font)];
    if (const auto found = known.constFind(text); found != known.cend()) {
        return *found;
    }
    if (known.size() >= mostRemembered) {
        known.clear();
    }
    const double measured = measure(font, text);
    known.insert(text, measured);
    return measured;
}

qsizetype TextMeasure::lettersThatFit(FontRole font, const QString& text, double available) const {
    qsizetype fits = 0;
    qsizetype tooMany = text.size() + 1;
    while (tooMany - fits > 1) {
        const qsizetype middle = (fits + tooMany) / 2;
        (measure(font, text.left(middle)) <= available ? fits : tooMany) = middle;
    }
    return fits;
}

QString TextMeasure::fitted(FontRole font, const QString& text, double available) const {
    if (width(font, text) <= available) {
        return text;
    }
    if (available < fewestLetters * width(font, ellipsis) / 2) {
        return {};
    }
    const auto quarters = static_cast<int>(available * 4);
    auto& known = cuts_[static_cast<std::size_t>(font)];
    const std::pair key(text, quarters);
    if (const auto found = known.constFind(key); found != known.cend()) {
        return *found;
    }
    if (known.size() >= mostRemembered) {
        known.clear();
    }
    return *known.insert(key, cut(font, text, quarters / 4.0));
}

QString TextMeasure::cut(FontRole font, const QString& text, double available) const {
    const qsizetype letters = lettersThatFit(font, text, available - width(font, ellipsis));
    return letters < fewestLetters ? QString() : text.left(letters).trimmed() + ellipsis;
}

std::vector<QString> TextMeasure::wrapped(FontRole font, const QString& text,
                                          double available) const {
    std::vector<QString> lines;
    QString line;
    for (QString word : text.split(u' ', Qt::SkipEmptyParts)) {
        const QString longer = line.isEmpty() ? word : line + u' ' + word;
        if (measure(font, longer) <= available) {
            line = longer;
            continue;
        }
        if (!line.isEmpty()) {
            lines.push_back(line);
        }
        while (measure(font, word) > available && word.size() > 1) {
            const qsizetype letters = std::max<qsizetype>(1, lettersThatFit(font, word, available));
            lines.push_back(word.left(letters));
            word.remove(0, letters);
        }
        line = word;
    }
    lines.push_back(line);
    return lines;
}

}  // namespace rangeline
