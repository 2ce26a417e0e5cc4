#pragma once
// Single values and lists as JSON. Objects are written by their description; see field_writer.h.

#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "base/id.h"
#include "exchange/json_out.h"
#include "exchange/words.h"
#include "model/lesson.h"

namespace rangeline {

/// How the whole file is written.
struct Style {
    Units units = Units::UsCustomary;
};

Json write(bool value, const Style& style);
Json write(int value, const Style& style);
Json write(const std::string& value, const Style& style);
Json write(Duration value, const Style& style);
Json write(Instant value, const Style& style);
Json write(Temperature value, const Style& style);
Json write(TemperatureDelta value, const Style& style);
Json write(Length value, const Style& style);
Json write(const Power& value, const Style& style);
Json write(const Rational& value, const Style& style);
Json write(const Amount& value, const Style& style);
Json write(const DurationRange& value, const Style& style);
Json write(const std::vector<Segment>& value, const Style& style);
Json write(const WareSpot& value, const Style& style);
/// Just the id for the usual end.
Json writePoint(const LinkPoint& value, StepEnd usual);
/// "2500 mL".
Json writeVolume(std::int64_t millilitres);
/// 125 is 1.25.
Json writePercent(int percent);

template <class Tag>
Json write(const Id<Tag>& value, const Style&) {
    return Json(value.text);
}

template <class Enum>
requires std::is_enum_v<Enum> Json write(Enum value, const Style&) {
    return Json(wordOf(value));
}

template <class T>
Json write(const std::optional<T>& value, const Style& style) {
    return write(*value, style);
}

template <class T>
Json write(const std::vector<T>& value, const Style& style) {
    Json::Array array;
    array.reserve(value.size());
    for (const T& item : value) {
        array.push_back(write(item, style));
    }
    return Json(std::move(array));
}

}  // namespace rangeline
