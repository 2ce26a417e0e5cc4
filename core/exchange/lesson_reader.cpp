#include <QJsonDocument>
#include <QTimeZone>
#include <charconv>

#include "exchange/describe_lesson.h"
#include "exchange/field_reader.h"
#include "exchange/lesson_file.h"
#include "exchange/parse_json.h"
#include "exchange/placement_entry.h"
#include "model/characters.h"
#include "model/validate.h"

namespace rangeline {
namespace {

constexpr int version = 1;

void readKind(const Node& top, Keys& keys) {
    const QJsonValue kind = keys.find("rangeline");
    if (kind.toString() != QLatin1String("lesson")) {
        top.report(FaultCode::NotALesson, {});
        return;
    }
    const QJsonValue found = keys.need("version");
    const Place place = top.place().key("version");
    const Node node = top.with(found, place);
    if (const std::int64_t number = node.whole(); number != version) {
        node.report(FaultCode::WrongVersion, {std::to_string(number), std::to_string(version)});
    }
}

/// Fills the placements and returns their keys in the order of the file.
std::vector<PlacementKey> takePlacements(const std::vector<PlacementEntry>& entries,
                                         const Node& list, Placements& placements) {
    std::vector<PlacementKey> order;
    for (std::size_t i = 0; i < entries.size() && !list.failed(); ++i) {
        const Place place = list.place().at(i);
        const Node node = list.with({}, place);
        if (const auto key = keyOf(entries[i], node)) {
            if (!placements.emplace(*key, entries[i]).second) {
                const PlacementEntry& e = entries[i];
                const std::string id = e.step     ? e.step->text
                                       : e.turnOn ? e.turnOn->text
                                                  : e.washAfter->text;
                node.report(FaultCode::DuplicateId, {excerpt(id)});
            }
            order.push_back(*key);
        }
    }
    return order;
}

template <class T>
void member(const Node& top, const char* key, const QJsonValue& value, T& object) {
    if (!value.isUndefined() && !top.failed()) {
        const Place place = top.place().key(key);
        read(top.with(value, place), object);
    }
}

/// validate() counts placements in the order of their keys, a file as it was written.
void placeInFile(Fault& fault, const Placements& placements,
                 const std::vector<PlacementKey>& order) {
    constexpr std::string_view list = "placements[";
    if (!fault.place.starts_with(list)) {
        return;
    }
    std::size_t index = 0;
    const char* digits = fault.place.data() + list.size();
    const char* end = std::from_chars(digits, fault.place.data() + fault.place.size(), index).ptr;
    const auto item = std::next(placements.begin(), static_cast<std::ptrdiff_t>(index));
    const auto inFile = std::ranges::find(order, item->first) - order.begin();
    fault.place = std::string(list) + std::to_string(inFile) + end;
}

}  // namespace

Result<Lesson, Fault> readKeptLesson(std::string_view bytes) {
    const auto document = parseJson(bytes);
    if (!document.ok()) {
        return document.error();
    }
    if (!document.value().isObject()) {
        return Fault{FaultCode::NotALesson, {}, {}};
    }
    FirstFault faults;
    const Place file;
    const Node top(document.value().object(), file, faults);
    Keys keys(top);
    readKind(top, keys);
    Lesson lesson;
    std::vector<PlacementEntry> entries;
    member(top, "lesson", keys.need("lesson"), lesson.head);
    member(top, "kitchen", keys.need("kitchen"), lesson.kitchen);
    member(top, "servings", keys.need("servings"), lesson.servings);
    member(top, "choices", keys.find("choices"), lesson.choices);
    member(top, "placements", keys.find("placements"), entries);
    keys.finish();
    const Place list = file.key("placements");
    const auto order = takePlacements(entries, top.with({}, list), lesson.placements);
    if (faults.fault) {
        return *std::move(faults.fault);
    }
    if (auto wrong = validate(lesson, 1); !wrong.empty()) {
        placeInFile(wrong.front(), lesson.placements, order);
        return std::move(wrong.front());
    }
    return lesson;
}

Result<Lesson, Fault> readLesson(std::string_view bytes) {
    auto lesson = readKeptLesson(bytes);
    if (lesson.ok() && !QTimeZone(QByteArray::fromStdString(lesson.value().head.zone)).isValid()) {
        return Fault{
            FaultCode::BadText, "lesson.zone", {"not-a-time-zone", lesson.value().head.zone}};
    }
    return lesson;
}

}  // namespace rangeline
