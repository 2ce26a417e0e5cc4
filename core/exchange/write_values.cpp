#include "exchange/write_values.h"

#include "exchange/segment_form.h"
#include "model/quantity_text.h"

namespace rangeline {

Json write(bool value, const Style&) {
    return Json(value);
}

Json write(int value, const Style&) {
    return Json(value);
}

Json write(const std::string& value, const Style&) {
    return Json(value);
}

Json write(Duration value, const Style&) {
    return Json(toText(value));
}

Json write(Instant value, const Style&) {
    return Json(toText(value));
}

Json write(Temperature value, const Style& style) {
    return Json(toText(value, style.units));
}

Json write(TemperatureDelta value, const Style& style) {
    return Json(toText(value, style.units));
}

Json write(Length value, const Style& style) {
    return Json(toText(value, style.units));
}

Json write(const Power& value, const Style&) {
    return Json(toText(value));
}

Json write(const Rational& value, const Style&) {
    return value.den() == 1 ? Json(value.num()) : Json(toText(value));
}

Json write(const Amount& value, const Style&) {
    return Json(toText(value));
}

Json write(const DurationRange& value, const Style& style) {
    if (value.shortest == value.likely && value.likely == value.longest) {
        return write(value.likely, style);
    }
    return Json(Json::Object{{"shortest", write(value.shortest, style)},
                             {"likely", write(value.likely, style)},
                             {"longest", write(value.longest, style)}});
}

Json write(const std::vector<Segment>& value, const Style& style) {
    Json::Array array;
    for (std::size_t i = 0; i < value.size(); ++i) {
        const Segment& segment = value[i];
        const bool usual = usualStretching(value) == i;
        const bool rest = segment.length == Duration() && segment.stretches != usual;
        if (rest && value.size() == 1) {
            return write(segment.attention, style);
        }
        Json length = rest ? Json("rest") : write(segment.length, style);
        Json::Object object{{std::string(wordOf(segment.attention)), std::move(length)}};
        if (segment.stretches && !rest) {
            object.emplace_back("stretches", Json(true));
        }
        array.emplace_back(std::move(object));
    }
    return Json(std::move(array));
}

Json write(const WareSpot& value, const Style&) {
    const std::string number = value.number == 0 ? "" : " " + std::to_string(value.number + 1);
    return Json(value.ware.text + number);
}

Json writePoint(const LinkPoint& value, StepEnd usual) {
    if (value.end == usual) {
        return Json(value.step.text);
    }
    const char* key = value.end == StepEnd::Start ? "start" : "end";
    return Json(Json::Object{{key, Json(value.step.text)}});
}

Json writeVolume(std::int64_t millilitres) {
    return Json(volumeText(millilitres));
}

Json writePercent(int percent) {
    std::string digits = std::to_string(percent / 100);
    if (const int rest = percent % 100; rest != 0) {
        digits += rest < 10 ? ".0" : ".";
        digits += std::to_string(rest % 10 == 0 ? rest / 10 : rest);
    }
    return Json::decimal(std::move(digits));
}

}  // namespace rangeline
