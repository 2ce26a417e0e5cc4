#pragma once
// Finding in a book by words: names, ingredients, techniques and doneness cues. The index is kept
// in memory, outside the book: it is made anew from the book's items and never believed over them.
// It belongs to the thread that made it.

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "book/book.h"

namespace rangeline {

enum class FoundIn : std::uint8_t { Name, Ingredient, Technique, Cue };

struct Hit {
    ItemId item;
    FoundIn in = FoundIn::Name;
    std::string text;  ///< that was found

    friend bool operator==(const Hit&, const Hit&) = default;
};

class Search {
  public:
    Search();
    ~Search();
    Search(const Search&) = delete;
    Search& operator=(const Search&) = delete;

    /// Puts all items in; deleted ones are passed over, unreadable ones are found by name only.
    std::optional<BookFault> fill(Book& book);
    /// After an item was added, changed or deleted.
    std::optional<BookFault> update(Book& book, const Item& item);
    /// Each of the words, or the beginning of it, must be there; upper case and accents do not
    /// matter. Best first, at most `most`.
    std::vector<Hit> find(std::string_view words, int most = 50);

  private:
    void remove(ItemId id);
    void add(ItemId id, FoundIn in, const std::string& text);
    void addDish(ItemId id, const Dish& dish);

    std::unique_ptr<Connection> index_;
};

}  // namespace rangeline
