#pragma once
// Values of linked data in the forms that schema.org allows: one or several, bare or as an object.

#include <QJsonArray>
#include <QJsonObject>
#include <QJsonValue>
#include <string>
#include <string_view>
#include <vector>

namespace rangeline {

/// Whether the value is an object of that type ("Recipe"), alone or among others, with or without
/// the vocabulary's address in front.
bool isOfType(const QJsonValue& value, std::string_view type);

/// The items of an array or of an ItemList; a value alone as the only item; none of nothing.
std::vector<QJsonValue> itemsOf(const QJsonValue& value);

/// The first text in it: itself, a number, an object's @value, name or text. Plain (plainLine),
/// without HTML. Empty where there is none.
std::string textIn(const QJsonValue& value);

/// The same with its line ends.
std::string linesIn(const QJsonValue& value);

/// Every object of that type in the data, however deep, in order; at most `most`.
std::vector<QJsonObject> objectsOfType(const QJsonValue& data, std::string_view type,
                                       std::size_t most);

}  // namespace rangeline
