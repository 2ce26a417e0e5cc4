#include <QDir>
#include <fstream>

#include "book/book_support.h"
#include "book/connection.h"

namespace rangeline::test {
namespace {

TEST_F(BookFolder, KeepsALessonWithEveryFieldExactly) {
    const Lesson lesson = richLesson();
    ItemId id;
    {
        auto book = created(path());
        id = take(addLesson(*book, lesson));
    }
    auto book = opened(path());
    EXPECT_TRUE(take(book->lesson(id)) == lesson);
    EXPECT_EQ(take(book->items()),
              std::vector<Item>({{id, ItemKind::Lesson, lesson.head.name, ItemState::InUse}}));
}

TEST_F(BookFolder, KeepsKitchensAndDishesOfALessonExactly) {
    const Lesson lesson = richLesson();
    auto book = created(path());
    const ItemId kitchen = take(addKitchen(*book, lesson.kitchen));
    EXPECT_TRUE(take(book->kitchen(kitchen)) == lesson.kitchen);
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
        const Dish dish = someLesson(seed).servings.front().dish;
        EXPECT_TRUE(take(book->dish(take(addDish(*book, dish)))) == dish);
    }
}

TEST_F(BookFolder, CreatingNeverReplacesAFile) {
    created(path());
    const auto again = Book::create(path());
    ASSERT_FALSE(again.ok());
    EXPECT_EQ(again.error().code, BookFaultCode::AlreadyThere);
}

TEST_F(BookFolder, AcceptsNoEditBeforeItIsVerified) {
    created(path());
    auto book = take(Book::open(path()));
    EXPECT_EQ(book->state(), BookState::Shown);
    const auto added = addLesson(*book, richLesson());
    ASSERT_FALSE(added.ok());
    EXPECT_EQ(added.error().code, BookFaultCode::NotVerified);
    EXPECT_FALSE(book->verify());
    EXPECT_TRUE(addLesson(*book, richLesson()).ok());
}

TEST_F(BookFolder, VerifyingThatIsStoppedLeavesItShown) {
    addLesson(*created(path()), richLesson()).ok();
    auto book = take(Book::open(path()));
    EXPECT_EQ(book->verify([] { return true; })->code, BookFaultCode::NotVerified);
    EXPECT_EQ(book->state(), BookState::Shown);
    EXPECT_FALSE(book->verify());
}

TEST_F(BookFolder, UndoAndRedoGoOnAfterReopening) {
    Random random(seedOr(7));
    std::vector<Lesson> states{someLesson(1)};
    const ItemId id = take(addLesson(*created(path()), states.front()));
    for (int i = 0; i < 12; ++i) {
        auto book = opened(path());
        Lesson next = states.back();
        const SetPlacements edit = someMove(random, next);
        apply(next, edit);
        ASSERT_FALSE(applyEdit(*book, id, edit, "move " + std::to_string(i)));
        states.push_back(next);
    }
    for (auto state = states.rbegin() + 1; state != states.rend(); ++state) {
        auto book = opened(path());
        take(undo(*book, id));
        ASSERT_TRUE(take(book->lesson(id)) == *state);
    }
    auto book = opened(path());
    EXPECT_EQ(undo(*book, id).error().code, BookFaultCode::NothingToDo);
    EXPECT_EQ(take(undoSteps(*book, id)).redo.front(), "move 0");
    for (auto state = states.begin() + 1; state != states.end(); ++state) {
        const Replayed replayed = take(redo(*book, id));
        Lesson copy = *(state - 1);
        for (const Edit& edit : replayed.edits) {
            apply(copy, edit);
        }
        ASSERT_TRUE(copy == *state);
        ASSERT_TRUE(take(book->lesson(id)) == *state);
    }
    EXPECT_FALSE(book->verify());
}

TEST_F(BookFolder, EditsOfOneGestureAreOneStepOfUndo) {
    auto book = created(path());
    const Lesson lesson = someLesson(3);
    const ItemId id = take(addLesson(*book, lesson));
    Random random(seedOr(5));
    for (int i = 0; i < 5; ++i) {
        ASSERT_FALSE(applyEdit(*book, id, someMove(random, lesson), "drag", 9));
    }
    EXPECT_EQ(take(undoSteps(*book, id)).undo.size(), 1U);
    take(undo(*book, id));
    EXPECT_TRUE(take(book->lesson(id)) == lesson);
}

TEST_F(BookFolder, RefusesAnEditThatWouldMakeTheLessonUnusable) {
    auto book = created(path());
    const Lesson lesson = richLesson();
    const ItemId id = take(addLesson(*book, lesson));
    Head head = lesson.head;
    head.crew.clear();
    const auto fault = applyEdit(*book, id, SetHead{head}, "no crew");
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->code, BookFaultCode::Refused);
    EXPECT_TRUE(fault->value);
    EXPECT_TRUE(take(book->lesson(id)) == lesson);
}

