// Recipes in the shapes that the vocabulary (schema.org/Recipe, HowTo, HowToSection, HowToStep)
// allows. All of them are written for these tests.

#include "recipe/recipe_import.h"
#include "recipe/instruction.h"

#include <gmock/gmock.h>

#include "model/quantity_text.h"
#include "recipe/iso_duration.h"

namespace rangeline {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::IsEmpty;
using testing::SizeIs;

constexpr std::string_view body = R"("name": "Leek pot", "recipeYield": "Serves 6",
    "recipeIngredient": ["3 leeks, sliced", "2 tbsp butter"],
    "recipeInstructions": ["Slice the leeks, 5 minutes.",
                           "Simmer them in the butter for 20 minutes."])";

std::string recipe(std::string_view members, std::string_view type = R"("Recipe")") {
    return "{\"@context\": \"https://schema.org\", \"@type\": " + std::string(type) + ", " +
           std::string(members) + "}";
}

std::vector<ImportedRecipe> readAll(std::string_view bytes) {
    auto read = readRecipes(bytes);
    EXPECT_TRUE(read.ok());
    return read.ok() ? std::move(read.value()) : std::vector<ImportedRecipe>();
}

ImportedRecipe readOne(std::string_view bytes) {
    auto all = readAll(bytes);
    EXPECT_EQ(all.size(), 1U);
    return all.empty() ? ImportedRecipe() : std::move(all.front());
}

/// "component: step; step | component: step"
std::string stepsOf(const Dish& dish) {
    std::string all;
    for (const Component& component : dish.components) {
        all += (all.empty() ? "" : " | ") + component.name + ":";
        for (const Step& step : component.steps) {
            all += " " + step.name + ";";
        }
    }
    return all;
}

std::string stepsFor(std::string_view instructions) {
    return stepsOf(
        readOne(recipe("\"name\": \"Pot\", \"recipeInstructions\": " + std::string(instructions)))
            .dish);
}

TEST(RecipeImport, ReadsTheDishOfARecipe) {
    const ImportedRecipe read = readOne(recipe(body));
    EXPECT_EQ(read.dish.name, "Leek pot");
    EXPECT_EQ(read.dish.writtenFor, 6);
    ASSERT_THAT(read.dish.components, SizeIs(1));
    const Component& component = read.dish.components.front();
    ASSERT_THAT(component.ingredients, SizeIs(2));
    EXPECT_EQ(component.ingredients[0].cut, "sliced");
    EXPECT_EQ(toText(*component.ingredients[1].amount), "2 tbsp");
    ASSERT_THAT(component.steps, SizeIs(2));
    EXPECT_EQ(component.steps[1].technique, "simmer");
    EXPECT_EQ(component.steps[1].time.likely, Duration::minutes(20));
    EXPECT_EQ(component.steps[1].uses.at(0).step, component.steps[0].id);
    EXPECT_THAT(read.remarks, IsEmpty());
}

