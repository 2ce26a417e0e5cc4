#include "cookalong/service_head.h"

#include <QTimeZone>
#include <QUuid>
#include <algorithm>
#include <chrono>

#include "live/taken.h"
#include "text/quantities.h"

namespace rangeline {
namespace {

QTimeZone zoneOf(const Lesson& lesson) {
    const QTimeZone zone(QByteArray::fromStdString(lesson.head.zone));
    return zone.isValid() ? zone : QTimeZone::utc();
}

Instant firstStart(const Lesson& lesson) {
    Instant first = Instant::serving();
    for (const auto& [key, placement] : lesson.placements) {
        first = std::min(first, placement.start);
    }
    return first;
}

}  // namespace

QDateTime usualServing(const Lesson& lesson, const QDateTime& now) {
    constexpr qint64 halfADay = 12 * 3600;
    const QDateTime planned = Clock(lesson.head, QLocale::c()).moment(Instant::serving());
    const qint64 needed = -firstStart(lesson).inSeconds();
    const qint64 left = now.secsTo(planned);
    if (left >= needed && left <= std::max(needed, halfADay)) {
        return planned;
    }
    const QDateTime soon = now.addSecs(needed + 59).toTimeZone(zoneOf(lesson));
    return soon.addMSecs(-(soon.time().second() * 1000 + soon.time().msec()));
}

live::ServiceHead serviceHead(Lesson lesson, std::int64_t item, const QDateTime& serving,
                              const live::ClockSource& clock) {
    const QDateTime local = serving.toTimeZone(zoneOf(lesson));
    lesson.head.servingTime = local.toString(QStringLiteral("yyyy-MM-dd'T'HH:mm")).toStdString();
    live::ServiceHead head{QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString(),
                           item,
                           std::move(lesson),
                           {clock.read(), {}}};
    head.begun.at = head.begun.reading.utc - live::milliseconds(serving.toMSecsSinceEpoch());
    return head;
}

std::vector<LogEntry> logOf(const live::ServiceHead& head, const live::Service& service) {
    const Clock clock(head.lesson.head, QLocale::c());
    std::vector<LogEntry> entries;
    for (const live::Taken& taken : live::takenBy(head.lesson, service)) {
        const Task& task = service.index()
                               .expanded()
                               .tasks[static_cast<std::size_t>(service.index().nodeOf(taken.key))];
        const Serving& serving = head.lesson.servings[static_cast<std::size_t>(task.serving)];
        const auto& hands = service.lesson().placements.at(taken.key).hands;
        LogEntry entry;
        entry.day = clock.moment(taken.started).date().toString(Qt::ISODate).toStdString();
        entry.lesson = head.item > 0 ? std::optional(ItemId{head.item}) : std::nullopt;
        entry.dish = serving.dish.id.text;
        entry.step = taken.key.step.text;
        entry.cook = hands.empty() ? std::string() : hands.front().cook.text;
        entry.covers = serving.covers;
        entry.planned = taken.planned;
        entry.took = taken.ended - taken.started;
        entries.push_back(std::move(entry));
    }
    return entries;
}

}  // namespace rangeline
