#include "writing/kitchen_fields.h"

#include <QCoreApplication>

#include "writing/field_values.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(KitchenFields)
};

FieldLook look(const QString& title, const QString& wanted, const char* key) {
    FieldLook look{title, wanted};
    look.key = key;
    return look;
}

/// The fault of a number out of range says what the range is.
std::optional<int> numberIn(const QString& text) {
    bool ok = false;
    const int number = text.trimmed().toInt(&ok);
    return ok ? std::optional(number) : std::nullopt;
}

}  // namespace

std::vector<Field<Kitchen>> kitchenFields(Units units) {
    const bool metric = units == Units::Metric;
    return {
        valueField<Kitchen>(
            look(Text::tr("Width of the range"),
                 metric ? Text::tr("a width such as 60 cm") : Text::tr("a width such as 30 in"),
                 "rangeWidth"),
            &Kitchen::rangeWidth, [units](Length width) { return fieldText(width, units); },
            [units](const QString& text) { return lengthIn(text, units); }),
        valueField<Kitchen>(
            look(Text::tr("One cook watches at most"), Text::tr("a number of things, such as 3"),
                 "watchLimit"),
            &Kitchen::watchLimit, [](int limit) { return QString::number(limit); }, numberIn),
        optionalField<Kitchen>(
            look(Text::tr("Temperature of the room"),
                 metric ? Text::tr("nothing, or a temperature such as 24 °C")
                        : Text::tr("nothing, or a temperature such as 75 °F"),
                 "room"),
            &Kitchen::room, [units](Temperature room) { return fieldText(room, units); },
            [units](const QString& text) { return temperatureIn(text, units); }),
    };
}

}  // namespace rangeline
