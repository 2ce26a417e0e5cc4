#include "recipe/ingredient_line.h"

#include <algorithm>

#include "recipe/ingredient_amount.h"
#include "recipe/plain_words.h"
#include "recipe/recipe_number.h"

namespace rangeline {
namespace {

constexpr std::size_t longestLine = 1000;

constexpr std::string_view cutWords =
    "chopped diced dice dices sliced slices minced grated shredded julienned julienne brunoise "
    "cubed cubes crushed torn halved halves quartered quarters cut ground mashed smashed "
    "chiffonade batonnet matchsticks wedges rounds strips shaved crumbled crumbs slivered pounded "
    "segmented zested";
/// What is said of a thing before it is named: "boneless, skinless chicken".
constexpr std::string_view qualities =
    "boneless skinless bone-in skin-on unsalted salted fresh dried ripe frozen raw cooked lean "
    "organic low-sodium low-fat full-fat plain whole firm large small medium cold hot warm";
constexpr std::string_view cutManners =
    "finely coarsely roughly thinly thickly freshly very lightly";

void add(std::string& text, std::string_view more, std::string_view between = ", ") {
    more = trimmed(more);
    if (!more.empty()) {
        text += text.empty() ? std::string_view() : between;
        text += more;
    }
}

std::string_view bare(std::string_view word) {
    while (word.ends_with(',') || word.ends_with('.') || word.ends_with(';')) {
        word.remove_suffix(1);
    }
    return word;
}

bool hasCutWord(std::string_view text) {
    const auto words = wordsOf(text);
    return std::ranges::any_of(words,
                               [](std::string_view word) { return isOneOf(bare(word), cutWords); });
}

class LineReader {
  public:
    IngredientLine read(std::string_view text) {
        const std::string plain = plainLine(text);
        std::string outside = withoutParentheses(plain);
        std::string_view rest = outside;
        const std::string part = takePartOf(rest);
        if (const auto taken = takeAmount(rest)) {
            ingredient().amount = taken->amount;
            addNote(taken->note);
        }
        readThing(rest);
        addNote(part);
        for (const std::string& aside : asides_) {
            addNote(aside);
        }
        judge(plain);
        return std::move(read_);
    }

  private:
    Ingredient& ingredient() { return read_.ingredient; }
    void addNote(std::string_view note) { add(ingredient().note, note); }

    /// What stands in parentheses becomes asides; one that is not closed stays where it is.
    std::string withoutParentheses(std::string_view line) {
        std::string outside;
        int depth = 0;
        std::size_t opened = 0;
        for (std::size_t i = 0; i < line.size(); ++i) {
            if (line[i] == '(') {
                opened = depth++ == 0 ? i : opened;
            } else if (line[i] == ')' && depth > 0) {
                if (--depth == 0) {
                    asides_.emplace_back(trimmed(line.substr(opened + 1, i - opened - 1)));
                }
            } else if (depth == 0) {
                outside += line[i];
            }
        }
        if (depth > 0) {
            outside += line.substr(opened);
            read_.unread.emplace_back(line.substr(opened));
        }
        return plainLine(outside);
    }

    /// "zest and juice" of "zest and juice of 1 lemon": then the lemon is what is bought.
    static std::string takePartOf(std::string_view& line) {
        constexpr std::string_view parts = "zest juice rind peel and grated finely the";
        std::string_view rest = line;
        std::string part;
        while (isOneOf(firstWord(rest), parts)) {
            add(part, firstWord(rest), " ");
            dropWord(rest);
        }
        if (part.empty() || !isOneOf(firstWord(rest), "of")) {
            return {};
        }
        dropWord(rest);
        std::string_view number = rest;
        if (!takeNumber(number)) {
            return {};
        }
        line = rest;
        return part;
    }

    /// The thing, then what is said of it after commas.
    void readThing(std::string_view rest) {
        std::string_view thing = takePart(rest);
        while (!rest.empty() && isOnlyQuality(thing)) {
            addNote(thing);
            thing = takePart(rest);
        }
        while (isOneOf(firstWord(thing), sizesOfThings) && firstWord(thing).size() < thing.size()) {
            addNote(firstWord(thing));
            dropWord(thing);
        }
        takeCutBefore(thing);
        ingredient().name = takeAfterThing(thing);
        while (!rest.empty()) {
            const std::string_view part = takePart(rest);
            if (hasCutWord(part)) {
                add(ingredient().cut, part);
            } else {
                addNote(part);
            }
        }
    }

    static bool isOnlyQuality(std::string_view thing) {
        const auto words = wordsOf(thing);
        return std::ranges::all_of(words,
                                   [](std::string_view word) { return isOneOf(word, qualities); });
    }

    /// Up to the next comma or semicolon that does not stand between digits, or " - ".
    static std::string_view takePart(std::string_view& rest) {
        std::size_t end = 0;
        for (; end < rest.size(); ++end) {
            const bool between = end > 0 && end + 1 < rest.size() && isDigit(rest[end - 1]) &&
                                 isDigit(rest[end + 1]);
            if (rest[end] == ';' || (rest[end] == ',' && !between) ||
                rest.substr(end).starts_with(" - ")) {
                break;
            }
        }
        const std::string_view part = trimmed(rest.substr(0, end));
        rest.remove_prefix(
            std::min(end + (rest.substr(end).starts_with(" - ") ? 3 : 1), rest.size()));
        dropSpace(rest);
        return part;
    }

    /// "finely chopped parsley"
    void takeCutBefore(std::string_view& thing) {
        std::string_view rest = thing;
        std::string cut;
        while (isOneOf(firstWord(rest), cutManners)) {
            add(cut, firstWord(rest), " ");
            dropWord(rest);
        }
        const bool manner = !cut.empty();
        const bool isCut =
            isOneOf(firstWord(rest), cutWords) && firstWord(rest).size() < rest.size();
        // "ground beef" and "crushed tomatoes" are bought so; with a manner it is the cook's work.
        if (!isCut || (!manner && isOneOf(firstWord(rest), "ground crushed cut rounds strips"))) {
            return;
        }
        add(cut, firstWord(rest), " ");
        dropWord(rest);
        add(ingredient().cut, cut);
        thing = rest;
    }

    /// The thing without "to taste" and the like, which are notes.
    std::string takeAfterThing(std::string_view thing) {
        for (const std::string_view phrase :
             {" to taste", " as needed", " for serving", " for garnish", " to serve", " to garnish",
              " optional", " divided"}) {
            const std::string low = lowered(thing);
            if (low.ends_with(phrase)) {
                addNote(phrase);
                thing.remove_suffix(phrase.size());
            }
        }
        return std::string(trimmed(thing));
    }

    /// A number left in the thing, a mark before it, no thing at all, or a heading ("For the
    /// sauce:") was not understood.
    void judge(const std::string& plain) {
        const std::string name = ingredient().name;
        if (plain.size() > longestLine || name.empty()) {
            read_ = {};
            read_.ingredient.name = plain;
            read_.unread = {plain};
            return;
        }
        if (name.ends_with(':')) {
            read_.unread = {name};
        }
        for (const std::string_view word : wordsOf(name)) {
            const bool marked = word.front() == '-' || word.front() == '/' || word.front() == '+';
            if (marked || std::ranges::any_of(word, isDigit)) {
                read_.unread.emplace_back(word);
            }
        }
    }

    IngredientLine read_;
    std::vector<std::string> asides_;
};

}  // namespace

IngredientLine readIngredientLine(std::string_view line) {
    return LineReader().read(line);
}

}  // namespace rangeline
