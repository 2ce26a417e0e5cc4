#include "recipe/cooking_verbs.h"

#include <algorithm>
#include <array>
#include <utility>

namespace rangeline {
namespace {

using enum DoneOn;
using enum Attention;

constexpr std::array verbs{
    CookingVerb{"bake", "bake", Oven, Away, "baking-dish"},
    CookingVerb{"roast", "roast", Oven, Away, "sheet"},
    CookingVerb{"broil", "broil", Oven, Watch, "sheet", OvenMode::Broil},
    CookingVerb{"gratinate", "gratinate", Oven, Watch, "baking-dish"},
    CookingVerb{"simmer", "simmer", Burner, Watch, "saucepan"},
    CookingVerb{"boil", "boil", Burner, Watch, "pot"},
    CookingVerb{"poach", "poach", Burner, Watch, "saucepan"},
    CookingVerb{"blanch", "blanch", Burner, Hands, "pot"},
    CookingVerb{"steam", "steam", Burner, Watch, "pot"},
    CookingVerb{"braise", "braise", Burner, Away, "pot"},
    CookingVerb{"saute", "saute", Burner, Hands, "saute-pan"},
    CookingVerb{"sauté", "saute", Burner, Hands, "saute-pan"},
    CookingVerb{"sweat", "sweat", Burner, Watch, "saute-pan"},
    CookingVerb{"caramelize", "caramelize", Burner, Watch, "saute-pan"},
    CookingVerb{"fry", "pan-fry", Burner, Hands, "saute-pan"},
    CookingVerb{"pan-fry", "pan-fry", Burner, Hands, "saute-pan"},
    CookingVerb{"deep-fry", "deep-fry", Burner, Hands, "pot"},
    CookingVerb{"stir-fry", "saute", Burner, Hands, "saute-pan"},
    CookingVerb{"sear", "sear", Burner, Hands, "saute-pan"},
    CookingVerb{"brown", "sear", Burner, Hands, "saute-pan"},
    CookingVerb{"char", "char", Burner, Hands, "saute-pan"},
    CookingVerb{"toast", "toast", Burner, Watch, "saute-pan"},
    CookingVerb{"render", "render", Burner, Watch, "saute-pan"},
    CookingVerb{"reduce", "reduce", Burner, Watch, "saute-pan"},
    CookingVerb{"glaze", "", Burner, Watch, "saute-pan"},
    CookingVerb{"deglaze", "", Burner, Hands, "saute-pan"},
    CookingVerb{"wilt", "", Burner, Hands, "saute-pan"},
    CookingVerb{"melt", "", Burner, Watch, "saucepan"},
    CookingVerb{"warm", "", Burner, Watch, "saucepan"},
    CookingVerb{"heat", "", Burner, Watch, "saute-pan"},
    CookingVerb{"cook", "", Burner, Watch, "saute-pan"},
    CookingVerb{"rest", "rest", Nothing, Away, ""},
    CookingVerb{"stand", "rest", Nothing, Away, ""},
    CookingVerb{"cool", "cool", Nothing, Away, ""},
    CookingVerb{"chill", "chill", FridgeShelf, Away, ""},
    CookingVerb{"refrigerate", "chill", FridgeShelf, Away, ""},
    CookingVerb{"marinate", "marinate", FridgeShelf, Away, ""},
    CookingVerb{"soak", "", Nothing, Away, "bowl"},
    CookingVerb{"rise", "", Nothing, Away, "bowl"},
    CookingVerb{"chop", "", Nothing, Hands, "board"},
    CookingVerb{"slice", "slice", Nothing, Hands, "board"},
    CookingVerb{"dice", "dice", Nothing, Hands, "board"},
    CookingVerb{"mince", "mince", Nothing, Hands, "board"},
    CookingVerb{"peel", "peel", Nothing, Hands, "board"},
    CookingVerb{"trim", "", Nothing, Hands, "board"},
    CookingVerb{"cut", "", Nothing, Hands, "board"},
    CookingVerb{"mix", "", Nothing, Hands, "bowl"},
    CookingVerb{"whisk", "whisk", Nothing, Hands, "bowl"},
    CookingVerb{"stir", "", Nothing, Hands, ""},
    CookingVerb{"combine", "", Nothing, Hands, "bowl"},
    CookingVerb{"toss", "", Nothing, Hands, "bowl"},
    CookingVerb{"beat", "", Nothing, Hands, "bowl"},
    CookingVerb{"fold", "", Nothing, Hands, "bowl"},
    CookingVerb{"knead", "knead", Nothing, Hands, "board"},
};

using WareWord = std::pair<std::string_view, std::string_view>;

constexpr std::array wareWords{
    WareWord{"skillet", "saute-pan"}, WareWord{"pan", "saute-pan"},
    WareWord{"saucepan", "saucepan"}, WareWord{"pot", "pot"},
    WareWord{"stockpot", "pot"},      WareWord{"sheet", "sheet"},
    WareWord{"tray", "sheet"},        WareWord{"dish", "baking-dish"},
    WareWord{"casserole", "pot"},     WareWord{"tin", "baking-dish"},
    WareWord{"bowl", "bowl"},         WareWord{"board", "board"},
};

}  // namespace

std::span<const CookingVerb> cookingVerbs() {
    return verbs;
}

const CookingVerb* findCookingVerb(std::string_view word) {
    const auto* found = std::ranges::find(verbs, word, &CookingVerb::word);
    return found == verbs.end() ? nullptr : found;
}

bool beginsPlating(std::string_view word) {
    return word == "plate" || word == "serve";
}

std::string_view wareNamed(std::string_view word) {
    const auto* found = std::ranges::find(wareWords, word, &WareWord::first);
    return found == wareWords.end() ? std::string_view() : found->second;
}

}  // namespace rangeline
