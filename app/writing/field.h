#pragma once
// What can be written of a thing, each as a line of text: the one description that forms and tables
// are made of.

#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace rangeline {

struct FieldLook {
    QString title;
    QString wanted{};       ///< what can be written there, for the sentence when it is not
    QStringList choices{};  ///< to choose from
    bool yesNo = false;     ///< a box to tick; its text is yesText() or empty
    int width = 12;         ///< in a table, in letters
    const char* key = "";   ///< what faults call it; see field_keys.h
};

template <class T>
struct Field {
    FieldLook look;
    std::function<QString(const T&)> read;
    /// Whether the text was understood; if not, the thing stays as it is.
    std::function<bool(T&, const QString&)> write;
};

/// What a ticked box reads.
QString yesText();

/// A text of the thing.
template <class T>
Field<T> textField(FieldLook look, std::string T::*member) {
    return {std::move(look),
            [member](const T& thing) { return QString::fromStdString(thing.*member); },
            [member](T& thing, const QString& text) {
                thing.*member = text.trimmed().toStdString();
                return true;
            }};
}

template <class T, class Read, class Write>
Field<T> yesNoField(const QString& title, Read read, Write write) {
    FieldLook look{title};
    look.yesNo = true;
    look.choices = {yesText()};
    return {std::move(look), [read](const T& thing) { return read(thing) ? yesText() : QString(); },
            [write](T& thing, const QString& text) {
                write(thing, !text.trimmed().isEmpty());
                return true;
            }};
}

template <class T>
Field<T> yesNoField(const QString& title, bool T::*member) {
    return yesNoField<T>(
        title, [member](const T& thing) { return thing.*member; },
        [member](T& thing, bool yes) { thing.*member = yes; });
}

/// A value that a function reads from text; an empty text is not understood.
template <class T, class Value, class Show, class Parse>
Field<T> valueField(FieldLook look, Value T::*member, Show show, Parse parse) {
    return {std::move(look), [member, show](const T& thing) { return show(thing.*member); },
            [member, parse](T& thing, const QString& text) {
                const auto value = parse(text);
                if (value) {
                    thing.*member = *value;
                }
                return value.has_value();
            }};
}

/// One that may be left empty.
template <class T, class Value, class Show, class Parse>
Field<T> optionalField(FieldLook look, std::optional<Value> T::*member, Show show, Parse parse) {
    return {std::move(look),
            [member, show](const T& thing) {
                return thing.*member ? show(*(thing.*member)) : QString();
            },
            [member, parse](T& thing, const QString& text) {
                if (text.trimmed().isEmpty()) {
                    thing.*member = std::nullopt;
                    return true;
                }
                const auto value = parse(text);
                if (value) {
                    thing.*member = *value;
                }
                return value.has_value();
            }};
}

}  // namespace rangeline
