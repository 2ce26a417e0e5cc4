#include "safety/allergen_words.h"

#include <algorithm>
#include <cctype>
#include <span>
#include <string>

#include "safety/allergens.h"

namespace rangeline {
namespace {

struct Row {
    std::string_view allergen;
    std::string_view words;  ///< in the singular
    /// Next to one of the words they make something else of it.
    std::string_view unlessBeside = "";
};

std::span<const Row> rows() {
    static constexpr std::string_view notOfMilk =
        "coconut almond oat soy soya rice cashew peanut hazelnut nut cocoa apple pumpkin bean "
        "lettuce";
    static constexpr Row all[] = {
        {"milk", "milk cream butter", notOfMilk},
        {"milk",
         "buttermilk ghee cheese yogurt yoghurt whey casein curd custard parmesan cheddar "
         "mozzarella ricotta feta gruyere mascarpone creme bechamel"},
        {"eggs", "egg yolk mayonnaise aioli meringue custard hollandaise"},
        {"fish",
         "fish anchovy cod salmon tuna trout haddock halibut bass mackerel sardine herring sole "
         "hake tilapia snapper monkfish worcestershire bonito"},
        {"crustaceans", "shrimp prawn crab lobster crayfish langoustine", "apple"},
        {"molluscs", "mussel clam oyster scallop squid octopus cockle cuttlefish snail whelk",
         "mushroom"},
        {"tree-nuts",
         "almond hazelnut walnut cashew pecan pistachio macadamia marzipan praline frangipane"},
        {"tree-nuts", "nut", "pine"},
        {"peanuts", "peanut groundnut"},
        {"wheat",
         "wheat semolina couscous bulgur farro spelt seitan panko breadcrumb crouton brioche "
         "baguette pasta spaghetti macaroni lasagne orzo filo phyllo"},
        {"wheat", "flour bread noodle pastry",
         "rice corn maize chickpea gram almond coconut buckwheat potato tapioca oat glass"},
        {"soybeans", "soy soya soybean tofu miso tempeh edamame tamari"},
        {"wheat", "soy", "bean milk"},
        {"sesame", "sesame tahini halva hummus"},
        {"gluten", "barley rye oat malt beer ale stout"},
        {"celery", "celery celeriac"},
        {"mustard", "mustard"},
        {"sulphites", "wine sherry port madeira marsala vermouth champagne"},
        {"lupin", "lupin lupine"},
    };
    return all;
}

/// Letters of words in small ones; what is no ASCII stays as it is.
std::vector<std::string> wordsIn(std::string_view text) {
    std::vector<std::string> words(1);
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        if (std::isalpha(byte) != 0 || byte >= 0x80) {
            words.back() += byte >= 0x80 ? letter : static_cast<char>(std::tolower(byte));
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    return words;
}

bool endsAs(std::string_view word, std::string_view stem, std::string_view ending) {
    return word.size() == stem.size() + ending.size() && word.starts_with(stem) &&
           word.ends_with(ending);
}

/// In the singular or the plural.
bool isWord(std::string_view word, std::string_view singular) {
    return endsAs(word, singular, "") || endsAs(word, singular, "s") ||
           endsAs(word, singular, "es") ||
           (singular.ends_with('y') &&
            endsAs(word, singular.substr(0, singular.size() - 1), "ies"));
}

bool isOneOf(std::string_view word, std::string_view spaced) {
    while (!spaced.empty()) {
        const auto end = std::min(spaced.find(' '), spaced.size());
        if (isWord(word, spaced.substr(0, end))) {
            return true;
        }
        spaced.remove_prefix(std::min(end + 1, spaced.size()));
    }
    return false;
}

bool tells(const Row& row, const std::vector<std::string>& words, std::size_t at) {
    const bool before = at > 0 && isOneOf(words[at - 1], row.unlessBeside);
    const bool after = at + 1 < words.size() && isOneOf(words[at + 1], row.unlessBeside);
    return isOneOf(words[at], row.words) && !before && !after;
}

}  // namespace

std::vector<std::string_view> usuallyContains(std::string_view ingredientName) {
    const std::vector<std::string> words = wordsIn(ingredientName);
    std::vector<std::string_view> keys;
    for (const Allergen& allergen : allergens()) {
        const bool told = std::ranges::any_of(rows(), [&](const Row& row) {
            for (std::size_t at = 0; row.allergen == allergen.key && at < words.size(); ++at) {
                if (tells(row, words, at)) {
                    return true;
                }
            }
            return false;
        });
        if (told) {
            keys.push_back(allergen.key);
        }
    }
    return keys;
}

}  // namespace rangeline
