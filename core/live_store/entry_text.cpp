#include "live_store/entry_text.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QString>
#include <array>

#include "exchange/lesson_file.h"
#include "exchange/part_text.h"

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

// ---- what stands in every line ------------------------------------------------------------------

void write(QJsonObject& object, const ClockAnchor& when) {
    object["boot"] = text(when.reading.boot);
    object["since-boot"] = qint64(when.reading.sinceBoot.count());
    object["utc"] = qint64(when.reading.utc.count());
    object["at"] = qint64(when.at.count());
}

ClockAnchor anchorOf(const QJsonObject& object) {
    return {{textOf(object, "boot"), milliseconds(wholeOf(object, "since-boot")),
             milliseconds(wholeOf(object, "utc"))},
            milliseconds(wholeOf(object, "at"))};
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

PlacementKey keyOf(const QJsonObject& object) {
    const int batch = static_cast<int>(wholeOf(object, "batch"));
    const int group = static_cast<int>(wholeOf(object, "group"));
    if (object.contains("turn-on")) {
        return TurnOnKey{{textOf(object, "turn-on")}, group};
    }
    if (object.contains("wash-after")) {
        return WashKey{{{textOf(object, "wash-after")}, batch, group},
                       static_cast<int>(wholeOf(object, "spot"))};
    }
    return StepKey{{textOf(object, "step")}, batch, group};
}

// ---- one pair a kind of event: what it writes beside its name, and how it is read
// ----------------

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
    event.key = keyOf(object);
    if constexpr (requires { event.by; }) {
        event.by = Duration::seconds(wholeOf(object, "seconds"));
    }
    if constexpr (requires { event.again; }) {
        event.again = Duration::seconds(wholeOf(object, "seconds"));
    }
    if constexpr (requires { event.generation; }) {
        event.generation = static_cast<int>(wholeOf(object, "generation"));
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
    event.by = Duration::seconds(wholeOf(object, "seconds"));
    return event;
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
    auto lesson = readLesson(textOf(object, "lesson"));
    if (wholeOf(object, "rangeline-service") != fileVersion || !lesson.ok()) {
        return std::nullopt;
    }
    return ServiceHead{textOf(object, "id"), wholeOf(object, "item"), std::move(lesson.value()),
                       anchorOf(object)};
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
    return event ? std::optional(Entry{anchorOf(object), *std::move(event)}) : std::nullopt;
}

}  // namespace rangeline::live
