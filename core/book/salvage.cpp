#include "book/salvage.h"

#include <unistd.h>

#include "book/connection.h"
#include "book/library.h"
#include "book/rows.h"
#include "book/seals.h"
#include "book/versions.h"
#include "exchange/lesson_file.h"

namespace rangeline {
namespace {

class Salvaging {
  public:
    Salvaging(Connection& from, Book& to) : from_(from), to_(to) {}

    std::optional<BookFault> run() {
        const std::vector<Item> items = readable();
        for (const Item& item : items) {
            if (auto fault = take(item)) {
                return fault;
            }
        }
        if (auto fault = takeLog()) {
            return fault;
        }
        return takeSettings();
    }

    Salvaged result;

  private:
    /// A page that cannot be read ends a list; what came before it is kept.
    std::vector<Item> readable() {
        std::vector<Item> items;
        Statement rows(from_, "SELECT id, kind, name, state FROM items LIMIT 20000");
        while (rows.next()) {
            items.push_back({{rows.whole(0)},
                             static_cast<ItemKind>(rows.whole(1)),
                             rows.text(2),
                             static_cast<ItemState>(rows.whole(3))});
        }
        lose("the list of items", {});
        return items;
    }

    void lose(const std::string& what, const std::string& name) {
        if (auto fault = from_.takeFault()) {
            result.lost.push_back({what, name, *std::move(fault)});
        }
    }

    bool sealed(ItemId id) {
        Statement row(from_, "SELECT seal FROM items WHERE id = ?");
        const bool good = row.with(id.number).next() && row.bytes(0) == itemSeal(from_, id.number);
        return !from_.takeFault() && good;
    }

    /// The item in the new book, or nothing where it cannot be read.
    Result<ItemId, BookFault> copy(const Item& item) {
        if (item.kind == ItemKind::Kitchen) {
            return add(readKitchenRow(from_, item.id), &addKitchen);
        }
        if (item.kind == ItemKind::Dish) {
            return add(readDishRow(from_, item.id), &addDish);
        }
        return add(readLessonRows(from_, item.id), &addPlainLesson);
    }

    static Result<ItemId, BookFault> addPlainLesson(Book& book, const Lesson& lesson) {
        return addLesson(book, lesson);
    }

    template <class Value>
    Result<ItemId, BookFault> add(const Value& value,
                                  Result<ItemId, BookFault> (*put)(Book&, const Value&)) {
        if (auto fault = from_.takeFault()) {
            return *std::move(fault);
        }
        return put(to_, value);
    }

    std::optional<BookFault> take(const Item& item) {
        const bool good = sealed(item.id);
        const auto id = copy(item);
        if (!id.ok()) {
            // A new book that cannot be written is no matter of the old one.
            const BookFaultCode code = id.error().code;
            if (!isDamage(code) && code != BookFaultCode::NoSuchItem &&
                code != BookFaultCode::Refused) {
                return id.error();
            }
            result.lost.push_back(
                {"item " + std::to_string(item.id.number), item.name, id.error()});
            return std::nullopt;
        }
        Item kept = item;
        kept.id = id.value();
        result.kept.push_back(kept);
        if (!good) {
            result.doubtful.push_back(kept);
        }
        if (item.state == ItemState::Archived || item.state == ItemState::Deleted) {
            if (auto fault = setState(to_, kept.id, item.state)) {
                return fault;
            }
        }
        return item.kind == ItemKind::Lesson ? takeVersions(item, kept.id) : std::nullopt;
    }

    std::optional<BookFault> takeVersions(const Item& item, ItemId target) {
        Statement rows(from_,
                       "SELECT id, name, made, content, seal FROM versions WHERE lesson = ?");
        rows.with(item.id.number);
        while (rows.next()) {
            const auto lesson = readKeptLesson(rows.text(3));
            const std::string what = "version " + std::to_string(rows.whole(0));
            if (!lesson.ok()) {
                result.lost.push_back(
                    {what, rows.text(1), {BookFaultCode::BadValue, {what}, lesson.error()}});
                continue;
            }
            auto fault = insertVersion(to_, target, rows.text(1), rows.text(2), lesson.value());
            if (fault && isDamage(fault->code)) {
                result.lost.push_back({what, rows.text(1), *std::move(fault)});
            } else if (fault) {
                return fault;
            }
        }
        lose("versions of item " + std::to_string(item.id.number), item.name);
        return std::nullopt;
    }

    std::optional<BookFault> takeLog() {
        std::vector<LogEntry> entries;
        Statement rows(from_,
                       "SELECT day, dish, step, cook, covers, planned, took FROM cooking_log "
                       "ORDER BY id LIMIT 500000");
        while (rows.next()) {
            entries.push_back({rows.text(0), std::nullopt, rows.text(1), rows.text(2), rows.text(3),
                               static_cast<int>(rows.whole(4)), Duration::seconds(rows.whole(5)),
                               Duration::seconds(rows.whole(6))});
        }
        lose("the cooking log", {});
        auto fault = addToLog(to_, entries);
        return fault && isDamage(fault->code) ? takeLogRows(entries) : fault;
    }

    /// What cannot be in a log is left out.
    std::optional<BookFault> takeLogRows(const std::vector<LogEntry>& entries) {
        for (const LogEntry& entry : entries) {
            auto fault = addToLog(to_, {entry});
            if (fault && isDamage(fault->code)) {
                result.lost.push_back({"a row of the cooking log", entry.step, *std::move(fault)});
            } else if (fault) {
                return fault;
            }
        }
        return std::nullopt;
    }

    /// The cook's own techniques and cuts, and the limits of food safety that were chosen.
    std::optional<BookFault> takeSettings() {
        std::vector<std::pair<std::string, std::string>> settings;
        Statement rows(from_, "SELECT name, value FROM settings ORDER BY name LIMIT 1000");
        while (rows.next()) {
            settings.emplace_back(rows.text(0), rows.text(1));
        }
        lose("the settings", {});
        for (const auto& [name, value] : settings) {
            auto fault = setSetting(to_, name, value);
            if (fault && isDamage(fault->code)) {
                result.lost.push_back({"a setting", name, *std::move(fault)});
            } else if (fault) {
                return fault;
            }
        }
        return std::nullopt;
    }

    Connection& from_;
    Book& to_;
};

}  // namespace

Result<Salvaged, BookFault> salvage(const std::string& damaged, const std::string& target) {
    auto from = Connection::open(damaged, Connection::Access::ReadOnly);
    if (!from.ok()) {
        return from.error();
    }
    from.value()->number("SELECT count(*) FROM items");
    if (auto fault = from.value()->takeFault()) {
        return *std::move(fault);
    }
    auto to = Book::create(target);
    if (!to.ok()) {
        return to.error();
    }
    auto fault = to.value()->verify();
    Salvaging salvaging(*from.value(), *to.value());
    fault = fault ? fault : salvaging.run();
    if (fault) {
        to.value().reset();
        ::unlink(target.c_str());  // half of it is no book to be opened
        return *std::move(fault);
    }
    return std::move(salvaging.result);
}

}  // namespace rangeline
