#include "recipe/ingredient_amount.h"

#include <algorithm>
#include <array>

#include "model/measures.h"
#include "model/quantity_text.h"
#include "recipe/plain_words.h"
#include "recipe/recipe_number.h"

namespace rangeline {
namespace {

/// Counted things that stand between a number and what is counted, as they are written.
constexpr std::string_view containers =
    "clove cloves sprig sprigs pinch pinches dash dashes can cans tin tins jar jars bottle bottles "
    "bunch bunches stalk stalks stick sticks slice slices head heads handful handfuls knob knobs "
    "piece pieces package packages packet packets pkg bag bags ear ears rib ribs drop drops sheet "
    "sheets cube cubes strip strips splash splashes";

constexpr std::string_view sizes = "small medium large extra-large big";
constexpr std::string_view hedges =
    "about approximately approx approx. ca. scant heaping "
    "heaped generous rounded level packed";

/// Words that qualify an amount, joined.
std::string takeHedges(std::string_view& line) {
    std::string said;
    while (isOneOf(firstWord(line), hedges)) {
        said += said.empty() ? "" : " ";
        said += firstWord(line);
        dropWord(line);
    }
    return said;
}

std::string_view withoutDot(std::string_view word) {
    return word.ends_with('.') ? word.substr(0, word.size() - 1) : word;
}

std::string_view singleLetter(std::string_view word) {
    // Cooks write the large spoon with the large letter.
    return word == "T" ? "tbsp" : word == "t" ? "tsp" : word == "c" || word == "C" ? "cup" : "";
}

const Measure* measureNamed(std::string_view word) {
    const std::string_view bare = withoutDot(word);
    if (const std::string_view letter = singleLetter(bare); !letter.empty()) {
        return findMeasure(letter);
    }
    const std::string low = lowered(bare);
    if (low == "tbs" || low == "tbsps" || low == "tblsp") {
        return findMeasure("tbsp");
    }
    return low == "tsps" ? findMeasure("tsp") : findMeasure(low);
}

/// "fl oz", "fluid ounces".
const Measure* takeFluidOunces(std::string_view& line) {
    std::string_view rest = line;
    const std::string first = lowered(withoutDot(firstWord(rest)));
    dropWord(rest);
    if ((first == "fl" || first == "fluid") &&
        isOneOf(withoutDot(firstWord(rest)), "oz ounce ounces")) {
        dropWord(rest);
        line = rest;
        return findMeasure("fl oz");
    }
    return nullptr;
}

const Measure* takeMeasure(std::string_view& line) {
    if (const Measure* fluid = takeFluidOunces(line)) {
        return fluid;
    }
    // A measure ends at a space, a slash or a plus.
    const std::size_t end = std::min(line.find_first_of(" /+"), line.size());
    const Measure* found = measureNamed(line.substr(0, end));
    if (found != nullptr) {
        line.remove_prefix(end);
        dropSpace(line);
    }
    return found;
}

void addNote(std::string& note, std::string_view more) {
    if (!more.empty()) {
        note += note.empty() ? "" : ", ";
        note += more;
    }
}

/// An amount of a measure, "7 oz"; the line stays where it begins otherwise.
std::optional<Amount> takeMeasured(std::string_view& line) {
    std::string_view rest = line;
    const auto number = takeNumber(rest);
    dropSpace(rest);
    const Measure* measure = number ? takeMeasure(rest) : nullptr;
    if (measure == nullptr) {
        return std::nullopt;
    }
    line = rest;
    return Amount{*number, *number, std::string(measure->key)};
}

/// "plus 2 tbsp", "+ 2 tbsp", "and 2 tbsp" onto an amount of a measure of the same family.
void takePlus(std::string_view& line, TakenAmount& taken) {
    std::string_view rest = line;
    if (!isOneOf(firstWord(rest), "plus + and") || taken.amount.low != taken.amount.high) {
        return;
    }
    dropWord(rest);
    const auto more = takeMeasured(rest);
    if (!more) {
        return;
    }
    const std::array both{taken.amount, *more};
    const std::vector<Amount> sum = addedUp(both);
    if (sum.size() == 1) {
        taken.amount = sum.front();
        line = rest;
    }
}

/// "/ 7 oz": the same in other measures.
void takeSame(std::string_view& line, TakenAmount& taken) {
    std::string_view rest = line;
    if (!rest.starts_with('/')) {
        return;
    }
    rest.remove_prefix(1);
    dropSpace(rest);
    if (const auto other = takeMeasured(rest)) {
        addNote(taken.note, toText(*other));
        line = rest;
    }
}

/// "x 400 g": so many of this size.
void takeTimes(std::string_view& line, TakenAmount& taken) {
    std::string_view rest = line;
    if (!isOneOf(firstWord(rest), "x")) {
        return;
    }
    dropWord(rest);
    if (const auto each = takeMeasured(rest)) {
        addNote(taken.note, toText(*each) + " each");
        line = rest;
    }
}

void takeUnit(std::string_view& line, TakenAmount& taken) {
    if (const Measure* measure = takeMeasure(line)) {
        taken.amount.unit = measure->key;
        takePlus(line, taken);
        takeSame(line, taken);
    } else {
        takeTimes(line, taken);
        std::string_view rest = line;
        std::string size;
        if (isOneOf(firstWord(rest), sizes)) {
            size = firstWord(rest);
            dropWord(rest);
        }
        if (isOneOf(withoutDot(firstWord(rest)), containers)) {
            taken.amount.unit = lowered(withoutDot(firstWord(rest)));
            dropWord(rest);
            addNote(taken.note, size);
            line = rest;
        }
    }
    if (!taken.amount.unit.empty() && isOneOf(firstWord(line), "of")) {
        dropWord(line);
    }
}

/// The upper end of a range: "-3", "to 3", "or 3".
std::optional<Rational> takeUpperEnd(std::string_view& line) {
    std::string_view rest = line;
    dropSpace(rest);
    if (rest.starts_with('-')) {
        rest.remove_prefix(1);
        dropSpace(rest);
    } else if (isOneOf(firstWord(rest), "to or")) {
        dropWord(rest);
    } else {
        return std::nullopt;
    }
    const auto number = takeNumber(rest);
    if (number) {
        line = rest;
    }
    return number;
}

}  // namespace

std::optional<TakenAmount> takeAmount(std::string_view& line) {
    std::string_view rest = line;
    TakenAmount taken;
    addNote(taken.note, takeHedges(rest));
    if (isOneOf(firstWord(rest), "a an")) {
        // "a scant 1/4 cup"
        std::string_view after = rest;
        dropWord(after);
        const std::string hedge = takeHedges(after);
        if (!hedge.empty() && !after.empty() && after.front() >= '0' && after.front() <= '9') {
            addNote(taken.note, hedge);
            rest = after;
        }
    }
    const auto low = takeNumber(rest);
    if (!low) {
        return std::nullopt;
    }
    const auto high = takeUpperEnd(rest);
    if (high && *high < *low) {
        return std::nullopt;
    }
    taken.amount.low = *low;
    taken.amount.high = high.value_or(*low);
    dropSpace(rest);
    addNote(taken.note, takeHedges(rest));
    takeUnit(rest, taken);
    line = rest;
    return taken;
}

}  // namespace rangeline
