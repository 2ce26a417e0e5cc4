#pragma once
// Kitchens, dishes and lessons as the things of a library: putting in, changing, renaming,
// doubling, archiving, deleting and bringing back. Each is one transaction.

#include <string>
#include <vector>

#include "book/book.h"

namespace rangeline {

/// These return Refused with the reason for what the model would not accept.
Result<ItemId, BookFault> addKitchen(Book& book, const Kitchen& kitchen);
Result<ItemId, BookFault> addDish(Book& book, const Dish& dish);
std::optional<BookFault> replaceKitchen(Book& book, ItemId id, const Kitchen& kitchen);
std::optional<BookFault> replaceDish(Book& book, ItemId id, const Dish& dish);

/// The items that a lesson's parts were copied from.
struct Origins {
    std::optional<ItemId> kitchen;
    std::vector<std::optional<ItemId>> dishes;  ///< one for each serving; fewer: the rest have none
};
Result<ItemId, BookFault> addLesson(Book& book, const Lesson& lesson, const Origins& origins = {});
/// Several at once, or none.
Result<std::vector<ItemId>, BookFault> addLessons(Book& book, const std::vector<Lesson>& lessons);

/// The dish of the library that each serving of the lesson was copied from.
Result<std::vector<std::optional<ItemId>>, BookFault> dishOrigins(Book& book, ItemId lesson);

/// What has changed in the library since the lesson took it over, so that taking the change can be
/// offered (SetKitchen, SetServings). Changes made to the lesson's own copy do not count, and what
/// has been offered once and taken is not offered again, even if taking it is undone.
struct Outdated {
    std::optional<ItemId> kitchen;
    struct OutdatedServing {
        std::size_t serving = 0;
        ItemId dish;
    };
    std::vector<OutdatedServing> servings;
};
Result<Outdated, BookFault> outdatedParts(Book& book, ItemId lesson);

/// Gives the item, and what it holds, that name. Of a lesson it is a step of its undo.
std::optional<BookFault> rename(Book& book, ItemId id, const std::string& name);
/// A copy under that name, without the undo journal and the versions.
Result<ItemId, BookFault> duplicate(Book& book, ItemId id, const std::string& name);
/// Archiving, deleting and bringing back.
std::optional<BookFault> setState(Book& book, ItemId id, ItemState state);
/// Really takes deleted items out of the file; lessons keep their copies of what is purged.
std::optional<BookFault> purgeDeleted(Book& book);

/// The items of that kind and name, or with the number that "#12" names; deleted ones are passed
/// over. NoSuchItem or SeveralItems unless it is exactly one.
Result<Item, BookFault> findItem(Book& book, ItemKind kind, const std::string& name);

/// Settings that belong to the book; empty where there is none.
Result<std::string, BookFault> setting(Book& book, const std::string& name);
std::optional<BookFault> setSetting(Book& book, const std::string& name, const std::string& value);

}  // namespace rangeline
