#include "writing/field_values.h"

#include <QRegularExpression>

#include "model/quantity_text.h"
#include "recipe/plain_words.h"
#include "recipe/recipe_number.h"

namespace rangeline {
namespace {

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

std::optional<Temperature> temperatureIn(const QString& text, Units units) {
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
    return QString::fromStdString(toText(temperature, units));
}

std::optional<Length> lengthIn(const QString& text, Units units) {
    QString whole = text.trimmed().toLower();
    if (isNumber(whole)) {
        whole += units == Units::UsCustomary ? QStringLiteral(" in") : QStringLiteral(" cm");
    }
    return valueOf(parseLength(spaced(whole).toStdString()));
}

QString fieldText(Length length, Units units) {
    return length == Length() ? QString() : QString::fromStdString(toText(length, units));
}

std::optional<Rational> rationalIn(const QString& text) {
    const std::string plain = plainLine(text.toStdString());
    std::string_view rest = plain;
    const auto number = takeNumber(rest);
    return number && trimmed(rest).empty() ? number : std::nullopt;
}

}  // namespace rangeline
