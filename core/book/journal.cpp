#include "book/journal.h"

#include <algorithm>

#include "book/book_file.h"
#include "book/rows.h"
#include "book/seals.h"
#include "exchange/part_text.h"

namespace rangeline {
namespace {

/// Applies the edits in their order and returns those that take them back, in theirs.
std::vector<Edit> applyAll(Lesson& lesson, const std::vector<Edit>& edits) {
    std::vector<Edit> inverses;
    for (const Edit& edit : edits) {
        inverses.push_back(apply(lesson, edit));
    }
    std::ranges::reverse(inverses);
    return inverses;
}

void writeAll(Connection& connection, ItemId id, const Lesson& lesson,
              const std::vector<Edit>& edits) {
    for (const Edit& edit : edits) {
        writeEdited(connection, id, lesson, edit);
    }
}

/// Whether there are half as many steps, or half as many bytes, as a book may have.
bool isCrowded(Connection& connection) {
    constexpr std::int64_t mostSteps = mostStepsInBook / 2;
    // Ids only go up: where they lie close together there cannot be many.
    const bool mayBeMany =
        connection.number("SELECT coalesce(max(id) - min(id), 0) FROM journal") >= mostSteps;
    if (mayBeMany && connection.number("SELECT count(*) FROM journal") > mostSteps) {
        return true;
    }
    const std::int64_t pages =
        connection.number("PRAGMA page_count") - connection.number("PRAGMA freelist_count");
    return pages * connection.number("PRAGMA page_size") > largestBook / 2;
}

void forgetOldSteps(Connection& connection, ItemId id) {
    Statement(connection,
              "DELETE FROM journal WHERE id IN (SELECT id FROM (SELECT id, row_number() OVER w AS "
              "steps, sum(length(edits)) OVER w AS bytes FROM journal WHERE lesson = ? WINDOW w AS "
              "(ORDER BY id DESC)) WHERE steps > ? OR (bytes > ? AND steps > 1))")
        .with(id.number, mostUndoSteps, mostUndoBytes)
        .run();
}

/// Of a book that is nearly full of them the oldest steps go, whichever lesson they are of.
void makeRoomForSteps(Connection& connection, Book::Touched& touched) {
    if (!isCrowded(connection)) {
        return;
    }
    Statement rows(
        connection,
        "SELECT DISTINCT lesson FROM (SELECT lesson FROM journal ORDER BY id LIMIT 1000)");
    while (rows.next()) {
        touched.push_back({rows.whole(0)});
    }
    Statement(connection,
              "DELETE FROM journal WHERE id IN (SELECT id FROM journal ORDER BY id LIMIT 1000)")
        .run();
}

std::int64_t addEntry(Connection& connection, ItemId id, const std::string& name,
                      const std::vector<Edit>& inverses) {
    const std::string edits = writePart(inverses);
    Statement(connection,
              "INSERT INTO journal(lesson, done, name, edits, seal) VALUES(?, 1, ?, ?, ?)")
        .with(id.number, name, edits, sealOf(name, edits))
        .run();
    return connection.number("SELECT last_insert_rowid()");
}

struct Entry {
    std::int64_t id = 0;
    std::string name;
    std::vector<Edit> edits;
};

std::optional<Entry> readEntry(Connection& connection, Statement& row) {
    if (!row.next()) {
        return std::nullopt;
    }
    auto edits = readPart<EditsPart>(row.text(2));
    if (!edits.ok() || row.bytes(3) != sealOf(row.text(1), row.text(2))) {
        connection.report(
            {BookFaultCode::SealBroken, {"undo step " + std::to_string(row.whole(0))}, {}});
        return std::nullopt;
    }
    return Entry{row.whole(0), row.text(1), std::move(edits.value())};
}

void updateEntry(Connection& connection, const Entry& entry, bool done) {
    const std::string edits = writePart(entry.edits);
    Statement(connection, "UPDATE journal SET done = ?, edits = ?, seal = ? WHERE id = ?")
        .with(done, edits, sealOf(entry.name, edits), entry.id)
        .run();
}

/// Lengthens the step of a gesture that goes on; false if there is none.
bool continueGesture(Connection& connection, const Book::Gesture& last,
                     const std::vector<Edit>& inverses) {
    Statement row(connection,
                  "SELECT id, name, edits, seal FROM journal WHERE id = ? AND done = 1");
    auto entry = readEntry(connection, row.with(last.entry));
    if (!entry) {
        return false;
    }
    entry->edits.insert(entry->edits.begin(), inverses.begin(), inverses.end());
    updateEntry(connection, *entry, true);
    return true;
}

Result<Replayed, BookFault> replay(Book& book, ItemId id, bool done, const char* sql) {
    const auto held = book.heldLesson(id);
    if (!held.ok()) {
        return held.error();
    }
    Lesson lesson = *held.value();
    Replayed replayed;
    const auto fault = book.write([&](Connection& connection, Book::Touched& touched) {
        Statement row(connection, sql);
        auto entry = readEntry(connection, row.with(id.number));
        if (!entry) {
            connection.report({BookFaultCode::NothingToDo, {}, {}});
            return;
        }
        replayed = {entry->name, entry->edits};
        entry->edits = applyAll(lesson, replayed.edits);
        if (auto wrong = judgeLesson(lesson)) {
            connection.report({BookFaultCode::Refused, {}, std::move(wrong)});
            return;
        }
        writeAll(connection, id, lesson, replayed.edits);
        updateEntry(connection, *entry, !done);
        touched.push_back(id);
    });
    if (fault) {
        return *fault;
    }
    book.lastGesture = {};
    book.holdLesson(id, std::move(lesson));
    return replayed;
}

}  // namespace

std::optional<BookFault> applyEdit(Book& book, ItemId id, const Edit& edit, const std::string& name,
                                   int gesture) {
    return applyEdits(book, id, {edit}, name, gesture);
}

std::optional<BookFault> applyEdits(Book& book, ItemId id, const std::vector<Edit>& edits,
                                    const std::string& name, int gesture) {
    const auto held = book.heldLesson(id);
    if (!held.ok()) {
        return held.error();
    }
    Lesson lesson = *held.value();
    const std::vector<Edit> inverses = applyAll(lesson, edits);
    if (auto wrong = judgeLesson(lesson)) {
        return BookFault{BookFaultCode::Refused, {}, std::move(wrong)};
    }
    Book::Gesture now{id, gesture, book.lastGesture.entry};
    const bool goesOn =
        gesture != 0 && book.lastGesture.lesson == id && book.lastGesture.number == gesture;
    const auto fault = book.write([&](Connection& connection, Book::Touched& touched) {
        writeAll(connection, id, lesson, edits);
        Statement(connection, "DELETE FROM journal WHERE lesson = ? AND done = 0")
            .with(id.number)
            .run();
        makeRoomForSteps(connection, touched);
        if (!goesOn || !continueGesture(connection, now, inverses)) {
            now.entry = addEntry(connection, id, name, inverses);
        }
        forgetOldSteps(connection, id);
        touched.push_back(id);
    });
    if (!fault) {
        book.lastGesture = now;
        book.holdLesson(id, std::move(lesson));
    }
    return fault;
}

Result<Replayed, BookFault> undo(Book& book, ItemId lesson) {
    return replay(book, lesson, true,
                  "SELECT id, name, edits, seal FROM journal WHERE lesson = ? AND done = 1 "
                  "ORDER BY id DESC LIMIT 1");
}

Result<Replayed, BookFault> redo(Book& book, ItemId lesson) {
    return replay(book, lesson, false,
                  "SELECT id, name, edits, seal FROM journal WHERE lesson = ? AND done = 0 "
                  "ORDER BY id LIMIT 1");
}

Result<Steps, BookFault> undoSteps(Book& book, ItemId lesson) {
    Steps steps;
    Statement rows(book.connection(),
                   "SELECT done, name FROM journal WHERE lesson = ? ORDER BY id");
    rows.with(lesson.number);
    while (rows.next()) {
        (rows.whole(0) == 1 ? steps.undo : steps.redo).push_back(rows.text(1));
    }
    if (auto fault = book.connection().takeFault()) {
        return *std::move(fault);
    }
    return steps;
}

Result<StepEdits, BookFault> undoEdits(Book& book, ItemId lesson) {
    StepEdits steps;
    Statement rows(book.connection(),
                   "SELECT id, name, edits, seal, done FROM journal WHERE lesson = ? ORDER BY id");
    rows.with(lesson.number);
    while (auto entry = readEntry(book.connection(), rows)) {
        auto& list = rows.whole(4) == 1 ? steps.undo : steps.redo;
        list.push_back({std::move(entry->name), std::move(entry->edits)});
    }
    if (auto fault = book.connection().takeFault()) {
        return *std::move(fault);
    }
    return steps;
}

}  // namespace rangeline
