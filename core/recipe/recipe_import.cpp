#include "recipe/recipe_import.h"

#include <QJsonDocument>

#include "exchange/lesson_file.h"
#include "exchange/parse_json.h"
#include "recipe/dish_maker.h"
#include "recipe/linked_data.h"
#include "recipe/vocabulary.h"
#include "recipe/web_page.h"

namespace rangeline {
namespace {

constexpr std::size_t mostRecipes = 50;

bool looksLikeHtml(std::string_view bytes) {
    const std::size_t first = bytes.find_first_not_of(" \t\r\n");
    return bytes.starts_with("\xEF\xBB\xBF<") ||
           (first != std::string_view::npos && bytes[first] == '<');
}

/// Without the marks of comments and of character data that pages put around scripts.
std::string_view bareScript(std::string_view script) {
    for (const std::string_view mark : {"//<![CDATA[", "<![CDATA[", "<!--"}) {
        const std::size_t at = script.find(mark);
        if (at != std::string_view::npos && at == script.find_first_not_of(" \t\r\n")) {
            script.remove_prefix(at + mark.size());
        }
    }
    for (const std::string_view mark : {"//]]>", "]]>", "-->"}) {
        const std::size_t end = script.find_last_not_of(" \t\r\n");
        if (end != std::string_view::npos && script.substr(0, end + 1).ends_with(mark)) {
            script.remove_suffix(script.size() - (end + 1 - mark.size()));
        }
    }
    return script;
}

}  // namespace

Result<std::vector<ImportedRecipe>, Fault> readRecipes(std::string_view bytes) {
    if (bytes.size() > largestLessonFile) {
        return Fault{FaultCode::TooLarge,
                     {},
                     {std::to_string(bytes.size()), std::to_string(largestLessonFile)}};
    }
    const std::vector<std::string> scripts =
        looksLikeHtml(bytes) ? linkedDataIn(bytes) : std::vector{std::string(bytes)};
    std::vector<ImportedRecipe> recipes;
    std::optional<Fault> first;
    for (const std::string& script : scripts) {
        const auto document = parseJson(bareScript(script));
        if (!document.ok()) {
            first = first ? first : document.error();
            continue;
        }
        const QJsonDocument& json = document.value();
        const LinkedData data(json.isArray() ? QJsonValue(json.array()) : json.object());
        for (const QJsonObject& recipe :
             objectsOfType(data.plain(), "Recipe", mostRecipes - recipes.size())) {
            recipes.push_back(makeDish(data.joined(recipe)));
        }
    }
    if (recipes.empty() && first) {
        return *std::move(first);
    }
    return recipes;
}

}  // namespace rangeline
