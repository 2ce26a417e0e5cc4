#include "recipe/instruction.h"

#include <algorithm>

#include "model/equipment_kinds.h"
#include "model/fridge.h"
#include "model/validate_values.h"
#include "recipe/cooking_verbs.h"
#include "recipe/main_verb.h"
#include "recipe/plain_words.h"
#include "recipe/spoken_heat.h"
#include "recipe/spoken_time.h"

namespace rangeline {
namespace {

std::string_view vesselIn(const std::vector<std::string>& words) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "oven" && i > 0 && words[i - 1] == "dutch") {
            return "pot";
        }
        if (const std::string_view kind = wareNamed(words[i]); !kind.empty()) {
            return kind;
        }
    }
    return {};
}

/// "until a knife slips in", up to the next mark.
std::string cueIn(std::string_view sentence) {
    const std::string low = lowered(sentence);
    const std::size_t begin = low.find("until ");
    if (begin == std::string::npos) {
        return {};
    }
    const std::size_t end = low.find_first_of(",;.", begin);
    return std::string(trimmed(sentence.substr(begin, end - begin)));
}

/// At most what a step may take.
DurationRange sumOf(const std::vector<DurationRange>& times) {
    DurationRange sum;
    for (const DurationRange& each : times) {
        sum.shortest = std::min(sum.shortest + each.shortest, longestDuration);
        sum.likely = std::min(sum.likely + each.likely, longestDuration);
        sum.longest = std::min(sum.longest + each.longest, longestDuration);
    }
    return sum;
}

bool canStand(std::string_view ware, DoneOn on) {
    const EquipmentKind* kind = findEquipmentKind(ware);
    return kind != nullptr && (on == DoneOn::Burner ? kind->goesOnBurner
                               : on == DoneOn::Oven ? kind->goesInOven
                                                    : true);
}

class Reader {
  public:
    Reader(std::string_view sentence, Temperature usualOven)
        : sentence_(sentence), usualOven_(usualOven), words_(bareWords(sentence)) {}

    Instruction read() {
        Step& step = read_.step;
        step.name = sentence_;
        step.cue = cueIn(sentence_);
        readTime();
        step.plates = !words_.empty() && beginsPlating(words_.front());
        const CookingVerb* verb = step.plates ? nullptr : mainVerb(words_);
        read_.heatsOven = turnsOvenOn(words_, !temperaturesNamed(sentence_).empty());
        follow(verb != nullptr ? *verb
                               : CookingVerb{"", "", DoneOn::Nothing, Attention::Hands, ""});
        return std::move(read_);
    }

  private:
    void readTime() {
        const std::vector<DurationRange> times = timesNamed(sentence_);
        read_.timesNamed = static_cast<int>(times.size());
        read_.step.time =
            times.empty() ? DurationRange{assumedTime, assumedTime, assumedTime} : sumOf(times);
    }

    void follow(const CookingVerb& verb) {
        Step& step = read_.step;
        step.technique = verb.technique;
        step.segments = {{verb.attention, {}, true}};
        DoneOn on = verb.on;
        if (on == DoneOn::Nothing && !heatNamed(sentence_).empty()) {
            on = DoneOn::Burner;  // "stir over low heat"
        }
        if (on == DoneOn::Burner && namesOven(words_) && !hasWord(words_, "boil")) {
            on = DoneOn::Oven;  // "braise in the oven"
        }
        if (on == DoneOn::Oven) {
            heatInOven(verb.mode);
        } else if (on == DoneOn::Burner) {
            step.heat = BurnerHeat{heatNamed(sentence_), {}, 1, false};
        } else if (on == DoneOn::FridgeShelf) {
            keepInFridge(step, !hasWord(words_, "room"));  // "at room temperature"
        }
        takeVessel(verb, on);
    }

    void heatInOven(OvenMode mode) {
        Temperature at = usualOven_;
        read_.ovenAssumed = true;
        for (const Temperature& named : temperaturesNamed(sentence_)) {
            if (ofAnOven(named) && read_.ovenAssumed) {
                at = named;
                read_.ovenAssumed = false;
            }
        }
        read_.step.heat = OvenHeat{at, at, mode, false, {}};
    }

    void takeVessel(const CookingVerb& verb, DoneOn on) {
        std::string_view ware = vesselIn(words_);
        if (!canStand(ware, on)) {
            ware = canStand(verb.ware, on) ? verb.ware : std::string_view();
        }
        if (ware.empty() && on == DoneOn::Burner) {
            ware = "saute-pan";
        } else if (ware.empty() && on == DoneOn::Oven) {
            ware = "baking-dish";
        }
        if (!ware.empty()) {
            WareNeed need;
            need.kind = ware;
            read_.step.wares = {need};
        }
    }

