#pragma once
// Single values and lists from JSON nodes. Objects are read by their description; see
// field_reader.h.

#include <QJsonArray>
#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "base/id.h"
#include "exchange/node.h"
#include "exchange/words.h"
#include "model/lesson.h"

namespace rangeline {

void read(const Node& node, bool& value);
void read(const Node& node, int& value);
void read(const Node& node, std::string& value);
void read(const Node& node, Duration& value);
void read(const Node& node, Instant& value);
void read(const Node& node, Temperature& value);
void read(const Node& node, TemperatureDelta& value);
void read(const Node& node, Length& value);
void read(const Node& node, Power& value);
void read(const Node& node, Rational& value);
void read(const Node& node, Amount& value);
/// "12 min", or an object with the three.
void read(const Node& node, DurationRange& value);
/// "hands", or a list of {"hands": "2 min"} where "rest" stands for what the others leave.
void read(const Node& node, std::vector<Segment>& value);
/// "saute-pan" or, for others than the first of them, "saute-pan 2".
void read(const Node& node, WareSpot& value);
/// A step id for the usual end, which is the value's, or {"start": id} or {"end": id}.
void readPoint(const Node& node, LinkPoint& value);
/// "2500 mL".
void readVolume(const Node& node, std::optional<std::int64_t>& value);

template <class Tag>
void read(const Node& node, Id<Tag>& value) {
    value.text = node.text();
}

template <class Enum>
requires std::is_enum_v<Enum>
void read(const Node& node, Enum& value) {
    const std::string text = node.text();
    std::string choices;
    for (const auto& [word, meaning] : Words<Enum>::list) {
        if (text == word) {
            value = meaning;
            return;
        }
        choices += (choices.empty() ? "" : ", ") + std::string(word);
    }
    node.report(FaultCode::BadChoice, {text, choices});
}

template <class T>
void read(const Node& node, std::optional<T>& value) {
    read(node, value.emplace());
}

template <class T>
void read(const Node& node, std::vector<T>& value) {
    const QJsonArray array = node.array();
    value.clear();
    value.reserve(static_cast<std::size_t>(array.size()));
    for (qsizetype i = 0; i < array.size() && !node.failed(); ++i) {
        const Place place = node.place().at(static_cast<std::size_t>(i));
        read(node.with(array.at(i), place), value.emplace_back());
    }
}

}  // namespace rangeline
