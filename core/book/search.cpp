#include "book/search.h"

#include <cassert>
#include <set>

#include "book/connection.h"

namespace rangeline {
namespace {

/// Every word in quotes, as the beginning of one: nothing that is typed has a meaning of its own.
std::string queryOf(std::string_view words) {
    std::string query, word;
    const auto take = [&] {
        if (!word.empty()) {
            query += (query.empty() ? "\"" : " \"") + word + "\"*";
            word.clear();
        }
    };
    for (const char c : words) {
        const bool part = static_cast<unsigned char>(c) >= 0x80 || (c >= '0' && c <= '9') ||
                          (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (part) {
            word += c;
        } else {
            take();
        }
    }
    take();
    return query;
}

}  // namespace

Search::Search() {
    auto index = Connection::open(":memory:", Connection::Access::ReadWrite);
    assert(index.ok());
    index_ = std::move(index.value());
    index_->run(
        "CREATE VIRTUAL TABLE words USING fts5(text, item UNINDEXED, place UNINDEXED, "
        "prefix = '1 2 3', tokenize = 'unicode61 remove_diacritics 2')");
    index_->run("CREATE TABLE rows(item INTEGER, row INTEGER)");
    index_->run("CREATE INDEX rows_item ON rows(item)");
}

Search::~Search() = default;

void Search::remove(ItemId id) {
    Statement(*index_, "DELETE FROM words WHERE rowid IN (SELECT row FROM rows WHERE item = ?)")
        .with(id.number)
        .run();
    Statement(*index_, "DELETE FROM rows WHERE item = ?").with(id.number).run();
}

void Search::add(ItemId id, FoundIn in, const std::string& text) {
    if (text.empty()) {
        return;
    }
    Statement(*index_, "INSERT INTO words(text, item, place) VALUES(?, ?, ?)")
        .with(text, id.number, static_cast<int>(in))
        .run();
    Statement(*index_, "INSERT INTO rows(item, row) VALUES(?, last_insert_rowid())")
        .with(id.number)
        .run();
}

void Search::addDish(ItemId id, const Dish& dish) {
    std::set<std::pair<FoundIn, std::string>> texts;  // what a dish says twice is found once
    for (const Component& component : dish.components) {
        texts.emplace(FoundIn::Name, component.name);
        for (const Ingredient& ingredient : component.ingredients) {
            texts.emplace(FoundIn::Ingredient, ingredient.name);
        }
        for (const Step& step : component.steps) {
            texts.emplace(FoundIn::Name, step.name);
            texts.emplace(FoundIn::Technique, step.technique);
            texts.emplace(FoundIn::Cue, step.cue);
        }
    }
    for (const auto& [in, text] : texts) {
        add(id, in, text);
    }
}

std::optional<BookFault> Search::fill(Book& book) {
    const auto items = book.items();
    if (!items.ok()) {
        return items.error();
    }
    Transaction transaction(*index_);
    index_->run("DELETE FROM words");
    index_->run("DELETE FROM rows");
    for (const Item& item : items.value()) {
        if (auto fault = update(book, item)) {
            return fault;
        }
    }
    transaction.commit();
    return index_->takeFault();
}

std::optional<BookFault> Search::update(Book& book, const Item& item) {
    remove(item.id);
    if (item.state == ItemState::Deleted) {
        return index_->takeFault();
    }
    add(item.id, FoundIn::Name, item.name);
    if (item.kind == ItemKind::Dish) {
        if (const auto dish = book.dish(item.id); dish.ok()) {
            addDish(item.id, dish.value());
        }
    } else if (item.kind == ItemKind::Lesson) {
        if (const auto lesson = book.lesson(item.id); lesson.ok()) {
            for (const Serving& serving : lesson.value().servings) {
                add(item.id, FoundIn::Name, serving.dish.name);
                addDish(item.id, serving.dish);
            }
        }
    }
    return index_->takeFault();
}

std::vector<Hit> Search::find(std::string_view words, int most) {
    std::vector<Hit> hits;
    const std::string query = queryOf(words);
    if (query.empty()) {
        return hits;
    }
    Statement rows(*index_,
                   "SELECT item, place, text FROM words WHERE words MATCH ? ORDER BY place, rowid "
                   "LIMIT ?");
    rows.with(query, most);
    while (rows.next()) {
        hits.push_back({{rows.whole(0)}, static_cast<FoundIn>(rows.whole(1)), rows.text(2)});
    }
    // A query that cannot be understood finds nothing.
    index_->takeFault();
    return hits;
}

}  // namespace rangeline
