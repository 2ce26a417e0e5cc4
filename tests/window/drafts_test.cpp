// What is being written is beside the items of the book until it is kept or given up.

#include "window/drafts.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "book/book.h"
#include "model/starting_kitchens.h"
#include "model/validate_alone.h"
#include "writing/dish_changes.h"

namespace rangeline::test {
namespace {

/// A circle, a burner without a pan, no name.
Dish unfinishedDish() {
    Dish dish = newDish("");
    const StepId first = addStep(dish, {0, 0}, "Fry the roots");
    const StepId second = addStep(dish, {0, 1}, "Glaze them");
    dish.components[0].steps[0].uses = {{second, false}};
    dish.components[0].steps[0].heat = BurnerHeat{};
    return dish;
}

class Drafts : public ::testing::Test {
  protected:
    void SetUp() override {
        auto made = Book::create(path_);
        ASSERT_TRUE(made.ok());
        book_ = std::move(made.value());
        ASSERT_FALSE(book_->verify());
    }

    QTemporaryDir folder_;
    const std::string path_ = folder_.filePath("draft.rangeline").toStdString();
    std::unique_ptr<Book> book_;
    const DraftKey fresh_{DraftSort::Dish, {}};
    const DraftKey seventh_{DraftSort::Kitchen, ItemId{7}};
};

TEST_F(Drafts, AnUnfinishedDishIsThereAgain) {
    const Dish dish = unfinishedDish();
    ASSERT_GE(validateDish(dish).size(), 2U);
    ASSERT_FALSE(keepDraft(*book_, fresh_, dish));
    EXPECT_EQ(readDraft<Dish>(*book_, fresh_), dish);
    EXPECT_FALSE(readDraft<Dish>(*book_, {DraftSort::Dish, ItemId{1}}));
}

TEST_F(Drafts, WhatIsForgottenIsGone) {
    ASSERT_FALSE(keepDraft(*book_, fresh_, unfinishedDish()));
    ASSERT_FALSE(forgetDraft(*book_, fresh_));
    EXPECT_FALSE(readDraft<Dish>(*book_, fresh_));
}

TEST_F(Drafts, EveryNewDishHasItsOwn) {
    const DraftKey second{DraftSort::Dish, {}, 2};
    Dish other = unfinishedDish();
    other.name = "Leeks";
    ASSERT_FALSE(keepDraft(*book_, fresh_, unfinishedDish()));
    const auto one = newDrafts<Dish>(*book_, DraftSort::Dish);
    ASSERT_EQ(one.size(), 1U);
    EXPECT_EQ(freeDraft(one, DraftSort::Dish), second);
    ASSERT_FALSE(keepDraft(*book_, second, other));
    EXPECT_EQ(interruptedDraft(*book_), second);
    const auto both = newDrafts<Dish>(*book_, DraftSort::Dish);
    ASSERT_EQ(both.size(), 2U);
    EXPECT_EQ(both[1].name, "Leeks");
    EXPECT_EQ(readDraft<Dish>(*book_, fresh_), unfinishedDish());
    ASSERT_FALSE(forgetDraft(*book_, fresh_));
    EXPECT_EQ(freeDraft(newDrafts<Dish>(*book_, DraftSort::Dish), DraftSort::Dish), fresh_);
    EXPECT_TRUE(newDrafts<Kitchen>(*book_, DraftSort::Kitchen).empty());
}

TEST_F(Drafts, ThereAreOnlySoManyNewOnes) {
    std::vector<NewDraft> drafts;
    for (int number = 1; number <= mostNewDrafts; ++number) {
        drafts.push_back({{DraftSort::Dish, {}, number}, {}});
    }
    EXPECT_FALSE(freeDraft(drafts, DraftSort::Dish));
}

TEST_F(Drafts, TheOneBeingWrittenIsKnownUntilItsEnd) {
    EXPECT_FALSE(interruptedDraft(*book_));
    const Kitchen kitchen = startingKitchens().front().make();
    ASSERT_FALSE(keepDraft(*book_, seventh_, kitchen));
    const auto key = interruptedDraft(*book_);
    ASSERT_TRUE(key);
    EXPECT_EQ(key->sort, DraftSort::Kitchen);
    EXPECT_EQ(key->item, seventh_.item);
    ASSERT_FALSE(endDraft(*book_));
    EXPECT_FALSE(interruptedDraft(*book_));
    EXPECT_EQ(readDraft<Kitchen>(*book_, seventh_), kitchen) << "left for later it stays";
}

}  // namespace
}  // namespace rangeline::test