TEST(RecipeImport, FindsRecipesWhereverTheyStand) {
    const std::string bare = recipe(body);
    EXPECT_EQ(readOne("[" + bare + "]").dish.name, "Leek pot");
    EXPECT_EQ(readOne(R"({"@context": "https://schema.org", "@graph": [{"@type": "WebSite"}, )" +
                      bare + "]}")
                  .dish.name,
              "Leek pot");
    EXPECT_EQ(readOne(R"({"@type": "WebPage", "mainEntity": )" + bare + "}").dish.name, "Leek pot");
    EXPECT_EQ(readOne(recipe(body, R"(["NewsArticle", "Recipe"])")).dish.name, "Leek pot");
    EXPECT_EQ(readOne(recipe(body, R"("https://schema.org/Recipe")")).dish.name, "Leek pot");
    EXPECT_THAT(readAll("[" + bare + "," + bare + "]"), SizeIs(2));
    EXPECT_THAT(readAll(R"({"@type": "Event", "name": "Recipe"})"), IsEmpty());
}

TEST(RecipeImport, ReadsScriptsOfAPage) {
    const std::string page =
        "<!DOCTYPE html><html><head><title>x</title>"
        "<script>var a = '<script type=\"application/ld+json\">';</script>"
        "<script type=\"application/ld+json\">{ broken</script>"
        "<script type='application/ld+json'>\n//<![CDATA[\n" +
        recipe(body) + "\n//]]>\n</script></head><body><p>Unclosed<div></body></html>";
    EXPECT_EQ(readOne(page).dish.name, "Leek pot");
    EXPECT_THAT(readAll("<html><body>nothing</body></html>"), IsEmpty());
    const auto broken = readRecipes("<script type=\"application/ld+json\">{ broken</script>");
    ASSERT_FALSE(broken.ok());
    EXPECT_EQ(broken.error().code, FaultCode::NotJson);
}

TEST(RecipeImport, ReadsInstructionsInEveryShape) {
    EXPECT_EQ(stepsFor(R"("Chop. Fry it.\nServe.")"), "Pot: Chop; Fry it; Serve;");
    EXPECT_EQ(stepsFor(R"(["Chop", "Fry"])"), "Pot: Chop; Fry;");
    EXPECT_EQ(stepsFor(R"({"@type": "HowToStep", "text": "Chop"})"), "Pot: Chop;");
    EXPECT_EQ(stepsFor(R"([{"@type": "HowToStep", "name": "n", "text": "Chop. Fry"}])"),
              "Pot: Chop; Fry;");
    EXPECT_EQ(stepsFor(R"([{"@type": "HowToStep", "name": "Chop"}])"), "Pot: Chop;");
    EXPECT_EQ(stepsFor(R"({"@type": "ItemList", "itemListElement":
                          [{"@type": "ListItem", "item": {"@type": "HowToStep", "text": "Chop"}}]})"),
              "Pot: Chop;");
    EXPECT_EQ(stepsFor(R"([{"@type": "HowToStep", "itemListElement":
                           [{"@type": "HowToDirection", "text": "Chop"},
                            {"@type": "HowToTip", "text": "Mind the knife"}]}])"),
              "Pot: Chop; Mind the knife;");
    EXPECT_EQ(stepsFor(R"("<ol><li>Chop &amp; rinse</li><li>Fry 1&frac12; min</li></ol>")"),
              "Pot: Chop & rinse; Fry 1 1/2 min;");
    EXPECT_EQ(stepsFor(R"("<p>Chop the\n leeks</p>\n<p>Fry\nthem</p>")"),
              "Pot: Chop the leeks; Fry them;");
    EXPECT_EQ(stepsFor(R"("1. Chop\n2. Fry for\n10 minutes\n3. Serve")"),
              "Pot: Chop; Fry for 10 minutes; Serve;");
}

