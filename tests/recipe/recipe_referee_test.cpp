// A JSON-LD processor from elsewhere (Debian's python3-pyld) as a referee: what it reads in a file
// is what the import reads, and it knows every word of what the export writes.

#include <gmock/gmock.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>

#include "exchange/lesson_file.h"
#include "exchange/recipe_file.h"
#include "recipe/recipe_import.h"
#include "support/rich_lesson.h"
#include "support/run_program.h"

namespace rangeline::test {
namespace {

namespace fs = std::filesystem;

using testing::Contains;
using testing::IsEmpty;
using testing::Not;

using Lines = std::vector<std::string>;

class RecipeReferee : public testing::Test {
  protected:
    void SetUp() override {
        if (std::system("/usr/bin/python3 -c 'import pyld' >/dev/null 2>&1") != 0) {
            GTEST_SKIP() << "missing program: python3-pyld";
        }
        file_ =
            fs::path(testing::TempDir()) /
            (std::string(testing::UnitTest::GetInstance()->current_test_info()->name()) + ".json");
    }
    void TearDown() override { fs::remove(file_); }

    /// Lines such as "0 step Chop".
    Lines toldOf(const std::string& text) const {
        std::ofstream(file_, std::ios::binary) << text;
        return linesOf("/usr/bin/python3 '" RANGELINE_SOURCE_DIR
                       "/tests/recipe/judge_json_ld.py' '" +
                       file_.string() + "'");
    }

    fs::path file_;
};

/// What the judge tells with that word.
Lines only(const Lines& told, const std::string& word) {
    Lines found;
    const std::string start = "0 " + word + " ";
    for (const std::string& line : told) {
        if (line.starts_with(start)) {
            found.push_back(line.substr(start.size()));
        }
    }
    return found;
}

Lines namesOf(const std::vector<ImportedRecipe>& recipes) {
    Lines names;
    for (const ImportedRecipe& each : recipes) {
        names.push_back(each.dish.name);
    }
    return names;
}

Lines ingredientsOf(const std::vector<ImportedRecipe>& recipes) {
    Lines names;
    for (const ImportedRecipe& each : recipes) {
        for (const Component& component : each.dish.components) {
            for (const Ingredient& ingredient : component.ingredients) {
                names.push_back(ingredient.name);
            }
        }
    }
    return names;
}

Lines stepsOf(const std::vector<ImportedRecipe>& recipes) {
    Lines names;
    for (const ImportedRecipe& each : recipes) {
        for (const Component& component : each.dish.components) {
            for (const Step& step : component.steps) {
                names.push_back(step.name);
            }
        }
    }
    return names;
}

/// Ingredients that are names alone and instructions of one sentence, so that they can be compared
/// word for word. Each file says the same in another way.
constexpr const char* sayingTheSame[] = {
    R"({"@context": "https://schema.org", "@type": "Recipe", "name": "Leek pot",
        "recipeYield": 6, "totalTime": "PT1H30M", "recipeIngredient": ["leeks", "butter"],
        "recipeInstructions": ["Slice the leeks", "Simmer them"]})",
    R"({"@context": "http://schema.org/", "@graph": [{"@type": "WebSite", "name": "Pots"},
        {"@type": ["NewsArticle", "Recipe"], "name": "Leek pot", "recipeYield": "6",
         "totalTime": "PT90M", "recipeIngredient": ["leeks", "butter"], "recipeInstructions":
            [{"@type": "HowToStep", "text": "Slice the leeks"},
             {"@type": "HowToStep", "name": "Simmer them"}]}]})",
    R"([{"@context": "https://schema.org", "type": "Recipe", "name": {"@value": "Leek pot"},
         "recipeYield": ["6", "6 servings"], "totalTime": "PT1H30M",
         "recipeIngredient": {"@list": ["leeks", "butter"]}, "recipeInstructions":
            {"@type": "ItemList", "itemListElement":
                [{"@type": "ListItem", "item": {"@type": "HowToStep", "text": "Slice the leeks"}},
                 {"@type": "ListItem", "item": {"@type": "HowToStep", "text": "Simmer them"}}]}}])",
    R"({"@context": {"s": "https://schema.org/"}, "@type": "s:Recipe", "s:name": "Leek pot",
        "s:recipeYield": {"@type": "s:QuantitativeValue", "s:value": 6}, "s:totalTime": "PT1H30M",
        "s:recipeIngredient": ["leeks", "butter"],
        "s:recipeInstructions": [{"@type": "s:HowToStep", "s:text": "Slice the leeks"},
                                 {"@type": "s:HowToStep", "s:text": "Simmer them"}]})",
    R"({"@context": {"@vocab": "http://schema.org/", "title": "name",
                     "method": {"@id": "http://schema.org/recipeInstructions"}},
        "@type": "Recipe", "title": "Leek pot", "recipeYield": "6", "totalTime": "PT1H30M",
        "recipeIngredient": ["leeks", "butter"], "method": ["Slice the leeks", "Simmer them"]})",
    R"({"@type": "https://schema.org/Recipe", "https://schema.org/name": "Leek pot",
        "https://schema.org/recipeYield": "6", "https://schema.org/totalTime": "PT1H30M",
        "https://schema.org/recipeIngredient": [{"@value": "leeks"}, {"@value": "butter"}],
        "https://schema.org/recipeInstructions": {"@list": ["Slice the leeks", "Simmer them"]}})",
    R"({"@context": "https://schema.org", "@graph": [
        {"@id": "#second", "@type": "HowToStep", "text": "Simmer them"},
        {"@type": "WebPage", "name": "Pots", "mainEntity": {"@id": "#pot"}},
        {"@id": "#pot", "@type": "Recipe", "name": "Leek pot", "recipeYield": "6",
         "totalTime": "PT1H30M", "recipeIngredient": ["leeks", "butter"],
         "mainEntityOfPage": {"@id": "#pot"},
         "recipeInstructions": [{"@id": "#first"}, {"@id": "#second"}]},
        {"@id": "#first", "@type": "HowToStep", "text": "Slice the leeks"}]})"};

