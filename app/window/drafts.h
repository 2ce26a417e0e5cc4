#pragma once
// What is being written and is not yet kept: beside the items of the book, in the book, written at
// once with every change, so that an end without a word costs nothing that was typed and entered.

#include <optional>
#include <string>
#include <vector>

#include "book/book.h"
#include "model/lesson.h"

namespace rangeline {

/// Which draft: that of an item of the book, or of one that is new.
enum class DraftSort : std::uint8_t { Dish, Kitchen };
struct DraftKey {
    DraftSort sort = DraftSort::Dish;
    std::optional<ItemId> item;
    int number = 1;  ///< of several that are new

    friend bool operator==(const DraftKey&, const DraftKey&) = default;
};
/// So many new ones of a sort can be begun at a time.
constexpr int mostNewDrafts = 20;

struct NewDraft {
    DraftKey key;
    std::string name;
};
/// The new ones that were begun and are not kept yet. On the book's thread.
template <class Part>
std::vector<NewDraft> newDrafts(Book& book, DraftSort sort);
/// The first key that none of them has; nothing where there are too many.
std::optional<DraftKey> freeDraft(const std::vector<NewDraft>& drafts, DraftSort sort);

/// For Dish and Kitchen, which may be unfinished. On the book's thread.
template <class Part>
std::optional<BookFault> keepDraft(Book& book, const DraftKey& key, const Part& part);
/// None where there is none, or none that can be read.
template <class Part>
std::optional<Part> readDraft(Book& book, const DraftKey& key);
std::optional<BookFault> forgetDraft(Book& book, const DraftKey& key);

/// The draft that was written at when the program last ended without a word, if any.
std::optional<DraftKey> interruptedDraft(Book& book);
/// Writing has come to its end, whatever becomes of the draft.
std::optional<BookFault> endDraft(Book& book);

}  // namespace rangeline
