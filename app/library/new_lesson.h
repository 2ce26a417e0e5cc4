#pragma once
// What a new lesson is made of, and the lesson that comes of it.

#include <optional>
#include <vector>

#include "book/library.h"
#include "model/fault.h"

namespace rangeline {

struct ChosenDish {
    ItemId item;
    Dish dish;
    int covers = 4;
};

struct NewLesson {
    Head head;
    ItemId kitchenItem;
    Kitchen kitchen;
    std::vector<ChosenDish> dishes;

    /// The lesson, with the dishes' ids made different where they clash.
    Lesson lesson() const;
    Origins origins() const;
};

/// Which food-safety limits lessons of the book get; household until one was chosen.
SafetyProfile profileOf(Book& book);
std::optional<BookFault> chooseProfile(Book& book, SafetyProfile profile);

}  // namespace rangeline
