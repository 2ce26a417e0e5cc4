// Version 1. Dishes, kitchens and the parts of lessons are JSON in the words of lesson files: one
// description in core/exchange reads and writes them everywhere, and the model validates every
// value of them. What SQL must find, join or order has columns of its own.

#include "book/schema_v1.h"

#include <array>

namespace rangeline {
namespace {

constexpr std::array parts = {
    // kind: 1 kitchen, 2 dish, 3 lesson; state: 0 in use, 1 archived, 2 deleted and kept for undo.
    SchemaPart{"items", R"(CREATE TABLE items(
  id INTEGER PRIMARY KEY CHECK(id > 0),
  kind INTEGER NOT NULL CHECK(kind BETWEEN 1 AND 3),
  name TEXT NOT NULL CHECK(length(name) <= 10000),
  state INTEGER NOT NULL CHECK(state BETWEEN 0 AND 2),
  seal BLOB NOT NULL CHECK(length(seal) = 32)
) STRICT)"},
    SchemaPart{"kitchens", R"(CREATE TABLE kitchens(
  id INTEGER PRIMARY KEY REFERENCES items(id) ON DELETE CASCADE,
  content TEXT NOT NULL CHECK(content <> '')
) STRICT)"},
    SchemaPart{"dishes", R"(CREATE TABLE dishes(
  id INTEGER PRIMARY KEY REFERENCES items(id) ON DELETE CASCADE,
  content TEXT NOT NULL CHECK(content <> '')
) STRICT)"},
    // A lesson has its own copy of the kitchen and the dishes: it stays true when they change.
    // Where
    // the copy came from, and what that was when it was taken, is kept beside it.
    SchemaPart{"lessons", R"(CREATE TABLE lessons(
  id INTEGER PRIMARY KEY REFERENCES items(id) ON DELETE CASCADE,
  head TEXT NOT NULL CHECK(head <> ''),
  choices TEXT NOT NULL CHECK(choices <> ''),
  kitchen TEXT NOT NULL CHECK(kitchen <> ''),
  origin INTEGER REFERENCES kitchens(id) ON DELETE SET NULL,
  seen BLOB CHECK(seen IS NULL OR length(seen) = 32)
) STRICT)"},
    SchemaPart{"servings", R"(CREATE TABLE servings(
  lesson INTEGER NOT NULL REFERENCES lessons(id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK(position >= 0),
  covers INTEGER NOT NULL CHECK(covers BETWEEN 1 AND 1000),
  shift INTEGER NOT NULL CHECK(shift BETWEEN -604800 AND 604800),
  dish TEXT NOT NULL CHECK(dish <> ''),
  origin INTEGER REFERENCES dishes(id) ON DELETE SET NULL,
  seen BLOB CHECK(seen IS NULL OR length(seen) = 32),
  PRIMARY KEY(lesson, position)
) STRICT, WITHOUT ROWID)"},
    SchemaPart{"servings_origin",
               "CREATE INDEX servings_origin ON servings(origin) WHERE origin IS NOT NULL"},
    // kind: 0 a step, 1 the wash after it, 2 turning an oven on.
    SchemaPart{"placements", R"(CREATE TABLE placements(
  lesson INTEGER NOT NULL REFERENCES lessons(id) ON DELETE CASCADE,
  kind INTEGER NOT NULL CHECK(kind BETWEEN 0 AND 2),
  subject TEXT NOT NULL,
  batch INTEGER NOT NULL CHECK(batch >= 0),
  station INTEGER NOT NULL CHECK(station >= 0),
  spot INTEGER NOT NULL CHECK(spot >= 0),
  content TEXT NOT NULL CHECK(content <> ''),
  PRIMARY KEY(lesson, kind, subject, batch, station, spot)
) STRICT, WITHOUT ROWID)"},
    SchemaPart{"versions", R"(CREATE TABLE versions(
  id INTEGER PRIMARY KEY,
  lesson INTEGER NOT NULL REFERENCES lessons(id) ON DELETE CASCADE,
  name TEXT NOT NULL CHECK(length(name) <= 10000),
  made TEXT NOT NULL CHECK(made GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]T*Z'),
  content TEXT NOT NULL CHECK(content <> ''),
  seal BLOB NOT NULL CHECK(length(seal) = 32)
) STRICT)"},
    SchemaPart{"versions_lesson", "CREATE INDEX versions_lesson ON versions(lesson)"},
    // done: 1 can be undone, 0 can be done again; the edits are those that do that.
    SchemaPart{"journal", R"(CREATE TABLE journal(
  id INTEGER PRIMARY KEY,
  lesson INTEGER NOT NULL REFERENCES lessons(id) ON DELETE CASCADE,
  done INTEGER NOT NULL CHECK(done IN (0, 1)),
  name TEXT NOT NULL CHECK(length(name) <= 10000),
  edits TEXT NOT NULL CHECK(edits <> ''),
  seal BLOB NOT NULL CHECK(length(seal) = 32)
) STRICT)"},
    SchemaPart{"journal_lesson", "CREATE INDEX journal_lesson ON journal(lesson)"},
    SchemaPart{"cooking_log", R"(CREATE TABLE cooking_log(
  id INTEGER PRIMARY KEY CHECK(id > 0),
  day TEXT NOT NULL CHECK(day GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'),
  lesson INTEGER REFERENCES lessons(id) ON DELETE SET NULL,
  dish TEXT NOT NULL,
  step TEXT NOT NULL CHECK(step <> ''),
  cook TEXT NOT NULL,
  covers INTEGER NOT NULL CHECK(covers BETWEEN 1 AND 1000),
  planned INTEGER NOT NULL CHECK(planned BETWEEN 0 AND 604800),
  took INTEGER NOT NULL CHECK(took BETWEEN 0 AND 604800)
) STRICT)"},
    SchemaPart{"cooking_log_step", "CREATE INDEX cooking_log_step ON cooking_log(step)"},
    SchemaPart{"cooking_log_lesson", "CREATE INDEX cooking_log_lesson ON cooking_log(lesson)"},
    SchemaPart{"log_pages", R"(CREATE TABLE log_pages(
  id INTEGER PRIMARY KEY CHECK(id >= 0),
  seal BLOB NOT NULL CHECK(length(seal) = 32)
) STRICT)"},
    SchemaPart{"settings", R"(CREATE TABLE settings(
  name TEXT PRIMARY KEY NOT NULL CHECK(length(name) BETWEEN 1 AND 100),
  value TEXT NOT NULL CHECK(length(value) <= 10000)
) STRICT, WITHOUT ROWID)"},
    // One row: the seal over all others.
    SchemaPart{"book_seal", R"(CREATE TABLE book_seal(
  id INTEGER PRIMARY KEY CHECK(id = 1),
  seal BLOB NOT NULL CHECK(length(seal) = 32)
) STRICT)"},
};

}  // namespace

const SchemaVersion schemaVersion1{1, parts, nullptr};

}  // namespace rangeline
