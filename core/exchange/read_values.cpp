#include "exchange/read_values.h"

#include <charconv>
#include <limits>

#include "exchange/segment_form.h"
#include "model/characters.h"
#include "model/quantity_text.h"

namespace rangeline {
namespace {

/// A text that one of the parsers understands.
template <class T, class Parse>
void readParsed(const Node& node, T& value, Parse parse) {
    const std::string text = node.text();
    if (node.failed()) {
        return;
    }
    const auto parsed = parse(text);
    if (parsed.ok()) {
        value = parsed.value();
    } else {
        node.report(parsed.error());
    }
}

void readSegment(const Node& node, Segment& segment, bool& rest) {
    Keys keys(node);
    bool found = false;
    for (const auto& [word, attention] : Words<Attention>::list) {
        const QJsonValue value = keys.find(word);
        if (value.isUndefined()) {
            continue;
        }
        const Place place = node.place().key(word);
        const Node length = node.with(value, place);
        if (std::exchange(found, true)) {
            length.report(FaultCode::Contradiction, {word, wordOf(segment.attention).data()});
            return;
        }
        segment.attention = attention;
        rest = value.isString() && value.toString() == QLatin1String("rest");
        if (!rest) {
            read(length, segment.length);
        }
    }
    if (!found) {
        node.report(FaultCode::MissingKey, {"hands"});
    }
    if (const QJsonValue value = keys.find("stretches"); !value.isUndefined()) {
        const Place place = node.place().key("stretches");
        read(node.with(value, place), segment.stretches);
    }
    keys.finish();
}

}  // namespace

void read(const Node& node, bool& value) {
    value = node.boolean();
}

void read(const Node& node, int& value) {
    const std::int64_t number = node.whole();
    if (number < std::numeric_limits<int>::min() || number > std::numeric_limits<int>::max()) {
        node.report(FaultCode::BadNumber, {std::to_string(number), "a whole number"});
        return;
    }
    value = static_cast<int>(number);
}

void read(const Node& node, std::string& value) {
    value = node.text();
}

void read(const Node& node, Duration& value) {
    readParsed(node, value, parseDuration);
}

void read(const Node& node, Instant& value) {
    Duration fromServing;
    read(node, fromServing);
    value = Instant::serving() + fromServing;
}

void read(const Node& node, Temperature& value) {
    readParsed(node, value, parseTemperature);
}

void read(const Node& node, TemperatureDelta& value) {
    readParsed(node, value, parseTemperatureDelta);
}

void read(const Node& node, Length& value) {
    readParsed(node, value, parseLength);
}

void read(const Node& node, Power& value) {
    readParsed(node, value, parsePower);
}

void read(const Node& node, Rational& value) {
    if (node.isNumber()) {
        value = Rational(node.hundredths(), 100);
    } else {
        readParsed(node, value, parseRational);
    }
}

void read(const Node& node, Amount& value) {
    if (node.isNumber()) {
        read(node, value.low);
        value.high = value.low;
    } else {
        readParsed(node, value, parseAmount);
    }
}

void read(const Node& node, DurationRange& value) {
    if (node.isText()) {
        read(node, value.likely);
        value.shortest = value.longest = value.likely;
        return;
    }
    Keys keys(node);
    for (const auto& [key, member] : {std::pair{"shortest", &DurationRange::shortest},
                                      std::pair{"likely", &DurationRange::likely},
                                      std::pair{"longest", &DurationRange::longest}}) {
        const QJsonValue found = keys.need(key);
        const Place place = node.place().key(key);
        read(node.with(found, place), value.*member);
    }
    keys.finish();
}

void read(const Node& node, std::vector<Segment>& value) {
    if (node.isText()) {
        read(node, value.emplace_back().attention);
        return;
    }
    const QJsonArray array = node.array();
    std::optional<std::size_t> rest;
    for (qsizetype i = 0; i < array.size() && !node.failed(); ++i) {
        const auto index = static_cast<std::size_t>(i);
        const Place place = node.place().at(index);
        bool takesRest = false;
        readSegment(node.with(array.at(i), place), value.emplace_back(), takesRest);
        if (takesRest && rest) {
            node.with(array.at(i), place).report(FaultCode::Contradiction, {"rest", "rest"});
        }
        rest = takesRest ? index : rest;
    }
    if (rest && !node.failed() && usualStretching(value) != *rest) {
        value[*rest].stretches = true;
    }
}

void read(const Node& node, WareSpot& value) {
    const std::string text = node.text();
    const std::size_t space = text.find(' ');
    value.ware.text = text.substr(0, space);
    if (space == std::string::npos) {
        return;
    }
    int number = 0;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data() + space + 1, end, number);
    if (error != std::errc() || stop != end || number < 1) {
        node.report(FaultCode::BadText, {"not-a-ware", excerpt(text)});
        return;
    }
    value.number = number - 1;
}

void readPoint(const Node& node, LinkPoint& value) {
    if (node.isText()) {
        read(node, value.step);
        return;
    }
    Keys keys(node);
    const QJsonValue start = keys.find("start");
    const QJsonValue end = keys.find("end");
    if (start.isUndefined() == end.isUndefined()) {
        node.report(start.isUndefined() ? FaultCode::MissingKey : FaultCode::Contradiction,
                    {"start", "end"});
    }
    value.end = start.isUndefined() ? StepEnd::End : StepEnd::Start;
    const Place place = node.place().key(start.isUndefined() ? "end" : "start");
    read(node.with(start.isUndefined() ? end : start, place), value.step);
    keys.finish();
}

void readVolume(const Node& node, std::optional<std::int64_t>& value) {
    readParsed(node, value.emplace(), parseVolume);
}

}  // namespace rangeline