TEST_F(BookFolder, ForgetsTheOldestUndoStepsBeyondTheBound) {
    auto book = created(path());
    const Lesson lesson = someLesson(3);
    const ItemId id = take(addLesson(*book, lesson));
    Random random(seedOr(5));
    for (std::int64_t i = 0; i < mostUndoSteps + 3; ++i) {
        ASSERT_FALSE(applyEdit(*book, id, someMove(random, lesson), std::to_string(i)));
    }
    const Steps steps = take(undoSteps(*book, id));
    EXPECT_EQ(steps.undo.size(), static_cast<std::size_t>(mostUndoSteps));
    EXPECT_EQ(steps.undo.front(), "3");
    EXPECT_FALSE(book->verify());
}

TEST_F(BookFolder, RestoresANamedVersionAsOneStepOfUndo) {
    auto book = created(path());
    const Lesson first = richLesson();
    const ItemId id = take(addLesson(*book, first));
    const auto version = take(keepVersion(*book, id, "before", "2027-10-09T16:30:00Z"));
    const Lesson other = someLesson(4);
    ASSERT_FALSE(applyEdits(*book, id,
                            {SetKitchen{other.kitchen}, SetHead{other.head},
                             SetServings{other.servings}, SetChoices{other.choices}},
                            "another lesson"));
    EXPECT_EQ(take(book->items()).front().name, other.head.name);
    ASSERT_FALSE(restoreVersion(*book, id, version));
    EXPECT_TRUE(take(book->lesson(id)) == first);
    take(undo(*book, id));
    EXPECT_TRUE(take(book->lesson(id)).head == other.head);
    EXPECT_EQ(take(versions(*book, id)),
              std::vector<Version>({{version, "before", "2027-10-09T16:30:00Z"}}));
    EXPECT_FALSE(book->verify());
}

TEST_F(BookFolder, LessonsSayWhatHasChangedInTheLibrarySinceAndTakeIt) {
    auto book = created(path());
    Lesson lesson = someLesson(6);
    const ItemId kitchen = take(addKitchen(*book, lesson.kitchen));
    const ItemId dish = take(addDish(*book, lesson.servings.front().dish));
    const ItemId id = take(addLesson(*book, lesson, {kitchen, {dish}}));
    EXPECT_FALSE(take(outdatedParts(*book, id)).kitchen);
    lesson.kitchen.name = "The other kitchen";
    lesson.servings.front().dish.perCover = "two slices";
    ASSERT_FALSE(replaceKitchen(*book, kitchen, lesson.kitchen));
    ASSERT_FALSE(replaceDish(*book, dish, lesson.servings.front().dish));
    const Outdated outdated = take(outdatedParts(*book, id));
    EXPECT_EQ(outdated.kitchen, kitchen);
    ASSERT_EQ(outdated.servings.size(), 1U);
    EXPECT_EQ(outdated.servings.front().dish, dish);
    ASSERT_FALSE(
        applyEdits(*book, id, {SetKitchen{lesson.kitchen}, SetServings{lesson.servings}}, "take"));
    EXPECT_FALSE(take(outdatedParts(*book, id)).kitchen);
    EXPECT_TRUE(take(outdatedParts(*book, id)).servings.empty());
    ASSERT_FALSE(setState(*book, dish, ItemState::Deleted));
    ASSERT_FALSE(purgeDeleted(*book));
    EXPECT_TRUE(take(book->lesson(id)).servings == lesson.servings);
    EXPECT_FALSE(book->verify());
}

TEST_F(BookFolder, DeletesBringsBackArchivesRenamesAndDoubles) {
    auto book = created(path());
    const Lesson lesson = someLesson(2);
    const ItemId id = take(addLesson(*book, lesson));
    ASSERT_FALSE(setState(*book, id, ItemState::Deleted));
    EXPECT_EQ(findItem(*book, ItemKind::Lesson, "Lesson 2").error().code,
              BookFaultCode::NoSuchItem);
    ASSERT_FALSE(setState(*book, id, ItemState::Archived));
    EXPECT_EQ(take(findItem(*book, ItemKind::Lesson, "Lesson 2")).id, id);
    ASSERT_FALSE(rename(*book, id, "Sunday"));
    const ItemId copy = take(duplicate(*book, id, "Sunday"));
    EXPECT_EQ(findItem(*book, ItemKind::Lesson, "Sunday").error().code,
              BookFaultCode::SeveralItems);
    EXPECT_EQ(take(findItem(*book, ItemKind::Lesson, "#" + std::to_string(copy.number))).id, copy);
    EXPECT_TRUE(take(book->lesson(copy)) == take(book->lesson(id)));
    const ItemId dish = take(addDish(*book, lesson.servings.front().dish));
    ASSERT_FALSE(rename(*book, dish, "Leeks"));
    EXPECT_EQ(take(book->dish(take(duplicate(*book, dish, "Leeks again")))).name, "Leeks again");
    EXPECT_FALSE(book->verify());
}

