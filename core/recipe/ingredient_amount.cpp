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
    "clove cloves sprig sprigs pinch pinches dash dashes bunch bunches stalk stalks stick sticks "
    "slice slices handful handfuls knob knobs ear ears rib ribs drop drops sheet sheets cube cubes "
    "strip strips splash splashes dsp dessertspoon dessertspoons";
/// Those of them that are one where no number stands: "Pinch of salt".
constexpr std::string_view uncounted = "pinch handful dash knob splash bunch sprig";
/// Those of them that also stand after a weight: "400 g tin".
constexpr std::string_view packages =
    "can cans tin tins jar jars bottle bottles package packages packet packets pkg bag bags block "
    "blocks box boxes carton cartons tub tubs container containers piece pieces head heads";
constexpr std::string_view lengths = "inch inches in cm mm centimeter centimetre";

constexpr std::string_view hedges =
    "about approximately approx approx. ca. scant heaping "
    "heaped generous rounded level packed firmly loosely";

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

bool isPackage(std::string_view line) {
    return isOneOf(withoutDot(firstWord(line)), packages);
}

bool isContainer(std::string_view line) {
    return isPackage(line) || isOneOf(withoutDot(firstWord(line)), containers);
}

/// The dash of "3-pound".
void dropDash(std::string_view& line) {
    if (line.size() > 1 && line[0] == '-' && line[1] != ' ' && !isDigit(line[1])) {
        line.remove_prefix(1);
    }
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
    dropDash(rest);
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
    std::string same;
    while (const auto other = takeMeasured(rest)) {  // "3 lb 5 oz"
        same += same.empty() ? "" : " ";
        same += toText(*other);
        line = rest;
    }
    addNote(taken.note, same);
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

/// "8-ounce" after a number: so many of this size.
void takeSizeOfEach(std::string_view& line, TakenAmount& taken) {
    std::string_view rest = line;
    const auto each = !rest.empty() && isDigit(rest.front()) ? takeMeasured(rest) : std::nullopt;
    if (each) {
        addNote(taken.note, toText(*each) + " each");
        line = rest;
    }
}

/// "1-inch", "2 cm" before a piece: its length, as it is written. Empty for anything else.
std::string takeLength(std::string_view& line) {
    std::string_view rest = line;
    if (!takeNumber(rest)) {
        return {};
    }
    dropDash(rest);
    dropSpace(rest);
    if (!isOneOf(withoutDot(firstWord(rest)), lengths)) {
        return {};
    }
    dropWord(rest);
    if (!isContainer(rest)) {
        return {};
    }
    const std::string_view length = trimmed(line.substr(0, line.size() - rest.size()));
    line = rest;
    return std::string(length);
}

/// "can", "large bunch" after a number of them.
void takeContainer(std::string_view& line, TakenAmount& taken) {
    std::string_view rest = line;
    std::string size;
    if (isOneOf(firstWord(rest), sizesOfThings)) {
        size = firstWord(rest);
        dropWord(rest);
    }
    if (isContainer(rest)) {
        taken.amount.unit = lowered(withoutDot(firstWord(rest)));
        dropWord(rest);
        addNote(taken.note, size);
        line = rest;
    }
}

void takeUnit(std::string_view& line, TakenAmount& taken) {
    dropDash(line);
    if (const Measure* measure = takeMeasure(line)) {
        taken.amount.unit = measure->key;
        takePlus(line, taken);
        takeSame(line, taken);
        addNote(taken.note, takeHedges(line));
        if (isPackage(line)) {
            addNote(taken.note, withoutDot(firstWord(line)));
            dropWord(line);
        }
    } else {
        takeTimes(line, taken);
        takeSizeOfEach(line, taken);
        addNote(taken.note, takeLength(line));
        takeContainer(line, taken);
    }
    if (!taken.amount.unit.empty() && isOneOf(firstWord(line), "of")) {
        dropWord(line);
    }
}

/// "2 dozen", "half a dozen".
void takeDozens(std::string_view& line, TakenAmount& taken) {
    if (isOneOf(firstWord(line), "dozen")) {
        dropWord(line);
        taken.amount.low = taken.amount.low * Rational(12);
        taken.amount.high = taken.amount.high * Rational(12);
    }
}

/// "½ a cabbage"
void dropArticleOfPart(std::string_view& line, const TakenAmount& taken) {
    if (taken.amount.high < Rational(1) && isOneOf(firstWord(line), "a an")) {
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
        if (!hedge.empty() && !after.empty() && isDigit(after.front())) {
            addNote(taken.note, hedge);
            rest = after;
        }
    }
    if (const std::string length = takeLength(rest); !length.empty()) {
        taken.amount.low = taken.amount.high = Rational(1);
        addNote(taken.note, length);
        takeUnit(rest, taken);
        line = rest;
        return taken;
    }
    const bool one = isOneOf(firstWord(rest), uncounted);
    const auto low = one ? std::optional(Rational(1)) : takeNumber(rest);
    if (!low) {
        return std::nullopt;
    }
    const auto high = one ? std::nullopt : takeUpperEnd(rest);
    if (high && *high < *low) {
        return std::nullopt;
    }
    taken.amount.low = *low;
    taken.amount.high = high.value_or(*low);
    dropSpace(rest);
    addNote(taken.note, takeHedges(rest));
    dropArticleOfPart(rest, taken);
    takeDozens(rest, taken);
    const bool dashed = rest.starts_with('-');
    takeUnit(rest, taken);
    if (dashed && taken.amount.unit.empty()) {
        return std::nullopt;  // "5-grain bread"
    }
    line = rest;
    return taken;
}

}  // namespace rangeline
