#include "book/rows.h"

#include <algorithm>

#include "book/seals.h"
#include "exchange/part_text.h"

namespace rangeline {
namespace {

std::string placeOf(ItemId id) {
    return "item " + std::to_string(id.number);
}

void reportBad(Connection& connection, ItemId id, std::optional<Fault> fault) {
    if (fault) {
        connection.report({BookFaultCode::BadValue, {placeOf(id)}, std::move(fault)});
    }
}

template <class Part>
Part readText(Connection& connection, ItemId id, const std::string& text) {
    auto part = connection.failed() ? Result<Part, Fault>(Part()) : readPart<Part>(text);
    if (!part.ok()) {
        reportBad(connection, id, part.error());
        return {};
    }
    return std::move(part.value());
}

/// The text in the only row of a query.
template <class Part>
Part readContent(Connection& connection, ItemId id, const char* sql) {
    Statement row(connection, sql);
    if (!row.with(id.number).next()) {
        connection.report({BookFaultCode::NoSuchItem, {std::to_string(id.number)}, {}});
        return {};
    }
    return readText<Part>(connection, id, row.text(0));
}

/// The columns that find a placement again.
struct KeyColumns {
    int kind = 0;
    std::string subject;
    int batch = 0, station = 0, spot = 0;

    friend bool operator==(const KeyColumns&, const KeyColumns&) = default;
};

KeyColumns columnsOf(const PlacementKey& key) {
    const int kind = static_cast<int>(key.index());
    if (const auto* step = std::get_if<StepKey>(&key)) {
        return {kind, step->step.text, step->batch, step->group, 0};
    }
    if (const auto* wash = std::get_if<WashKey>(&key)) {
        return {kind, wash->after.step.text, wash->after.batch, wash->after.group, wash->spot};
    }
    const auto& on = std::get<TurnOnKey>(key);
    return {kind, on.oven.text, 0, on.group, 0};
}

void writePlacement(Connection& connection, ItemId id, const PlacementKey& key,
                    const Placement& placement) {
    const KeyColumns at = columnsOf(key);
    Statement(connection,
              "INSERT OR REPLACE INTO placements(lesson, kind, subject, batch, station, spot, "
              "content) VALUES(?, ?, ?, ?, ?, ?, ?)")
        .with(id.number, at.kind, at.subject, at.batch, at.station, at.spot,
              writePart(PlacementPart(key, placement)))
        .run();
}

void removePlacement(Connection& connection, ItemId id, const PlacementKey& key) {
    const KeyColumns at = columnsOf(key);
    Statement(connection,
              "DELETE FROM placements WHERE lesson = ? AND kind = ? AND subject = ? AND batch = ? "
              "AND station = ? AND spot = ?")
        .with(id.number, at.kind, at.subject, at.batch, at.station, at.spot)
        .run();
}

/// Where a serving's dish came from; kept by the dish's own id when the servings change.
struct Origin {
    std::string dish;
    std::int64_t item = 0;
    QByteArray seen;
};

std::vector<Origin> originsOf(Connection& connection, ItemId id) {
    std::vector<Origin> origins;
    Statement rows(
        connection,
        "SELECT dish, origin, seen FROM servings WHERE lesson = ? AND origin IS NOT NULL");
    rows.with(id.number);
    while (rows.next()) {
        origins.push_back(
            {readText<Dish>(connection, id, rows.text(0)).id.text, rows.whole(1), rows.bytes(2)});
    }
    return origins;
}

/// What the lesson has taken over is what it has seen of the origin.
QByteArray seenNow(Connection& connection, const char* sql, std::int64_t item,
                   const std::string& text, const QByteArray& before) {
    Statement row(connection, sql);
    return row.with(item).next() && row.text(0) == text ? sealOf(text) : before;
}

void writeServings(Connection& connection, ItemId id, const std::vector<Serving>& servings) {
    const auto origins = originsOf(connection, id);
    Statement(connection, "DELETE FROM servings WHERE lesson = ?").with(id.number).run();
    for (std::size_t i = 0; i < servings.size(); ++i) {
        const Serving& serving = servings[i];
        const std::string text = writePart(serving.dish);
        const auto origin = std::ranges::find(origins, serving.dish.id.text, &Origin::dish);
        std::optional<std::int64_t> item;
        std::optional<QByteArray> seen;
        if (origin != origins.end()) {
            item = origin->item;
            seen = seenNow(connection, "SELECT content FROM dishes WHERE id = ?", origin->item,
                           text, origin->seen);
        }
        Statement(connection,
                  "INSERT INTO servings(lesson, position, covers, shift, dish, origin, seen) "
                  "VALUES(?, ?, ?, ?, ?, ?, ?)")
            .with(id.number, static_cast<std::int64_t>(i), serving.covers,
                  serving.offset.inSeconds(), text, item, seen)
            .run();
    }
}

void writeLessonKitchen(Connection& connection, ItemId id, const Kitchen& kitchen) {
    const std::string text = writePart(kitchen);
    Statement row(connection,
                  "SELECT origin, seen FROM lessons WHERE id = ? AND origin IS NOT NULL");
    std::optional<QByteArray> seen;
    if (row.with(id.number).next()) {
        seen = seenNow(connection, "SELECT content FROM kitchens WHERE id = ?", row.whole(0), text,
                       row.bytes(1));
    }
    Statement(connection, "UPDATE lessons SET kitchen = ?, seen = ? WHERE id = ?")
        .with(text, seen, id.number)
        .run();
}

struct WriteEdited {
    Connection& connection;
    ItemId id;
    const Lesson& lesson;