TEST_F(BookFolder, KeepsTheCookingLogAndSettings) {
    auto book = created(path());
    const ItemId id = take(addLesson(*book, someLesson(2)));
    std::vector<LogEntry> entries;
    for (int i = 0; i < 600; ++i) {
        entries.push_back({"2027-10-09", id, "dish", i % 2 == 0 ? "sear" : "rest", "ann", 4,
                           Duration::minutes(5), Duration::seconds(300 + i)});
    }
    ASSERT_FALSE(addToLog(*book, entries));
    ASSERT_FALSE(setSetting(*book, "units", "metric"));
    ASSERT_FALSE(setState(*book, id, ItemState::Deleted));
    ASSERT_FALSE(purgeDeleted(*book));
    book = nullptr;
    book = opened(path());
    EXPECT_EQ(take(setting(*book, "units")), "metric");
    EXPECT_EQ(take(setting(*book, "other")), "");
    EXPECT_EQ(take(cookingLog(*book, "sear")).size(), 300U);
    entries.back().lesson.reset();
    EXPECT_EQ(take(cookingLog(*book)).back(), entries.back());
    EXPECT_EQ(addToLog(*book, {{"9 October", {}, "", "sear", "", 4, {}, {}}})->code,
              BookFaultCode::Damaged);
}

TEST_F(BookFolder, LogsAServiceOnceThoughItsEndIsDoneAgain) {
    auto book = created(path());
    const std::vector<LogEntry> entries{
        {"2027-10-09", {}, "dish", "sear", "ann", 4, Duration::minutes(5), Duration::minutes(6)}};
    ASSERT_FALSE(addServiceToLog(*book, "first", entries));
    ASSERT_FALSE(addServiceToLog(*book, "first", entries));
    EXPECT_EQ(take(cookingLog(*book)).size(), 1U);
    book = nullptr;
    book = opened(path());
    ASSERT_FALSE(addServiceToLog(*book, "first", entries));
    ASSERT_FALSE(addServiceToLog(*book, "second", entries));
    EXPECT_EQ(take(cookingLog(*book)).size(), 2U);
    EXPECT_FALSE(book->verify());
}

TEST_F(BookFolder, AClosedBookIsOneFile) {
    take(addLesson(*created(path()), richLesson()));
    EXPECT_EQ(QDir(folder_.path()).entryList(QDir::Files | QDir::Hidden),
              QStringList("book.rangeline"));
}

TEST_F(BookFolder, WithAVersionInATimeZoneThatIsNotKnownHereIsWhole) {
    Lesson lesson = richLesson();
    lesson.head.zone = "Nowhere/AtAll";
    {
        auto book = created(path());
        const ItemId id = take(addLesson(*book, lesson));
        take(keepVersion(*book, id, "first", "2027-10-09T16:30:00Z"));
    }
    auto book = opened(path());
    ASSERT_TRUE(book);
    const ItemId id = take(book->items()).front().id;
    const auto version = take(versions(*book, id)).front();
    EXPECT_TRUE(take(versionLesson(*book, version.id)) == lesson);
}

TEST_F(BookFolder, FullOfUndoStepsForgetsTheOldestAndStaysWhole) {
    auto book = created(path());
    const Lesson lesson = someLesson(1);
    const ItemId old = take(addLesson(*book, lesson));
    const ItemId id = take(addLesson(*book, lesson));
    ASSERT_FALSE(applyEdit(*book, old, SetChoices{}, "first"));
    ASSERT_FALSE(book->write([&](Connection& connection, Book::Touched& touched) {
        Statement(connection,
                  "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i <= ?) "
                  "INSERT INTO journal(lesson, done, name, edits, seal) "
                  "SELECT lesson, done, name, edits, seal FROM n, (SELECT * FROM journal LIMIT 1)")
            .with(mostStepsInBook / 2)
            .run();
        touched.push_back(old);
    }));
    ASSERT_FALSE(applyEdit(*book, id, SetChoices{}, "edit"));
    EXPECT_LE(book->connection().number("SELECT count(*) FROM journal"), mostStepsInBook / 2);
    EXPECT_EQ(take(undoSteps(*book, id)).undo.size(), 1U);
    book = nullptr;
    EXPECT_TRUE(opened(path()));
}

TEST_F(BookFolder, ACopyOverALeftJournalIsNotTakenBackByIt) {
    auto book = created(path());
    take(addLesson(*book, richLesson()));
    std::ofstream(path("copy.rangeline-journal")) << std::string(600, 'j');
    ASSERT_FALSE(saveCopy(*book, path("copy.rangeline")));
    EXPECT_FALSE(std::ifstream(path("copy.rangeline-journal")).good());
    EXPECT_TRUE(opened(path("copy.rangeline")));
}

TEST_F(BookFolder, ACopyIsTheSameBook) {
    auto book = created(path());
    const Lesson lesson = richLesson();
    const ItemId id = take(addLesson(*book, lesson));
    ASSERT_FALSE(saveCopy(*book, path("copy.rangeline")));
    EXPECT_TRUE(take(opened(path("copy.rangeline"))->lesson(id)) == lesson);
    EXPECT_EQ(saveCopy(*book, path("nowhere/copy.rangeline"))->code, BookFaultCode::CannotOpen);
}

}  // namespace
}  // namespace rangeline::test