    std::string_view sentence_;
    Temperature usualOven_;
    std::vector<std::string> words_;
    Instruction read_;
};

/// Whether the full stop after the text ends no sentence. After some words it may be either.
bool endsInAbbreviation(std::string_view text, bool capitalFollows) {
    const std::size_t space = text.find_last_of(' ');
    const std::string_view word = text.substr(space == std::string_view::npos ? 0 : space + 1);
    if (isOneOf(word, "min mins hr hrs sec secs in no") ||
        (word.size() == 1 && isDigit(word.front()))) {
        return !capitalFollows;
    }
    return word.size() < 2 || isOneOf(word, "tbsp tsp oz lb lbs pt qt approx ca fl e.g i.e");
}

/// "1.", "2)" and "Step 3:" in front of a sentence taken off.
std::string_view withoutNumber(std::string_view sentence) {
    std::string_view rest = sentence;
    if (isOneOf(firstWord(rest), "step")) {
        dropWord(rest);
    }
    const std::size_t digits = std::min(rest.find_first_not_of("0123456789"), rest.size());
    rest.remove_prefix(digits);
    const std::string_view mark = firstWord(rest);
    if (digits == 0 || !(rest.empty() || isOneOf(mark, ". ) :"))) {
        return sentence;
    }
    dropWord(rest);
    return rest;
}

/// Whether a line goes on from one that ended without a mark: it begins in small letters, with a
/// number that is none of a list, or in parentheses.
bool goesOn(std::string_view before, std::string_view line) {
    const char first = line.front();
    if (before.find_last_of(".!?:") == before.size() - 1) {
        return false;
    }
    return (first >= 'a' && first <= 'z') || first == '(' ||
           (isDigit(first) && withoutNumber(line) == line);
}

/// The lines, plain, those that go on from the one before joined to it.
std::vector<std::string> paragraphsOf(std::string_view text) {
    std::vector<std::string> paragraphs;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string line = plainLine(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.empty()) {
            continue;
        }
        if (!paragraphs.empty() && goesOn(paragraphs.back(), line)) {
            paragraphs.back() += " " + line;
        } else {
            paragraphs.push_back(line);
        }
    }
    return paragraphs;
}

void addSentences(std::string_view plain, std::vector<std::string>& sentences) {
    std::size_t begin = 0;
    const auto take = [&](std::size_t end) {
        const std::string_view sentence = withoutNumber(trimmed(plain.substr(begin, end - begin)));
        if (!sentence.empty()) {
            sentences.emplace_back(sentence);
        }
        begin = end + 1;
    };
    for (std::size_t i = 0; i < plain.size(); ++i) {
        const bool mark = plain[i] == '.' || plain[i] == '!' || plain[i] == '?';
        const bool atEnd = i + 1 == plain.size() || plain[i + 1] == ' ';
        const bool capital = i + 2 < plain.size() && plain[i + 2] >= 'A' && plain[i + 2] <= 'Z';
        if (mark && atEnd &&
            (i + 1 == plain.size() ||
             !endsInAbbreviation(plain.substr(begin, i - begin), capital))) {
            take(i);
        }
    }
    if (begin < plain.size()) {
        take(plain.size());
    }
}

}  // namespace

std::vector<std::string> sentencesOf(std::string_view text) {
    std::vector<std::string> sentences;
    for (const std::string& paragraph : paragraphsOf(text)) {
        addSentences(paragraph, sentences);
    }
    return sentences;
}

Instruction readInstruction(std::string_view sentence, Temperature usualOven) {
    return Reader(sentence, usualOven).read();
}

bool goesOnInVesselOf(const Step& before, std::string_view sentence) {
    const auto isHeated = [](const WareNeed& ware) {
        return canStand(ware.kind, DoneOn::Burner) || canStand(ware.kind, DoneOn::Oven);
    };
    const auto isSameVessel = [](const std::string& word, const std::string& next) {
        return word == "same" && !wareNamed(next).empty();
    };
    const std::vector<std::string> words = bareWords(sentence);
    return std::ranges::adjacent_find(words, isSameVessel) != words.end() &&
           std::ranges::any_of(before.wares, isHeated);
}

void goOnInVessels(Step& next, Step& before) {
    for (WareNeed& had : before.wares) {
        had.turnedOut = false;
        std::erase_if(next.wares, [&](const WareNeed& own) { return own.kind == had.kind; });
        WareNeed goesOn = had;
        goesOn.carriesOn = before.id;
        next.wares.push_back(std::move(goesOn));
    }
}

}  // namespace rangeline
