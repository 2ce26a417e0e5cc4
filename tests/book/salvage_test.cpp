#include "book/salvage.h"

#include <fstream>
#include <iterator>

#include "book/book_support.h"
#include "book/connection.h"
#include "book/search.h"

namespace rangeline::test {
namespace {

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

class Salvaging : public BookFolder {
  protected:
    void SetUp() override {
        auto book = created(path());
        for (std::uint64_t seed = 0; seed < 20; ++seed) {
            lessons_.push_back(someLesson(seed));
            const ItemId id = take(addLesson(*book, lessons_.back()));
            take(addDish(*book, lessons_.back().servings.front().dish));
            take(keepVersion(*book, id, "first", "2027-10-09T16:30:00Z"));
        }
    }

    std::vector<Lesson> lessons_;
};

TEST_F(Salvaging, KeepsAllOfABookThatIsWhole) {
    const Salvaged salvaged = take(salvage(path(), path("new.rangeline")));
    EXPECT_EQ(salvaged.kept.size(), 40U);
    EXPECT_TRUE(salvaged.lost.empty());
    EXPECT_TRUE(salvaged.doubtful.empty());
    auto book = opened(path("new.rangeline"));
    for (std::size_t i = 0; i < lessons_.size(); ++i) {
        const ItemId id = salvaged.kept[2 * i].id;
        EXPECT_TRUE(take(book->lesson(id)) == lessons_[i]);
        EXPECT_EQ(take(versions(*book, id)).size(), 1U);
    }
}

TEST_F(Salvaging, KeepsWhatCanBeReadOfADamagedBookAndNamesTheRest) {
    std::string bytes = bytesOf(path());
    std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(bytes.size() / 2), 20'000, '\0');
    std::ofstream(path("damaged.rangeline"), std::ios::binary) << bytes;
    auto damaged = Book::open(path("damaged.rangeline"));
    EXPECT_TRUE(!damaged.ok() || damaged.value()->verify());
    const Salvaged salvaged = take(salvage(path("damaged.rangeline"), path("new.rangeline")));
    EXPECT_GT(salvaged.kept.size(), 5U);
    EXPECT_FALSE(salvaged.lost.empty());
    EXPECT_TRUE(bytesOf(path("damaged.rangeline")) == bytes);
    EXPECT_TRUE(opened(path("new.rangeline")));
}

/// Rows that the new book's own rules would refuse.
void breakRules(const std::string& path, const char* sql) {
    auto connection = take(Connection::open(path, Connection::Access::ReadWrite));
    ASSERT_TRUE(connection);
    connection->run("PRAGMA ignore_check_constraints = 1");
    connection->run(sql);
    EXPECT_FALSE(connection->takeFault());
}

TEST_F(Salvaging, GoesOnAfterAVersionOrARowOfTheLogThatCannotBeKept) {
    {
        auto book = opened(path());
        ASSERT_TRUE(book);
        ASSERT_FALSE(setSetting(*book, "terms", "of the cook"));
        LogEntry entry{"2027-10-09", {}, "Pot", "Sweat", "ann", 4, Duration::minutes(5), {}};
        ASSERT_FALSE(addToLog(*book, {entry, entry, entry}));
    }
    breakRules(path(), "UPDATE versions SET made = 'x' WHERE id = 1");
    breakRules(path(), "UPDATE cooking_log SET day = 'x' WHERE id = 2");
    const Salvaged salvaged = take(salvage(path(), path("new.rangeline")));
    EXPECT_EQ(salvaged.kept.size(), 40U);
    EXPECT_EQ(salvaged.lost.size(), 2U);
    auto book = opened(path("new.rangeline"));
    EXPECT_EQ(take(cookingLog(*book)).size(), 2U);
    EXPECT_EQ(take(setting(*book, "terms")), "of the cook");
}

TEST_F(Salvaging, NeverReplacesAFile) {
    EXPECT_EQ(salvage(path(), path()).error().code, BookFaultCode::AlreadyThere);
}

TEST_F(Salvaging, OfAFileThatIsNoBookNothingIsMade) {
    std::ofstream(path("text")) << std::string(5000, 'x');
    EXPECT_EQ(salvage(path("text"), path("new.rangeline")).error().code, BookFaultCode::NotABook);
    EXPECT_FALSE(std::ifstream(path("new.rangeline")).good());
}

class Searching : public BookFolder {};

TEST_F(Searching, FindsTheBeginningsOfWordsWhereverTheyStand) {
    auto book = created(path());
    Dish dish = someLesson(1).servings.front().dish;
    dish.name = "Braised leeks";
    dish.components.front().ingredients = {{"crème fraîche", {}, {}, {}, {}, {}}};
    Step& step = dish.components.front().steps.front();
    step.technique = "sear";
    step.cue = "until the edges brown";
    const ItemId id = take(addDish(*book, dish));
    Search search;
    ASSERT_FALSE(search.fill(*book));
    EXPECT_EQ(search.find("lee"), std::vector<Hit>({{id, FoundIn::Name, "Braised leeks"}}));
    EXPECT_EQ(search.find("CREME fr").front().in, FoundIn::Ingredient);
    EXPECT_EQ(search.find("edges").front().in, FoundIn::Cue);
    EXPECT_EQ(search.find("sear").front().in, FoundIn::Technique);
    EXPECT_TRUE(search.find("leeks edges").empty());
    EXPECT_TRUE(search.find("").empty());
    EXPECT_TRUE(search.find("\" OR text: * ^ NEAR(").empty());
    ASSERT_FALSE(setState(*book, id, ItemState::Deleted));
    ASSERT_FALSE(search.update(*book, take(book->items()).front()));
    EXPECT_TRUE(search.find("lee").empty());
}

}  // namespace
}  // namespace rangeline::test
