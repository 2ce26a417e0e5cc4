#include "recipe/vocabulary.h"

#include <algorithm>

#include "recipe/plain_words.h"
#include "recipe/web_page.h"

namespace rangeline {
namespace {

/// "https://schema.org/Recipe" and "schema:Recipe" are Recipe.
bool namesType(const QJsonValue& name, std::string_view type) {
    const std::string text = name.toString().toStdString();
    const std::size_t end = text.find_last_of("/:#");
    return std::string_view(text).substr(end == std::string::npos ? 0 : end + 1) == type;
}

QString rawText(const QJsonValue& value) {
    if (value.isString()) {
        return value.toString();
    }
    if (value.isDouble()) {
        return QString::number(value.toDouble(), 'g', 15);
    }
    if (value.isArray()) {
        const QJsonArray array = value.toArray();
        return array.isEmpty() ? QString() : rawText(array.first());
    }
    const QJsonObject object = value.toObject();
    for (const char* key : {"@value", "text", "name", "value"}) {
        const QJsonValue inner = object.value(QLatin1String(key));
        if (inner.isString() || inner.isDouble()) {
            return rawText(inner);
        }
    }
    return {};
}

void collect(const QJsonValue& value, std::string_view type, std::size_t most,
             std::vector<QJsonObject>& found) {
    if (found.size() >= most) {
        return;
    }
    if (value.isArray()) {
        for (const QJsonValue& item : value.toArray()) {
            collect(item, type, most, found);
        }
        return;
    }
    if (isOfType(value, type)) {
        found.push_back(value.toObject());
        return;
    }
    const QJsonObject object = value.toObject();
    for (const QJsonValue& member : object) {
        if (member.isObject() || member.isArray()) {
            collect(member, type, most, found);
        }
    }
}

}  // namespace

bool isOfType(const QJsonValue& value, std::string_view type) {
    const std::vector<QJsonValue> names = itemsOf(value.toObject().value(QLatin1String("@type")));
    return std::ranges::any_of(names,
                               [&](const QJsonValue& name) { return namesType(name, type); });
}

std::vector<QJsonValue> itemsOf(const QJsonValue& value) {
    if (value.isUndefined() || value.isNull()) {
        return {};
    }
    if (value.isArray()) {
        const QJsonArray array = value.toArray();
        return {array.begin(), array.end()};
    }
    if (value.isObject() && isOfType(value, "ItemList")) {
        return itemsOf(value.toObject().value(QLatin1String("itemListElement")));
    }
    return {value};
}

std::string linesIn(const QJsonValue& value) {
    return textOfHtml(rawText(value).toStdString());
}

std::string textIn(const QJsonValue& value) {
    return plainLine(linesIn(value));
}

std::vector<QJsonObject> objectsOfType(const QJsonValue& data, std::string_view type,
                                       std::size_t most) {
    std::vector<QJsonObject> found;
    collect(data, type, most, found);
    return found;
}

}  // namespace rangeline
