#include "log/log_entries.h"

#include <algorithm>

#include "model/expand.h"
#include "text/quantities.h"

namespace rangeline {

std::vector<LogEntry> logEntries(const Lesson& lesson, std::optional<ItemId> item,
                                 const std::vector<live::Taken>& taken) {
    const Clock clock(lesson.head, QLocale::c());
    const Expanded expanded = expand(lesson);
    std::vector<LogEntry> entries;
    for (const live::Taken& each : taken) {
        const int task = expanded.taskOf(each.key);
        if (task < 0) {
            continue;
        }
        const Serving& serving = lesson.servings[static_cast<std::size_t>(
            expanded.tasks[static_cast<std::size_t>(task)].serving)];
        const auto placed = lesson.placements.find(each.key);
        const bool hands = placed != lesson.placements.end() && !placed->second.hands.empty();
        LogEntry entry;
        entry.day = clock.moment(each.started).date().toString(Qt::ISODate).toStdString();
        entry.lesson = item;
        entry.dish = serving.dish.id.text;
        entry.step = each.key.step.text;
        entry.cook = hands ? placed->second.hands.front().cook.text : std::string();
        entry.covers = serving.covers;
        entry.planned = each.planned;
        entry.took = each.ended - each.started;
        entries.push_back(std::move(entry));
    }
    return entries;
}

Result<Logged, BookFault> logClass(Book& book, const std::string& service,
                                   const std::vector<LogEntry>& entries, bool another) {
    const auto known = cookingLog(book);
    if (!known.ok()) {
        return known.error();
    }
    const auto isKnown = [&](const LogEntry& entry) {
        return std::ranges::any_of(known.value(), [&](const LogEntry& other) {
            return other.lesson == entry.lesson && other.day == entry.day &&
                   other.dish == entry.dish && other.step == entry.step;
        });
    };
    if (!another && std::ranges::any_of(entries, isKnown)) {
        return Logged::AlreadyThere;
    }
    if (auto fault = addServiceToLog(book, service, entries)) {
        return *std::move(fault);
    }
    return Logged::Yes;
}

}  // namespace rangeline