TEST_F(RecipeReferee, ReadsWhatTheImportReadsHoweverItIsSaid) {
    for (const char* file : sayingTheSame) {
        SCOPED_TRACE(file);
        const Lines told = toldOf(file);
        ASSERT_THAT(told, Not(IsEmpty()));
        const auto read = readRecipes(file);
        ASSERT_TRUE(read.ok());
        EXPECT_EQ(only(told, "recipe"), namesOf(read.value()));
        EXPECT_EQ(only(told, "ingredient"), ingredientsOf(read.value()));
        EXPECT_EQ(only(told, "step"), stepsOf(read.value()));
        ASSERT_FALSE(read.value().empty());
        EXPECT_EQ(only(told, "yield"), Lines{std::to_string(read.value()[0].dish.writtenFor)});
        EXPECT_EQ(read.value()[0].total, Duration::minutes(90));
    }
}

TEST_F(RecipeReferee, ReadsSectionsAsTheImportDoes) {
    const char* file = R"({"@context": "https://schema.org", "@type": "Recipe", "name": "Pot",
        "recipeIngredient": [], "recipeInstructions": [
            {"@type": "HowToSection", "name": "Sauce", "itemListElement":
                [{"@type": "HowToStep", "text": "Whisk the eggs"}]},
            {"@type": "HowToSection", "name": "Leeks", "itemListElement":
                [{"@type": "HowToStep", "itemListElement":
                    [{"@type": "HowToDirection", "text": "Fry the leek"},
                     {"@type": "HowToTip", "text": "Mind the heat"}]}]}]})";
    const Lines told = toldOf(file);
    const auto read = readRecipes(file);
    ASSERT_TRUE(read.ok());
    ASSERT_EQ(read.value().size(), 1U);
    Lines sections;
    for (const Component& component : read.value()[0].dish.components) {
        sections.push_back(component.name);
    }
    EXPECT_EQ(only(told, "section"), sections);
    EXPECT_EQ(only(told, "step"), stepsOf(read.value()));
    EXPECT_THAT(only(told, "fault"), IsEmpty());
}

/// Every sample and a lesson with a value in every field.
std::vector<Lesson> lessons() {
    std::vector<Lesson> all{richLesson()};
    for (const auto& entry : fs::directory_iterator(RANGELINE_SOURCE_DIR "/sample-data")) {
        if (entry.path().extension() == ".json") {
            auto lesson = loadLesson(entry.path().string());
            EXPECT_TRUE(lesson.ok()) << entry.path();
            all.push_back(std::move(lesson.value()));
        }
    }
    return all;
}

/// In linked data a value said twice is said once: two components' "salt to taste" are one.
std::size_t differentIngredients(const std::string& written) {
    std::size_t count = 0;
    const auto file = QJsonDocument::fromJson(QByteArray::fromStdString(written)).object();
    const QJsonArray recipes =
        file.contains("@graph") ? file["@graph"].toArray() : QJsonArray{file};
    for (const QJsonValue& recipe : recipes) {
        std::set<QString> lines;
        for (const QJsonValue& line : recipe["recipeIngredient"].toArray()) {
            lines.insert(line.toString());
        }
        count += lines.size();
    }
    return count;
}

TEST_F(RecipeReferee, KnowsEveryWordThatTheExportWrites) {
    for (const Lesson& lesson : lessons()) {
        SCOPED_TRACE(lesson.head.name);
        const std::string written = writeRecipes(lesson);
        const Lines told = toldOf(written);
        EXPECT_THAT(only(told, "fault"), IsEmpty());
        Lines names;
        Lines sections;
        std::size_t steps = 0;
        for (const Serving& serving : lesson.servings) {
            names.push_back(serving.dish.name);
            for (const Component& component : serving.dish.components) {
                steps += component.steps.size();
                if (!component.steps.empty()) {
                    sections.push_back(component.name);
                }
            }
        }
        EXPECT_THAT(only(told, "recipe"), testing::UnorderedElementsAreArray(names));
        EXPECT_THAT(only(told, "section"), testing::UnorderedElementsAreArray(sections));
        EXPECT_EQ(only(told, "ingredient").size(), differentIngredients(written));
        EXPECT_EQ(only(told, "step").size(), steps);
        EXPECT_EQ(only(told, "time").size(), 2 * names.size());
    }
}

TEST_F(RecipeReferee, FindsWhatTheVocabularyLacks) {
    const Lines told = toldOf(R"({"@context": "https://schema.org", "@type": "Recipe", "name": "x",
        "cookTime": "an hour", "oven": 425, "recipeInstructions": [{"@type": "Pan", "text": "y"}]})");
    EXPECT_THAT(only(told, "fault"), Contains("duration an hour"));
    EXPECT_THAT(only(told, "fault"), Contains("property oven"));
    EXPECT_THAT(only(told, "fault"), Contains("type Pan"));
}

}  // namespace
}  // namespace rangeline::test
