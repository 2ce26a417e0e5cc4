#include "writing/field_values.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <cmath>

#include "model/quantity_text.h"
#include "recipe/plain_words.h"
#include "recipe/recipe_number.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(FieldValues)
};

/// "1h20min" as the strict grammar wants it: "1 h 20 min".
QString spaced(const QString& text) {
    static const QRegularExpression border(
        QStringLiteral("(?<=\\d)\\s*(?=[A-Za-z°])|(?<=[A-Za-z])\\s*(?=\\d)"));
    QString apart = text.trimmed();
    return apart.replace(border, QStringLiteral(" ")).simplified();
}

bool isNumber(const QString& text) {
    bool ok = false;
    text.toDouble(&ok);
    return ok;
}

/// Without zeros at its end.
QString shortNumber(double value, int decimals) {
    QString text = QString::number(value, 'f', decimals);
    while (text.contains(u'.') && (text.endsWith(u'0') || text.endsWith(u'.'))) {
        text.chop(1);
    }
    return text;
}

bool isTenth(double value) {
    constexpr double near = 1e-6;
    return std::abs(value * 10 - std::round(value * 10)) < near;
}

constexpr Attention attentions[] = {Attention::Hands, Attention::Watch, Attention::Away};

template <class Value>
std::optional<Value> valueOf(Result<Value, Fault> read) {
    return read.ok() ? std::optional(std::move(read.value())) : std::nullopt;
}

}  // namespace

std::optional<Duration> durationIn(const QString& text) {
    QString whole = spaced(text).toLower();
    static const QRegularExpression unitless(QStringLiteral("\\d$"));
    if (whole.contains(unitless)) {
        whole += QStringLiteral(" min");
    }
    whole.replace(QRegularExpression(QStringLiteral("\\b(m|mins|minutes?)\\b")),
                  QStringLiteral("min"));
    whole.replace(QRegularExpression(QStringLiteral("\\b(hrs?|hours?)\\b")), QStringLiteral("h"));
    return valueOf(parseDuration(whole.toStdString()));
}

QString fieldText(Duration length) {
    return QString::fromStdString(toText(length));
}

QString fieldText(const std::optional<Duration>& length) {
    return length ? fieldText(*length) : QString();
}

std::optional<std::optional<Duration>> durationOrNone(const QString& text) {
    if (text.trimmed().isEmpty()) {
        return std::optional<Duration>();
    }
    const auto length = durationIn(text);
    return length ? std::optional(length) : std::nullopt;
}

std::optional<Temperature> temperatureIn(const QString& text, Units units,
                                         std::optional<Temperature> before) {
    if (before && text == fieldText(*before, units)) {
        return before;
    }
    QString whole = text.trimmed().toUpper().remove(u'°').simplified();
    if (isNumber(whole)) {
        whole += units == Units::UsCustomary ? QStringLiteral(" F") : QStringLiteral(" C");
    }
    whole = spaced(whole);
    whole.replace(QStringLiteral(" F"), QStringLiteral(" °F"));
    whole.replace(QStringLiteral(" C"), QStringLiteral(" °C"));
    return valueOf(parseTemperature(whole.toStdString()));
}

QString fieldText(Temperature temperature, Units units) {
    const bool us = units == Units::UsCustomary;
    const double degrees = us ? temperature.inFahrenheit() : temperature.inCelsius();
    return shortNumber(degrees, isTenth(degrees) ? 1 : 0) + (us ? u" °F"_qs : u" °C"_qs);
}

namespace {

/// "1/2", "2 1/2 in", "2½": parts of an inch, as rulers have them. Empty for decimals and for other
/// units.
std::optional<Length> partsOfAnInch(const QString& text, Units units) {
    const std::string plain = plainLine(text.toStdString());
    std::string_view rest = plain;
    const auto number = takeNumber(rest);
    const bool inches = trimmed(rest) == "in" || (trimmed(rest).empty() && units != Units::Metric);
    if (!number || !inches || text.contains(u'.') || *number > Rational(1000)) {
        return std::nullopt;
    }
    return Length::nanometres(std::llround(number->toDouble() * 25'400'000.0));
}

}  // namespace

std::optional<Length> lengthIn(const QString& text, Units units, std::optional<Length> before) {
    if (before && text == fieldText(*before, units)) {
        return before;
    }
    if (const auto inches = partsOfAnInch(text, units)) {
        return inches;
    }
    QString whole = text.trimmed().toLower();
    if (isNumber(whole)) {
        whole += units == Units::UsCustomary ? QStringLiteral(" in") : QStringLiteral(" cm");
    }
    return valueOf(parseLength(spaced(whole).toStdString()));
}

QString fieldText(Length length, Units units) {
    if (length == Length()) {
        return {};
    }
    return units == Units::UsCustomary ? shortNumber(length.inInches(), 2) + u" in"_qs
                                       : shortNumber(length.inMillimetres() / 10, 1) + u" cm"_qs;
}

QString attentionWord(Attention attention) {
    return attention == Attention::Hands   ? Text::tr("hands")
           : attention == Attention::Watch ? Text::tr("a watching eye")
                                           : Text::tr("nobody");
}

std::optional<Attention> attentionIn(const QString& word) {
    for (const Attention attention : attentions) {
        if (attentionWord(attention).compare(word.trimmed(), Qt::CaseInsensitive) == 0) {
            return attention;
        }
    }
    return std::nullopt;
}

QString techniqueWord(const std::string& technique) {
    return QString::fromStdString(technique).replace(u'-', u' ');
}

std::optional<std::int64_t> volumeIn(const QString& text) {
    struct Unit {
        std::string_view words;
        double millilitres;
    };
    // A gallon is 231 cubic inches (NIST Handbook 44, appendix C).
    constexpr double gallon = 3785.411784;
    static constexpr Unit known[] = {{"ml", 1},
                                     {"l litre litres liter liters", 1000},
                                     {"cup cups", gallon / 16},
                                     {"pt pint pints", gallon / 8},
                                     {"qt quart quarts", gallon / 4}};
    const std::string plain = lowered(plainLine(text.toStdString()));
    std::string_view rest = plain;
    const auto number = takeNumber(rest);
    for (const Unit& unit : known) {
        if (number && isOneOf(trimmed(rest), unit.words)) {
            return std::llround(number->toDouble() * unit.millilitres);
        }
    }
    return std::nullopt;
}

std::optional<Rational> rationalIn(const QString& text) {
    const std::string plain = plainLine(text.toStdString());
    std::string_view rest = plain;
    const auto number = takeNumber(rest);
    return number && trimmed(rest).empty() ? number : std::nullopt;
}

}  // namespace rangeline