    void operator()(const SetPlacements& edit) const {
        for (const PlacementChange& change : edit.changes) {
            const auto now = lesson.placements.find(change.key);
            if (now == lesson.placements.end()) {
                removePlacement(connection, id, change.key);
            } else {
                writePlacement(connection, id, now->first, now->second);
            }
        }
    }
    void operator()(const SetHead&) const {
        Statement(connection, "UPDATE lessons SET head = ? WHERE id = ?")
            .with(writePart(lesson.head), id.number)
            .run();
        updateName(connection, id, lesson.head.name);
    }
    void operator()(const SetKitchen&) const { writeLessonKitchen(connection, id, lesson.kitchen); }
    void operator()(const SetServings&) const { writeServings(connection, id, lesson.servings); }
    void operator()(const SetChoices&) const {
        Statement(connection, "UPDATE lessons SET choices = ? WHERE id = ?")
            .with(writePart(lesson.choices), id.number)
            .run();
    }
};

void readServings(Connection& connection, ItemId id, Lesson& lesson) {
    Statement rows(connection,
                   "SELECT covers, shift, dish FROM servings WHERE lesson = ? ORDER BY position");
    rows.with(id.number);
    while (rows.next()) {
        lesson.servings.push_back({readText<Dish>(connection, id, rows.text(2)),
                                   static_cast<int>(rows.whole(0)),
                                   Duration::seconds(rows.whole(1))});
    }
}

void readPlacements(Connection& connection, ItemId id, Lesson& lesson) {
    Statement rows(connection,
                   "SELECT kind, subject, batch, station, spot, content FROM placements "
                   "WHERE lesson = ?");
    rows.with(id.number);
    while (rows.next()) {
        auto part = readText<PlacementPart>(connection, id, rows.text(5));
        const KeyColumns found{static_cast<int>(rows.whole(0)), rows.text(1),
                               static_cast<int>(rows.whole(2)), static_cast<int>(rows.whole(3)),
                               static_cast<int>(rows.whole(4))};
        if (found != columnsOf(part.first)) {
            reportBad(connection, id, Fault{FaultCode::Contradiction, {}, {"subject", "content"}});
        }
        lesson.placements.insert(std::move(part));
    }
}

}  // namespace

ItemId insertItem(Connection& connection, ItemKind kind, const std::string& name) {
    Statement(connection,
              "INSERT INTO items(kind, name, state, seal) VALUES(?, ?, 0, zeroblob(32))")
        .with(static_cast<int>(kind), name)
        .run();
    return {connection.number("SELECT last_insert_rowid()")};
}

void updateName(Connection& connection, ItemId id, const std::string& name) {
    Statement(connection, "UPDATE items SET name = ? WHERE id = ?").with(name, id.number).run();
}

Kitchen readKitchenRow(Connection& connection, ItemId id) {
    auto kitchen =
        readContent<Kitchen>(connection, id, "SELECT content FROM kitchens WHERE id = ?");
    if (!connection.failed()) {
        reportBad(connection, id, judgeKitchen(kitchen));
    }
    return kitchen;
}

Dish readDishRow(Connection& connection, ItemId id) {
    auto dish = readContent<Dish>(connection, id, "SELECT content FROM dishes WHERE id = ?");
    if (!connection.failed()) {
        reportBad(connection, id, judgeDish(dish));
    }
    return dish;
}

Lesson readLessonRows(Connection& connection, ItemId id) {
    Lesson lesson;
    lesson.head = readContent<Head>(connection, id, "SELECT head FROM lessons WHERE id = ?");
    lesson.choices =
        readContent<Choices>(connection, id, "SELECT choices FROM lessons WHERE id = ?");
    lesson.kitchen =
        readContent<Kitchen>(connection, id, "SELECT kitchen FROM lessons WHERE id = ?");
    readServings(connection, id, lesson);
    readPlacements(connection, id, lesson);
    if (!connection.failed()) {
        reportBad(connection, id, judgeLesson(lesson));
    }
    return lesson;
}

void writeKitchenRow(Connection& connection, ItemId id, const Kitchen& kitchen) {
    // Not REPLACE, which would delete the row that lessons refer to.
    Statement(connection,
              "INSERT INTO kitchens(id, content) VALUES(?, ?) "
              "ON CONFLICT(id) DO UPDATE SET content = excluded.content")
        .with(id.number, writePart(kitchen))
        .run();
    updateName(connection, id, kitchen.name);
}

void writeDishRow(Connection& connection, ItemId id, const Dish& dish) {
    Statement(connection,
              "INSERT INTO dishes(id, content) VALUES(?, ?) "
              "ON CONFLICT(id) DO UPDATE SET content = excluded.content")
        .with(id.number, writePart(dish))
        .run();
    updateName(connection, id, dish.name);
}

void writeLessonRows(Connection& connection, ItemId id, const Lesson& lesson) {
    Statement(connection, "INSERT INTO lessons(id, head, choices, kitchen) VALUES(?, ?, ?, ?)")
        .with(id.number, writePart(lesson.head), writePart(lesson.choices),
              writePart(lesson.kitchen))
        .run();
    writeServings(connection, id, lesson.servings);
    for (const auto& [key, placement] : lesson.placements) {
        writePlacement(connection, id, key, placement);
    }
}

void writeEdited(Connection& connection, ItemId id, const Lesson& lesson, const Edit& edit) {
    std::visit(WriteEdited{connection, id, lesson}, edit);
}

void readItemRows(Connection& connection, const Item& item) {
    std::string name;
    if (item.kind == ItemKind::Kitchen) {
        name = readKitchenRow(connection, item.id).name;
    } else if (item.kind == ItemKind::Dish) {
        name = readDishRow(connection, item.id).name;
    } else {
        name = readLessonRows(connection, item.id).head.name;
    }
    if (!connection.failed() && name != item.name) {
        reportBad(connection, item.id, Fault{FaultCode::Contradiction, {}, {"name", "content"}});
    }
}

}  // namespace rangeline
