// What the setup of printing changes on the sheets.

#include <gmock/gmock.h>

#include "print/print_job.h"
#include "print/print_lessons.h"

namespace rangeline {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

std::vector<std::string> textsOf(const SheetPages& sheet) {
    std::vector<std::string> texts;
    for (const Picture& page : sheet.pages) {
        for (const Primitive& primitive : page) {
            if (const auto* text = std::get_if<TextShape>(&primitive.shape)) {
                texts.push_back(text->text.toStdString());
            }
        }
    }
    return texts;
}

SheetPages make(std::string_view key, const test::Prepared& lesson, SheetSetup setup = {}) {
    const Sheet* sheet = findSheet(key);
    setup.layout.orientation = sheet->orientation;
    return sheet->make(lesson.input(), setup);
}

/// One component with these ingredients, for one cover.
std::unique_ptr<test::Prepared> withIngredients(std::vector<Ingredient> ingredients) {
    Lesson lesson = test::placedLesson(6)->lesson();
    lesson.servings.front().covers = lesson.servings.front().dish.writtenFor;
    for (Component& component : lesson.servings.front().dish.components) {
        component.ingredients.clear();
    }
    lesson.servings.front().dish.components.front().ingredients = std::move(ingredients);
    return std::make_unique<test::Prepared>(std::move(lesson));
}

Ingredient ingredient(const char* name, Rational amount, const char* unit, const char* kind = "",
                      int usable = 100) {
    return {name, Amount{amount, amount, unit}, "", "", {}, Scaling::WithCovers, kind, usable};
}

TEST(OrderOfWork, OfOneCookHasNoPageOfAnother) {
    const auto lesson = test::placedLesson(12);
    const Cook& cook = lesson->lesson().kitchen.cooks.front();
    const auto all = textsOf(make("order", *lesson));
    const auto one = textsOf(make("order", *lesson, {{}, cook.id}));
    EXPECT_THAT(all, Contains("Order of work: everyone"));
    EXPECT_THAT(one, Not(Contains("Order of work: everyone")));
    EXPECT_THAT(one, Contains("Order of work: " + cook.name));
    EXPECT_THAT(one, Not(Contains("Order of work: " + lesson->lesson().kitchen.cooks.back().name)));
}

TEST(Shopping, AddsUpMeasuresOfOneFamilyAndGoesByKind) {
    const auto lesson = withIngredients(
        {ingredient("butter", {3}, "tbsp", "dairy"), ingredient("butter", {5}, "tbsp", "dairy"),
         ingredient("leeks", {4}, "", "vegetables"), ingredient("ice", {2}, "cups")});
    const auto texts = textsOf(make("shopping", *lesson));
    EXPECT_THAT(texts, Contains("½ cup (about 4 oz)"));
    const auto at = [&](const char* text) { return std::ranges::find(texts, text); };
    EXPECT_LT(at("Dairy"), at("Vegetables"));
    EXPECT_LT(at("Vegetables"), at("Other"));
    EXPECT_NE(at("Other"), texts.end());
}

TEST(Shopping, BuysMoreOfWhatIsTrimmed) {
    const auto lesson = withIngredients({ingredient("squash", {3}, "lb", "", 75)});
    EXPECT_THAT(textsOf(make("shopping", *lesson)), Contains("4 lb"));
    EXPECT_THAT(textsOf(make("mise-en-place", *lesson)), Contains("3 lb"));
}

TEST(Shopping, CountsTheClasses) {
    const auto lesson = withIngredients({ingredient("leeks", {4}, "")});
    const auto texts = textsOf(make("shopping", *lesson, {{}, {}, 3}));
    EXPECT_THAT(texts, Contains("12"));
    EXPECT_THAT(texts, Contains("4"));
    EXPECT_THAT(texts, Contains(HasSubstr("3 classes")));
}

TEST(Shopping, BuysForATwinThatIsSwappedIn) {
    auto lesson = withIngredients({ingredient("leeks", {4}, "")})->lesson();
    lesson.choices.swapIns = {
        {lesson.servings.front().dish.components.front().steps.front().id, {}}};
    EXPECT_THAT(textsOf(make("shopping", test::Prepared(lesson))), Contains("8"));
}

TEST(DoneAhead, SaysWhenItIsMadeHowItIsKeptAndWhatIsLeft) {
    Lesson lesson = test::placedLesson(6)->lesson();
    Step& step = lesson.servings.front().dish.components.front().steps.front();
    step.after.cold = Duration::hours(24);
    step.after.mayBeDoneAhead = true;
    const auto before = textsOf(make("done-ahead", test::Prepared(lesson)));
    EXPECT_THAT(before, Contains("Could be made before as well"));
    lesson.choices.doneAhead = {{step.id, Duration::hours(3), Storage::Cold, {}, {}}};
    lesson.placements.erase(StepKey{step.id, 0, 0});
    const auto after = textsOf(make("done-ahead", test::Prepared(lesson)));
    EXPECT_THAT(after, Contains("Made before the lesson"));
    EXPECT_THAT(after, Contains("3:30 PM"));
    EXPECT_THAT(after, Contains("24 h"));
    EXPECT_THAT(after, Not(Contains("Could be made before as well")));
}

TEST(Range, DrawsTheMomentsInOrderOfTime) {
    const auto lesson = test::placedLesson(60);
    const SheetPages sheet = make("range", *lesson);
    ASSERT_FALSE(sheet.pages.empty());
    EXPECT_THAT(textsOf(sheet), Contains(HasSubstr("min to plating")));
}

TEST(Overview, IsOnePageHoweverLongTheLesson) {
    for (const int steps : {3, 60, 300}) {
        EXPECT_EQ(make("overview", *test::placedLesson(steps)).pages.size(), 1U) << steps;
    }
}

TEST(WallTimeline, IsLargerThanTheStationTimelineAndSaysWhatJoins) {
    const auto lesson = test::placedLesson(60);
    const SheetPages wall = make("wall", *lesson);
    EXPECT_GE(wall.style.fontSize(FontRole::Block), 18);
    EXPECT_GT(wall.pages.size(), 1U);
    EXPECT_THAT(textsOf(wall), Contains(HasSubstr("is glued here")));
    EXPECT_THAT(textsOf(wall), Contains(HasSubstr("cut here")));
}

TEST(MakingSheets, StopsWhenToldSo) {
    const auto lesson = test::placedLesson(6);
    const std::vector<const Sheet*> chosen{findSheet("timeline"), findSheet("order"),
                                           findSheet("plating")};
    const auto made = makeSheets(lesson->input(), chosen, {}, [](int done) { return done < 2; });
    EXPECT_EQ(made.size(), 2U);
    EXPECT_EQ(makeSheets(lesson->input(), chosen, {}).size(), 3U);
}

}  // namespace
}  // namespace rangeline
