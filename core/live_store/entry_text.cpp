#include "live_store/entry_text.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QString>
#include <array>

#include "exchange/lesson_file.h"
#include "exchange/part_text.h"
#include "model/validate_values.h"

namespace rangeline::live {
namespace {

constexpr int fileVersion = 1;

QString text(const std::string& from) {
    return QString::fromStdString(from);
}

std::string textOf(const QJsonObject& object, const char* name) {
    return object.value(QLatin1String(name)).toString().toStdString();
}

std::int64_t wholeOf(const QJsonObject& object, const char* name) {
    return object.value(QLatin1String(name)).toInteger();
}

/// None where it is further from zero than a service can be, or no whole number.
std::optional<std::int64_t> wholeWithin(const QJsonObject& object, const char* name,
                                        std::int64_t most) {
    const QJsonValue value = object.value(QLatin1String(name));
    const std::int64_t whole = value.toInteger();
    const bool sane = value.isUndefined() || value.isDouble();
    return sane && -most <= whole && whole <= most ? std::optional(whole) : std::nullopt;
}

std::optional<Duration> secondsOf(const QJsonObject& object) {
    const auto seconds = wholeWithin(object, "seconds", longestDuration.inSeconds());
    return seconds ? std::optional(Duration::seconds(*seconds)) : std::nullopt;
}

// ---- what stands in every line ---------------------------------------------------------------

void write(QJsonObject& object, const ClockAnchor& when) {
    object["boot"] = text(when.reading.boot);
    object["since-boot"] = qint64(when.reading.sinceBoot.count());
    object["utc"] = qint64(when.reading.utc.count());
    object["at"] = qint64(when.at.count());
}

std::optional<ClockAnchor> anchorOf(const QJsonObject& object) {
    constexpr std::int64_t most = 1'000'000'000'000'000;  // thousands of years
    const auto sinceBoot = wholeWithin(object, "since-boot", most);
    const auto utc = wholeWithin(object, "utc", most);
    const auto at = wholeWithin(object, "at", most);
    if (!sinceBoot || !utc || !at) {
        return std::nullopt;
    }
    return ClockAnchor{{textOf(object, "boot"), milliseconds(*sinceBoot), milliseconds(*utc)},
                       milliseconds(*at)};
}

void write(QJsonObject& object, const PlacementKey& key) {
    if (const auto* step = std::get_if<StepKey>(&key)) {
        object["step"] = text(step->step.text);
        object["batch"] = step->batch;
        object["group"] = step->group;
    } else if (const auto* wash = std::get_if<WashKey>(&key)) {
        object["wash-after"] = text(wash->after.step.text);
        object["batch"] = wash->after.batch;
        object["group"] = wash->after.group;
        object["spot"] = wash->spot;
    } else {
        const auto& turnOn = std::get<TurnOnKey>(key);
        object["turn-on"] = text(turnOn.oven.text);
        object["group"] = turnOn.group;
    }
}

std::optional<PlacementKey> keyOf(const QJsonObject& object) {
    constexpr std::int64_t most = 1'000'000;
    const auto batch = wholeWithin(object, "batch", most);
    const auto group = wholeWithin(object, "group", most);
    const auto spot = wholeWithin(object, "spot", most);
    if (!batch || !group || !spot) {
        return std::nullopt;
    }
    if (object.contains("turn-on")) {
        return TurnOnKey{{textOf(object, "turn-on")}, static_cast<int>(*group)};
    }
    const StepKey step{{textOf(object, object.contains("wash-after") ? "wash-after" : "step")},
                       static_cast<int>(*batch),
                       static_cast<int>(*group)};
    return object.contains("wash-after") ? PlacementKey(WashKey{step, static_cast<int>(*spot)})
                                         : PlacementKey(step);
}

// ---- a pair for each kind of event: what it writes beside its name, and how it is read --------

template <class Keyed>
void writeMore(QJsonObject& object, const Keyed& event) {
    write(object, event.key);
    if constexpr (requires { event.by; }) {
        object["seconds"] = qint64(event.by.inSeconds());
    }
    if constexpr (requires { event.again; }) {
        object["seconds"] = qint64(event.again.inSeconds());
    }
    if constexpr (requires { event.generation; }) {
        object["generation"] = event.generation;
    }
}
void writeMore(QJsonObject& object, const PlanReplaced& event) {
    object["edits"] = text(writePart(EditsPart{event.change}));
}
void writeMore(QJsonObject& object, const ServedLater& event) {
    object["seconds"] = qint64(event.by.inSeconds());
}
void writeMore(QJsonObject&, const ClockSet&) {}
void writeMore(QJsonObject&, const ClockNoted&) {}
void writeMore(QJsonObject&, const Ended&) {}

template <class Keyed>
std::optional<Event> read(const QJsonObject& object, Keyed event) {
    const auto key = keyOf(object);
    const auto seconds = secondsOf(object);
    const auto generation = wholeWithin(object, "generation", 1'000'000'000);
    if (!key || !seconds || !generation) {
        return std::nullopt;
    }
    event.key = *key;
    if constexpr (requires { event.by; }) {
        event.by = *seconds;
    }
    if constexpr (requires { event.again; }) {
        event.again = *seconds;
    }
    if constexpr (requires { event.generation; }) {
        event.generation = static_cast<int>(*generation);
    }
    return event;
}
std::optional<Event> read(const QJsonObject& object, PlanReplaced event) {
    const auto edits = readPart<EditsPart>(textOf(object, "edits"));
    if (!edits.ok() || edits.value().size() != 1 ||
        !std::holds_alternative<SetPlacements>(edits.value().front())) {
        return std::nullopt;
    }
    event.change = std::get<SetPlacements>(edits.value().front());
    return event;
}
std::optional<Event> read(const QJsonObject& object, ServedLater event) {
    const auto by = secondsOf(object);
    event.by = by.value_or(Duration());
    return by ? std::optional<Event>(event) : std::nullopt;
}
std::optional<Event> read(const QJsonObject&, ClockSet event) {
    return event;
}
std::optional<Event> read(const QJsonObject&, ClockNoted event) {
    return event;
}
std::optional<Event> read(const QJsonObject&, Ended event) {
    return event;
}

/// In the order of Event.
constexpr std::array names{"started",      "done",        "more-time",     "not-ready",
                           "skipped",      "alarm-fired", "alarm-stopped", "plan-replaced",
                           "served-later", "clock-set",   "clock-noted",   "ended"};
static_assert(names.size() == std::variant_size_v<Event>);

template <std::size_t i = 0>
std::optional<Event> readNamed(const QString& name, const QJsonObject& object) {
    if constexpr (i < names.size()) {
        return name == QLatin1String(names[i])
                   ? read(object, std::variant_alternative_t<i, Event>())
                   : readNamed<i + 1>(name, object);
    } else {
        return std::nullopt;
    }
}

QJsonObject objectOf(const QByteArray& bytes) {
    return QJsonDocument::fromJson(bytes).object();
}

QByteArray bytesOf(const QJsonObject& object) {
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

}  // namespace

QByteArray headText(const ServiceHead& head) {
    QJsonObject object;
    object["rangeline-service"] = fileVersion;
    object["id"] = text(head.id);
    object["item"] = qint64(head.item);
    object["lesson"] = text(writeLesson(head.lesson));
    write(object, head.begun);
    return bytesOf(object);
}

std::optional<ServiceHead> readHead(const QByteArray& bytes) {
    const QJsonObject object = objectOf(bytes);
    auto lesson = readKeptLesson(textOf(object, "lesson"));
    const auto begun = anchorOf(object);
    if (wholeOf(object, "rangeline-service") != fileVersion || !lesson.ok() || !begun) {
        return std::nullopt;
    }
    return ServiceHead{textOf(object, "id"), wholeOf(object, "item"), std::move(lesson.value()),
                       *begun};
}

QByteArray entryText(const Entry& entry) {
    QJsonObject object;
    object["event"] = QLatin1String(names[entry.event.index()]);
    write(object, entry.when);
    std::visit([&](const auto& event) { writeMore(object, event); }, entry.event);
    return bytesOf(object);
}

std::optional<Entry> readEntry(const QByteArray& bytes) {
    const QJsonObject object = objectOf(bytes);
    auto event = readNamed(object.value("event").toString(), object);
    const auto when = anchorOf(object);
    return event && when ? std::optional(Entry{*when, *std::move(event)}) : std::nullopt;
}

}  // namespace rangeline::live
