#include "text/quantities.h"

#include <QCoreApplication>
#include <array>
#include <cmath>
#include <utility>

namespace rangeline {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Quantities)
};

/// With at most so many decimals, and none that say nothing.
QString decimalText(double value, int decimals, const QLocale& locale) {
    for (int used = 0; used < decimals; ++used) {
        const double scale = std::pow(10.0, used);
        if (std::abs(std::round(value * scale) / scale - value) < std::pow(10.0, -decimals) / 2) {
            return locale.toString(value, 'f', used);
        }
    }
    // Halves go up as a cook rounds them: 6.35 is a little less for the machine.
    const double scale = std::pow(10.0, decimals);
    return locale.toString(std::round(value * scale) / scale, 'f', decimals);
}

/// Fractions that have a character of their own.
QString singleGlyph(std::int64_t num, std::int64_t den) {
    struct Glyph {
        int num, den;
        char16_t character;
    };
    static constexpr std::array<Glyph, 13> glyphs{{{1, 2, u'½'},
                                                   {1, 3, u'⅓'},
                                                   {2, 3, u'⅔'},
                                                   {1, 4, u'¼'},
                                                   {3, 4, u'¾'},
                                                   {1, 5, u'⅕'},
                                                   {2, 5, u'⅖'},
                                                   {3, 5, u'⅗'},
                                                   {4, 5, u'⅘'},
                                                   {1, 8, u'⅛'},
                                                   {3, 8, u'⅜'},
                                                   {5, 8, u'⅝'},
                                                   {7, 8, u'⅞'}}};
    for (const Glyph& glyph : glyphs) {
        if (glyph.num == num && glyph.den == den) {
            return QString(QChar(glyph.character));
        }
    }
    return {};
}

Rational nearestPart(double value, std::int64_t parts) {
    return {std::llround(value * static_cast<double>(parts)), parts};
}

QString unitText(const std::string& unit) {
    const QString key = QString::fromStdString(unit);
    return QCoreApplication::translate("Units of measure", key.toUtf8().constData());
}

/// Metric amounts are read as decimals, kitchen measures as fractions.
bool readAsDecimal(const std::string& unit) {
    static constexpr std::array<const char*, 6> metric{"g", "kg", "mg", "ml", "l", "dl"};
    for (const char* key : metric) {
        if (unit == key) {
            return true;
        }
    }
    return false;
}

}  // namespace

QString durationText(Duration length, const QLocale& locale) {
    const std::int64_t total = std::abs(length.inSeconds());
    const std::array<std::pair<std::int64_t, QString>, 3> parts{
        {{total / 3600, Text::tr("%1 h")},
         {total / 60 % 60, Text::tr("%1 min")},
         {total % 60, Text::tr("%1 s")}}};
    QStringList words;
    for (const auto& [value, pattern] : parts) {
        if (value != 0) {
            words << pattern.arg(locale.toString(static_cast<qlonglong>(value)));
        }
    }
    if (words.isEmpty()) {
        return Text::tr("%1 min").arg(locale.toString(0));
    }
    return (length < Duration() ? locale.negativeSign() : QString()) + words.join(' ');
}

QString temperatureText(Temperature temperature, Units units, const QLocale& locale) {
    const bool us = units == Units::UsCustomary;
    const double value = us ? temperature.inFahrenheit() : temperature.inCelsius();
    return (us ? Text::tr("%1 °F") : Text::tr("%1 °C")).arg(decimalText(value, 1, locale));
}

QString lengthText(Length length, Units units, const QLocale& locale) {
    if (units == Units::UsCustomary) {
        return Text::tr("%1 in").arg(fractionText(nearestPart(length.inInches(), 16), locale));
    }
    const double mm = length.inMillimetres();
    return std::abs(mm) < 10 ? Text::tr("%1 mm").arg(decimalText(mm, 1, locale))
                             : Text::tr("%1 cm").arg(decimalText(mm / 10, 1, locale));
}

QString volumeText(std::int64_t millilitres, Units units, const QLocale& locale) {
    // One US quart is 946.352946 ml (GNU units 2.22).
    constexpr double quart = 946.352946;
    const auto ml = static_cast<double>(millilitres);
    if (units == Units::UsCustomary) {
        return Text::tr("%1 qt").arg(decimalText(ml / quart, 1, locale));
    }
    return millilitres < 1000 ? Text::tr("%1 ml").arg(decimalText(ml, 0, locale))
                              : Text::tr("%1 l").arg(decimalText(ml / 1000, 1, locale));
}

QString fractionText(const Rational& value, const QLocale& locale) {
    const bool negative = value < Rational(0);
    const std::int64_t num = std::abs(value.num());
    const std::int64_t whole = num / value.den();
    const std::int64_t rest = num % value.den();
    const QString sign = negative ? locale.negativeSign() : QString();
    const QString wholeText = locale.toString(static_cast<qlonglong>(whole));
    if (rest == 0) {
        return sign + wholeText;
    }
    if (value.den() > 16) {
        return decimalText(value.toDouble(), 2, locale);
    }
    const QString glyph = singleGlyph(rest, value.den());
    if (!glyph.isEmpty()) {
        return sign + (whole == 0 ? QString() : wholeText) + glyph;
    }
    const QString fraction = locale.toString(static_cast<qlonglong>(rest)) + QChar(0x2044) +
                             locale.toString(static_cast<qlonglong>(value.den()));
    return sign + (whole == 0 ? QString() : wholeText + ' ') + fraction;
}

QString amountText(const Amount& amount, const QLocale& locale) {
    const auto number = [&](const Rational& value) {
        return readAsDecimal(amount.unit) ? decimalText(value.toDouble(), 2, locale)
                                          : fractionText(value, locale);
    };
    QString text = number(amount.low);
    if (amount.high != amount.low) {
        text = Text::tr("%1–%2").arg(text, number(amount.high));
    }
    const bool several = amount.unit == "cup" && amount.high > Rational(1);
    const std::string unit = several ? std::string("cups") : amount.unit;
    return unit.empty() ? text : Text::tr("%1 %2").arg(text, unitText(unit));
}

QString measuredText(const KitchenAmount& amount, const QLocale& locale) {
    const QString text = amountText(amount.amount, locale);
    switch (amount.nearness) {
        case Nearness::Close:
            return text;
        case Nearness::Scant:
            return Text::tr("a scant %1").arg(text);
        case Nearness::Generous:
            return Text::tr("a generous %1").arg(text);
        case Nearness::LessThan:
            return Text::tr("less than %1").arg(text);
    }
    return text;
}

QString weightText(const KnownWeight& weight, Units units, const QLocale& locale) {
    // One avoirdupois ounce is 28.349523125 g (NIST Handbook 44).
    const bool us = units == Units::UsCustomary;
    const double unit = us ? 28.349523125 : 1;
    const auto value = [&](double grams) {
        return Rational(std::llround(std::max(grams / unit, 0.001) * 1000), 1000);
    };
    const Amount exact = {value(weight.low), value(weight.high), us ? "oz" : "g"};
    return amountText(toldAsMeasured(exact).amount, locale);
}

}  // namespace rangeline
