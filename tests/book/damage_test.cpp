// Books with flipped bits, cut off, or made to harm.

#include <sqlite3.h>
#include <unistd.h>

#include <cstdio>
#include <fstream>
#include <iterator>

#include "book/book_support.h"
#include "book/seal_after.h"

namespace rangeline::test {
namespace {

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void put(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

/// All that a user can see of a book.
struct Seen {
    std::vector<Item> items;
    std::vector<Lesson> lessons;
    std::vector<Kitchen> kitchens;
    std::vector<Dish> dishes;
    std::vector<LogEntry> log;
    std::vector<Version> versions;
    std::vector<std::string> undo;
    std::string setting;

    friend bool operator==(const Seen&, const Seen&) = default;
};

Seen seenIn(Book& book) {
    Seen seen;
    seen.items = take(book.items());
    for (const Item& item : seen.items) {
        if (item.kind == ItemKind::Lesson) {
            seen.lessons.push_back(take(book.lesson(item.id)));
            const auto versions = take(rangeline::versions(book, item.id));
            seen.versions.insert(seen.versions.end(), versions.begin(), versions.end());
            const auto steps = take(undoSteps(book, item.id)).undo;
            seen.undo.insert(seen.undo.end(), steps.begin(), steps.end());
        } else if (item.kind == ItemKind::Dish) {
            seen.dishes.push_back(take(book.dish(item.id)));
        } else {
            seen.kitchens.push_back(take(book.kitchen(item.id)));
        }
    }
    seen.log = take(cookingLog(book));
    seen.setting = take(setting(book, "units"));
    return seen;
}

class DamagedBooks : public BookFolder {
  protected:
    /// A book with something of everything.
    void makeSample() {
        auto book = created(path());
        const Lesson lesson = someLesson(1);
        const ItemId id = take(addLesson(*book, lesson));
        take(addLesson(*book, richLesson()));
        take(addDish(*book, lesson.servings.front().dish));
        take(addKitchen(*book, lesson.kitchen));
        Random random(1);
        for (int i = 0; i < 5; ++i) {
            ASSERT_FALSE(applyEdit(*book, id, someMove(random, lesson), "move"));
        }
        take(keepVersion(*book, id, "before", "2027-10-09T16:30:00Z"));
        ASSERT_FALSE(addToLog(*book, {{"2027-10-09", id, "dish", "sear", "ann", 4,
                                       Duration::minutes(5), Duration::minutes(6)}}));
        ASSERT_FALSE(setSetting(*book, "units", "metric"));
    }

    /// Counts what comes of such bytes; whatever is shown must be as it was.
    void judge(const std::string& bytes, const Seen& original) {
        put(path("damaged.rangeline"), bytes);
        auto book = Book::open(path("damaged.rangeline"));
        if (!book.ok() || book.value()->verify()) {
            ++refused;
            return;
        }
        ++harmless;
        EXPECT_TRUE(seenIn(*book.value()) == original) << "silently different";
    }

    int refused = 0, harmless = 0;
};

TEST_F(DamagedBooks, AThousandFlippedBitsAreHarmlessOrRefused) {
    makeSample();
    const Seen original = seenIn(*opened(path()));
    const std::string whole = bytesOf(path());
    const std::uint64_t seed = seedOr(1);
    Random random(seed);
    for (int i = 0; i < 1000; ++i) {
        const auto at = static_cast<std::size_t>(
            random.between(0, static_cast<std::int64_t>(whole.size()) - 1));
        const auto bit = static_cast<unsigned>(random.between(0, 7));
        SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed) + " byte " + std::to_string(at) +
                     " bit " + std::to_string(bit));
        std::string bytes = whole;
        bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << bit));
        judge(bytes, original);
    }
    std::printf("%d refused, %d harmless\n", refused, harmless);
    EXPECT_GT(refused, 100);
}

TEST_F(DamagedBooks, TwoHundredTruncationsAreRefused) {
    makeSample();
    const Seen original = seenIn(*opened(path()));
    const std::string whole = bytesOf(path());
    Random random(seedOr(2));
    for (int i = 0; i < 200; ++i) {
        judge(whole.substr(0, static_cast<std::size_t>(
                                  random.between(0, static_cast<std::int64_t>(whole.size()) - 1))),
              original);
    }
    EXPECT_EQ(refused, 200);
}

struct Hostile {
    const char* name;
    const char* sql;  ///< what is done to a good book
    BookFaultCode code;
};

class HostileBooks : public BookFolder, public testing::WithParamInterface<Hostile> {};

TEST_P(HostileBooks, AreRefusedWithTheReason) {
    const ItemId id = take(addLesson(*created(path()), someLesson(1)));
    sqlite3* raw = nullptr;
    // By the usual disk: the failing one knows no write-ahead log.
    ASSERT_EQ(sqlite3_open_v2(path().c_str(), &raw, SQLITE_OPEN_READWRITE, "unix"), SQLITE_OK);
    char* error = nullptr;
    EXPECT_EQ(sqlite3_exec(raw, GetParam().sql, nullptr, nullptr, &error), SQLITE_OK) << error;
    sqlite3_close(raw);
    const std::string before = bytesOf(path());
    auto book = Book::open(path());
    const auto fault = book.ok() ? book.value()->verify() : std::optional(book.error());
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->code, GetParam().code) << said(fault);
    if (book.ok()) {
        EXPECT_TRUE(rename(*book.value(), id, "mine"));
    }
    EXPECT_TRUE(bytesOf(path()) == before) << "the file was changed";
}

