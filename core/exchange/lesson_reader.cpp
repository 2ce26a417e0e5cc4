#include <QJsonDocument>
#include <QTimeZone>
#include <charconv>

#include "exchange/describe_lesson.h"
#include "exchange/field_reader.h"
#include "exchange/json_scan.h"
#include "exchange/lesson_file.h"
#include "model/characters.h"
#include "model/validate.h"

namespace rangeline {
namespace {

constexpr std::size_t deepest = 64;
constexpr int version = 1;

bool onlySpace(std::string_view bytes) {
    return bytes.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

Fault notJson(std::string_view bytes, const QJsonParseError& error) {
    if (error.error == QJsonParseError::DeepNesting) {
        return {FaultCode::TooDeep, {}, {std::to_string(deepest)}};
    }
    auto figures = lineAndColumn(bytes, static_cast<std::size_t>(error.offset));
    figures.push_back(error.errorString().toStdString());
    return {FaultCode::NotJson, {}, std::move(figures)};
}

Result<QJsonDocument, Fault> parse(std::string_view bytes) {
    if (bytes.size() > largestLessonFile) {
        return Fault{FaultCode::TooLarge,
                     {},
                     {std::to_string(bytes.size()), std::to_string(largestLessonFile)}};
    }
    if (onlySpace(bytes)) {
        return Fault{FaultCode::EmptyFile, {}, {}};
    }
    if (bytes.starts_with("\xEF\xBB\xBF")) {
        return Fault{FaultCode::NotJson, {}, {"1", "1", "byte order mark"}};
    }
    QJsonParseError error;
    const auto document = QJsonDocument::fromJson(
        QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())), &error);
    if (error.error != QJsonParseError::NoError) {
        return notJson(bytes, error);
    }
    if (auto fault = scanJson(bytes, deepest)) {
        return *std::move(fault);
    }
    return document;
}

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

/// The key of an entry that names exactly one thing.
std::optional<PlacementKey> keyOf(const PlacementEntry& entry, const Node& node) {
    const int named = (entry.step ? 1 : 0) + (entry.washAfter ? 1 : 0) + (entry.turnOn ? 1 : 0);
    if (named != 1) {
        node.report(named == 0 ? Fault{FaultCode::MissingKey, {}, {"step"}}
                               : Fault{FaultCode::Contradiction, {}, {"step", "washAfter"}});
        return std::nullopt;
    }
    if (entry.step) {
        return StepKey{*entry.step, entry.batch, entry.group};
    }
    if (entry.washAfter) {
        return WashKey{{*entry.washAfter, entry.batch, entry.group}, entry.spot};
    }
    return TurnOnKey{*entry.turnOn, entry.group};
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

Result<Lesson, Fault> readLesson(std::string_view bytes) {
    const auto document = parse(bytes);
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
    if (!QTimeZone(QByteArray::fromStdString(lesson.head.zone)).isValid()) {
        return Fault{FaultCode::BadText, "lesson.zone", {"not a time zone", lesson.head.zone}};
    }
    return lesson;
}

}  // namespace rangeline
