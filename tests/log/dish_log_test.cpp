// What the log of a book says of a dish, also where its ids are others in the lesson.

#include "log/dish_log.h"

#include <gmock/gmock.h>

#include <QTemporaryDir>

#include "book/library.h"
#include "book/versions.h"
#include "model/dish_copy.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

class DishLogOf : public ::testing::Test {
  protected:
    void SetUp() override {
        auto made = Book::create(folder_.filePath("book.rangeline").toStdString());
        ASSERT_TRUE(made.ok());
        book_ = std::move(made.value());
        ASSERT_FALSE(book_->verify());
        builder_.cook("bo", 200);
        builder_.step("chop", {hands(10_min)});
        builder_.step("simmer", {hands(2_min), away(18_min)});
        builder_.lesson.servings.front().covers = 4;
    }
    Dish& dish() { return builder_.lesson.servings.front().dish; }
    ItemId addToBook(const Dish& wanted) {
        const auto added = addDish(*book_, wanted);
        EXPECT_TRUE(added.ok());
        return added.ok() ? added.value() : ItemId{};
    }
    ItemId addLessonOf(const Lesson& lesson, const std::vector<std::optional<ItemId>>& dishes) {
        const auto added = addLesson(*book_, lesson, {{}, dishes});
        EXPECT_TRUE(added.ok());
        return added.ok() ? added.value() : ItemId{};
    }
    void log(const std::string& day, std::optional<ItemId> lesson, const std::string& dishId,
             const std::string& step, const std::string& cook, Duration took) {
        ASSERT_FALSE(
            addToLog(*book_, {{day, lesson, dishId, step, cook, 4, took, took}}).has_value());
    }
    std::vector<Duration> tookOf(ItemId item, const std::string& step) {
        auto read = dishLog(*book_, item);
        EXPECT_TRUE(read.ok());
        std::vector<Duration> found;
        for (const Logging& logging : read.ok() ? read.value()[{step}] : std::vector<Logging>()) {
            found.push_back(logging.took);
        }
        return found;
    }

    QTemporaryDir folder_;
    std::unique_ptr<Book> book_;
    LessonBuilder builder_;
};

TEST_F(DishLogOf, AStepIsWhatItTookAndWhoCookedOnWhichNight) {
    const ItemId item = addToBook(dish());
    const ItemId lesson = addLessonOf(builder_.lesson, {item});
    log("2027-10-09", lesson, dish().id.text, "chop", "ann", 11_min);
    auto read = dishLog(*book_, item);
    ASSERT_TRUE(read.ok());
    const auto& loggings = read.value()[{"chop"}];
    ASSERT_EQ(loggings.size(), 1U);
    EXPECT_EQ(loggings[0].took, 11_min);
    EXPECT_EQ(loggings[0].cook, builder_.lesson.kitchen.cooks.front().name);
    EXPECT_EQ(loggings[0].night, "2027-10-09/" + std::to_string(lesson.number));
}

TEST_F(DishLogOf, ACookWhoIsSlowIsBroughtToTheTimeOfTheCard) {
    const ItemId item = addToBook(dish());
    const ItemId lesson = addLessonOf(builder_.lesson, {item});
    log("2027-10-09", lesson, dish().id.text, "chop", "bo", 24_min);
    log("2027-10-09", lesson, dish().id.text, "simmer", "bo", 22_min);
    EXPECT_THAT(tookOf(item, "chop"), ElementsAre(12_min));
    EXPECT_THAT(tookOf(item, "simmer"), ElementsAre(20_min)) << "two minutes of hands take four";
}

TEST_F(DishLogOf, ATimeForEachPieceIsThatOfOne) {
    Step& step = builder_.get("chop");
    step.timePer = TimePer::Piece;
    step.time = {1_min, 2_min, 3_min};
    step.piecesPerCover = Rational(2);
    step.piecesPerBatch = 4;
    step.segments = {{Attention::Hands, {}, true}};
    const ItemId item = addToBook(dish());
    const ItemId lesson = addLessonOf(builder_.lesson, {item});
    log("2027-10-09", lesson, dish().id.text, "chop", "ann", 10_min);  // one of two loads of four
    EXPECT_THAT(tookOf(item, "chop"), ElementsAre(150_s));
}

TEST_F(DishLogOf, ADishThatIsServedBesideOneOfTheSameIdsIsFoundThere) {
    const ItemId item = addToBook(dish());
    Dish otherDish = dish();
    otherDish.name = "Another";
    const ItemId other = addToBook(otherDish);
    Lesson lesson = builder_.lesson;
    lesson.servings.push_back({besideOthers(otherDish, lesson.servings), 4, {}});
    const Dish& served = lesson.servings.back().dish;
    ASSERT_NE(served.id, dish().id);
    const ItemId id = addLessonOf(lesson, {item, other});
    log("2027-10-09", id, dish().id.text, "chop", "ann", 11_min);
    log("2027-10-09", id, served.id.text, served.components[0].steps[0].id.text, "ann", 15_min);
    EXPECT_THAT(tookOf(item, "chop"), ElementsAre(11_min));
    EXPECT_THAT(tookOf(other, "chop"), ElementsAre(15_min));
}

TEST_F(DishLogOf, ALessonThatIsNotKnownCountsOnlyIfNoOtherDishHasTheId) {
    const ItemId item = addToBook(dish());
    log("2027-10-09", {}, dish().id.text, "chop", "ann", 11_min);
    EXPECT_THAT(tookOf(item, "chop"), ElementsAre(11_min));
    addToBook(dish());
    EXPECT_THAT(tookOf(item, "chop"), IsEmpty());
}

TEST_F(DishLogOf, AStepThatTheDishHasNoMoreIsLeftOut) {
    const ItemId item = addToBook(dish());
    const ItemId lesson = addLessonOf(builder_.lesson, {item});
    log("2027-10-09", lesson, dish().id.text, "gone", "ann", 11_min);
    auto read = dishLog(*book_, item);
    ASSERT_TRUE(read.ok());
    EXPECT_THAT(read.value(), IsEmpty());
}

}  // namespace
}  // namespace rangeline::test