INSTANTIATE_TEST_SUITE_P(
    All, HostileBooks,
    testing::Values(
        Hostile{"Trigger", "CREATE TRIGGER t AFTER INSERT ON journal BEGIN DELETE FROM items; END",
                BookFaultCode::ForeignSchema},
        Hostile{"View", "CREATE VIEW v AS SELECT * FROM items", BookFaultCode::ForeignSchema},
        Hostile{"ViewForATable",
                "PRAGMA foreign_keys=OFF; DROP TABLE settings; CREATE VIEW settings AS SELECT "
                "'units' AS name, 'metric' AS value",
                BookFaultCode::ForeignSchema},
        Hostile{"MoreTables", "CREATE TABLE more(x)", BookFaultCode::ForeignSchema},
        Hostile{"TableNotStrict",
                "DROP TABLE settings; CREATE TABLE settings(name TEXT PRIMARY KEY, value)",
                BookFaultCode::ForeignSchema},
        Hostile{"WrittenAhead", "PRAGMA journal_mode=WAL", BookFaultCode::ForeignMode},
        Hostile{"WrongVersion", "PRAGMA user_version=0", BookFaultCode::ForeignSchema},
        Hostile{"WrongApplication", "PRAGMA application_id=1", BookFaultCode::NotABook},
        Hostile{"WrongKind", "PRAGMA ignore_check_constraints=1; UPDATE items SET kind = 9",
                BookFaultCode::BadValue},
        Hostile{"NameChanged", "UPDATE items SET name = 'x'", BookFaultCode::SealBroken},
        Hostile{"ContentChanged", "UPDATE servings SET covers = covers + 1",
                BookFaultCode::SealBroken},
        Hostile{"RowLost", "DELETE FROM placements", BookFaultCode::SealBroken},
        Hostile{"NotANumber", "UPDATE lessons SET head = replace(head, '\"crew\"', 'NaN')",
                BookFaultCode::SealBroken},
        Hostile{"LooseReference",
                "PRAGMA foreign_keys=OFF; INSERT INTO versions(lesson, name, made, content, seal) "
                "VALUES(99, '', '2027-10-09T16:30:00Z', '{}', zeroblob(32))",
                BookFaultCode::Damaged},
        Hostile{"MillionItems",
                "WITH RECURSIVE n(i) AS (SELECT 100 UNION ALL SELECT i + 1 FROM n LIMIT 1000000) "
                "INSERT INTO items SELECT i, 3, '', 0, zeroblob(32) FROM n",
                BookFaultCode::TooMany},
        Hostile{"MillionRows",
                "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n LIMIT 1000000) "
                "INSERT INTO cooking_log SELECT i, '2027-10-09', NULL, '', 's', '', 1, 0, 0 FROM n",
                BookFaultCode::TooMany},
        Hostile{"HugeValue", "UPDATE lessons SET head = hex(zeroblob(20000000))",
                BookFaultCode::TooMany}),
    [](const auto& one) { return std::string(one.param.name); });

TEST_F(DamagedBooks, ValuesWithGoodSealsAreStillJudgedByTheModel) {
    // Whoever makes a hostile book can seal it.
    auto book = created(path());
    const ItemId id = take(addLesson(*book, richLesson()));
    for (const char* sql :
         {"UPDATE lessons SET head = '{\"crew\": NaN}'", "UPDATE lessons SET choices = '[]'",
          "UPDATE servings SET dish = '{\"id\": \"x\"'",
          "UPDATE placements SET subject = subject || 'x' WHERE kind = 0"}) {
        SCOPED_TRACE(sql);
        const std::string copy = path("sealed.rangeline");
        ASSERT_FALSE(saveCopy(*book, copy));
        {
            auto hostile = opened(copy);
            ASSERT_FALSE(sealAfter(*hostile, id, sql));
        }
        const auto fault = take(Book::open(copy))->verify();
        ASSERT_TRUE(fault);
        EXPECT_EQ(fault->code, BookFaultCode::BadValue) << said(fault);
    }
}

TEST_F(DamagedBooks, OtherFilesAreNoBooks) {
    put(path("empty"), "");
    EXPECT_EQ(Book::open(path("empty")).error().code, BookFaultCode::EmptyFile);
    put(path("text"), std::string(5000, 'x'));
    EXPECT_EQ(Book::open(path("text")).error().code, BookFaultCode::NotABook);
    EXPECT_EQ(Book::open(path("none")).error().code, BookFaultCode::CannotOpen);
    EXPECT_EQ(Book::open(folder_.path().toStdString()).error().code, BookFaultCode::NotABook);
}

}  // namespace
}  // namespace rangeline::test