TEST(RecipeImport, GoesOnInTheSamePanWhereTheRecipeSaysSo) {
    const Dish dish = readOne(recipe(R"("name": "Leeks", "recipeInstructions":
        "Fry the leeks in a pot. Deglaze in the same pot.")"))
                          .dish;
    const std::vector<Step>& steps = dish.components.at(0).steps;
    ASSERT_EQ(steps.size(), 2U);
    ASSERT_EQ(steps[1].wares.size(), 1U);
    EXPECT_EQ(steps[1].wares[0].kind, "pot");
    EXPECT_EQ(steps[1].wares[0].carriesOn, steps[0].id);
}

TEST(RecipeImport, MakesAComponentOfEachSectionAndJoinsThemAtTheEnd) {
    const Dish dish = readOne(recipe(R"("name": "Pot", "recipeIngredient": ["2 eggs", "1 leek"],
        "recipeInstructions": [
            {"@type": "HowToSection", "name": "Sauce", "itemListElement":
                [{"@type": "HowToStep", "text": "Whisk the eggs"}]},
            {"@type": "HowToSection", "name": "Leeks", "itemListElement":
                [{"@type": "HowToStep", "text": "Fry the leek"},
                 {"@type": "HowToStep", "text": "Pour the sauce over"}]}])"))
                          .dish;
    EXPECT_EQ(stepsOf(dish), "Sauce: Whisk the eggs; | Leeks: Fry the leek; Pour the sauce over;");
    EXPECT_THAT(dish.components[1].steps[1].uses, SizeIs(2));
    EXPECT_EQ(dish.components[0].ingredients.at(0).name, "eggs");
    EXPECT_EQ(dish.components[1].ingredients.at(0).name, "leek");
}

TEST(RecipeImport, ReadsYieldsInEveryShape) {
    const auto yield = [](std::string_view value) {
        return readOne(recipe("\"name\": \"x\", \"recipeYield\": " + std::string(value)))
            .dish.writtenFor;
    };
    EXPECT_EQ(yield("8"), 8);
    EXPECT_EQ(yield("\"8\""), 8);
    EXPECT_EQ(yield("\"Serves 8 to 10\""), 8);
    EXPECT_EQ(yield("[\"8\", \"8 servings\"]"), 8);
    EXPECT_EQ(yield("{\"@type\": \"QuantitativeValue\", \"value\": 8}"), 8);
    EXPECT_EQ(yield("\"serves eight\""), 8);
    EXPECT_EQ(yield("-3"), 4);
    EXPECT_EQ(yield("0"), 4);
    EXPECT_EQ(yield("\"many\""), 4);
    EXPECT_EQ(yield("{}"), 4);
}

TEST(RecipeImport, OneOvenTemperatureSaidAnywhereServesAllThatBake) {
    const ImportedRecipe read = readOne(recipe(R"("name": "x", "recipeYield": 4,
        "recipeInstructions": ["Preheat the oven to 425°F.", "Bake it 10 minutes."])"));
    ASSERT_THAT(read.dish.components.at(0).steps, SizeIs(1));
    EXPECT_EQ(std::get<OvenHeat>(read.dish.components[0].steps[0].heat).lowest,
              Temperature::fahrenheit(425));
    EXPECT_THAT(read.remarks, ElementsAre(ImportRemark{ImportRemarkCode::OvenTurnedOn,
                                                       "Preheat the oven to 425°F"}));
}

TEST(RecipeImport, OfABakeHotterThanAHomeOvenAssumesTheUsualHeatAndTellsSo) {
    const ImportedRecipe read = readOne(recipe(R"("name": "x", "recipeYield": 4,
        "recipeInstructions": ["Bake at 800F for 20 min."])"));
    ASSERT_THAT(read.dish.components.at(0).steps, SizeIs(1));
    EXPECT_LE(std::get<OvenHeat>(read.dish.components[0].steps[0].heat).lowest, hottestOven);
    EXPECT_THAT(read.remarks,
                Contains(ImportRemark{ImportRemarkCode::OvenAssumed, "Bake at 800F for 20 min"}));
}

TEST(RecipeImport, TellsEverythingItAssumed) {
    const ImportedRecipe read = readOne(recipe(R"("name": "x", "totalTime": "soon",
        "recipeIngredient": ["2 cups 00 flour"],
        "recipeInstructions": ["Bake it.", "Fry 2 minutes, rest 5 minutes.", 7, {}])"));
    const auto has = [&](ImportRemarkCode code) {
        return testing::Value(read.remarks, Contains(Field(&ImportRemark::code, code)));
    };
    EXPECT_TRUE(has(ImportRemarkCode::LineNotUnderstood));
    EXPECT_TRUE(has(ImportRemarkCode::NoTime));
    EXPECT_TRUE(has(ImportRemarkCode::SeveralTimes));
    EXPECT_TRUE(has(ImportRemarkCode::OvenAssumed));
    EXPECT_TRUE(has(ImportRemarkCode::YieldNotUnderstood));
    EXPECT_TRUE(has(ImportRemarkCode::TimeNotUnderstood));
    EXPECT_TRUE(has(ImportRemarkCode::NothingUnderstood));
}

TEST(RecipeImport, OfWrongTypesEverywhereHarmsNothing) {
    for (const char* value : {"null", "true", "-1e300", "\"\"", "[]", "{}", "[[[[1]]]]",
                              R"({"@type": 5})", R"({"@type": "Recipe"})", R"("\u202e\u0001")"}) {
        std::string members = "\"x\": 1";
        for (const char* key :
             {"name", "recipeYield", "totalTime", "recipeIngredient", "recipeInstructions"}) {
            members += std::string(", \"") + key + "\": " + value;
        }
        SCOPED_TRACE(value);
        EXPECT_FALSE(readOne(recipe(members)).dish.components.empty());
    }
}

TEST(RecipeImport, PutsWhatIsNamedElsewhereInItsPlace) {
    const auto read = readOne(R"({"@context": "https://schema.org", "@graph": [
        {"@id": "#slice", "@type": "HowToStep", "text": "Slice the leeks."},
        {"@type": "Recipe", "name": "Pot", "recipeInstructions":
            [{"@id": "#slice"}, {"@id": "#nowhere"}, "Simmer them."]}]})");
    EXPECT_EQ(stepsOf(read.dish), "Pot: Slice the leeks; Simmer them;");
}

/// {"@id": "#1", "next": [{"@id": "#2"}, ...]} and so on, each object naming the one after it.
std::string graphOf(int objects, int timesEach) {
    std::string graph = R"({"@type": "Recipe", "name": "Pot", "recipeInstructions":
                            ["Slice the leeks.", {"@id": "#1"}]})";
    for (int i = 1; i <= objects; ++i) {
        std::string names;
        for (int time = 0; time < timesEach; ++time) {
            names += (time == 0 ? "" : ", ") + ("{\"@id\": \"#" + std::to_string(i + 1) + "\"}");
        }
        graph +=
            ", {\"@id\": \"#" + std::to_string(i) + "\", \"itemListElement\": [" + names + "]}";
    }
    return R"({"@context": "https://schema.org", "@graph": [)" + graph + "]}";
}

TEST(RecipeImport, OfNamesWithoutEndReadsWhatAPageCanHold) {
    EXPECT_EQ(readOne(graphOf(20'000, 1)).dish.name, "Pot");
    EXPECT_EQ(readOne(graphOf(60, 10)).dish.name, "Pot");
    const auto itself = readOne(R"({"@context": "https://schema.org", "@id": "#pot",
        "@type": "Recipe", "name": "Pot", "recipeInstructions":
            ["Slice the leeks.", {"@id": "#pot"}]})");
    EXPECT_EQ(itself.dish.name, "Pot");
}

TEST(RecipeImport, OfTooManyStepsSaysOnceWhereItStops) {
    std::string text = R"({"@context": "https://schema.org", "@type": "Recipe", "name": "Pot",
        "recipeYield": 4, "recipeInstructions": ")";
    for (int i = 1; i <= 502; ++i) {
        text += "Simmer pot " + std::to_string(i) + " 5 minutes. ";
    }
    const ImportedRecipe read = readOne(text + "\"}");
    ASSERT_EQ(read.dish.components.size(), 1U);
    EXPECT_EQ(read.dish.components.front().steps.size(), 500U);
    EXPECT_THAT(read.remarks,
                ElementsAre(ImportRemark{ImportRemarkCode::LeftOut, "Simmer pot 501 5 minutes"}));
}

TEST(RecipeImport, RefusesWhatIsTooLargeOrTooDeep) {
    const auto large = readRecipes(std::string(10'000'001, ' '));
    ASSERT_FALSE(large.ok());
    EXPECT_EQ(large.error().code, FaultCode::TooLarge);
    const auto deep = readRecipes(std::string(500, '[') + std::string(500, ']'));
    ASSERT_FALSE(deep.ok());
    EXPECT_EQ(deep.error().code, FaultCode::TooDeep);
    std::string page = "<html>";
    for (int i = 0; i < 100'000; ++i) {
        page += "<div>";
    }
    EXPECT_THAT(readAll(page), IsEmpty());
}

// ISO 8601-1:2019, 5.5.2; schema.org/Duration points there.
TEST(IsoDuration, IsReadInDaysToSeconds) {
    EXPECT_EQ(readIsoDuration("PT1H30M"), Duration::minutes(90));
    EXPECT_EQ(readIsoDuration("P0DT0H20M0S"), Duration::minutes(20));
    EXPECT_EQ(readIsoDuration("P1D"), Duration::hours(24));
    EXPECT_EQ(readIsoDuration("PT90M"), Duration::minutes(90));
    EXPECT_EQ(readIsoDuration("PT12.5S"), Duration::seconds(12));
    EXPECT_EQ(readIsoDuration("PT1.5H"), Duration::minutes(90));
    EXPECT_EQ(readIsoDuration("PT1H7,25M"), Duration::seconds(4035));
    EXPECT_EQ(readIsoDuration("P1W"), Duration::hours(168));
    for (const char* text :
         {"", "P", "PT", "1H", "PT1H1H", "PT1M1H", "P1Y", "P1M", "PT-5M", "PT1.5H30M",
          "PT100000000000S", "PT1", "P1DT8D", "PT9999999999999999999H"}) {
        EXPECT_FALSE(readIsoDuration(text)) << text;
    }
}

}  // namespace
}  // namespace rangeline
