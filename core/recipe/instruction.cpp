#include "recipe/instruction.h"

#include <algorithm>

#include "model/equipment_kinds.h"
#include "recipe/cooking_verbs.h"
#include "recipe/plain_words.h"
#include "recipe/spoken_heat.h"
#include "recipe/spoken_time.h"

namespace rangeline {
namespace {

std::string_view bare(std::string_view word) {
    constexpr std::string_view marks = ".,;:!?()\"'";
    const std::size_t begin = word.find_first_not_of(marks);
    if (begin == std::string_view::npos) {
        return {};
    }
    return word.substr(begin, word.find_last_not_of(marks) - begin + 1);
}

/// The sentence's words in small letters and without marks.
std::vector<std::string> bareWords(std::string_view sentence) {
    std::vector<std::string> words;
    for (const std::string_view word : wordsOf(sentence)) {
        words.push_back(lowered(bare(word)));
    }
    return words;
}

bool has(const std::vector<std::string>& words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

bool namesOven(const std::vector<std::string>& words) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "oven" && (i == 0 || words[i - 1] != "dutch")) {
            return true;
        }
    }
    return false;
}

/// The first verb that needs heat, else the first verb.
const CookingVerb* verbOf(const std::vector<std::string>& words) {
    const CookingVerb* first = nullptr;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const CookingVerb* verb = findCookingVerb(words[i]);
        // "until brown", "medium heat" and "baking dish" are no verbs; nor is "the roast".
        const bool noun = i > 0 && (isOneOf(words[i - 1],
                                            "until the a medium low high over "
                                            "medium-high medium-low or") ||
                                    (words[i] == "heat" && i + 1 == words.size()));
        if (verb == nullptr || noun) {
            continue;
        }
        if (verb->on != CookedOn::Nothing) {
            return verb;
        }
        first = first == nullptr ? verb : first;
    }
    return first;
}

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

DurationRange sumOf(const std::vector<DurationRange>& times) {
    DurationRange sum;
    for (const DurationRange& each : times) {
        sum.shortest += each.shortest;
        sum.likely += each.likely;
        sum.longest += each.longest;
    }
    return sum;
}

bool canStand(std::string_view ware, CookedOn on) {
    const EquipmentKind* kind = findEquipmentKind(ware);
    return kind != nullptr && (on == CookedOn::Burner ? kind->goesOnBurner
                               : on == CookedOn::Oven ? kind->goesInOven
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
        const CookingVerb* verb = step.plates ? nullptr : verbOf(words_);
        read_.heatsOven = has(words_, "preheat") ||
                          (namesOven(words_) && verb != nullptr && verb->word == "heat");
        if (verb != nullptr) {
            follow(*verb);
        } else {
            step.segments = {{Attention::Hands, {}, true}};
        }
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
        CookedOn on = verb.on;
        if (on == CookedOn::Burner && namesOven(words_) && !has(words_, "boil")) {
            on = CookedOn::Oven;  // "braise in the oven"
        }
        if (on == CookedOn::Oven) {
            heatInOven(verb.mode);
        } else if (on == CookedOn::Burner) {
            step.heat = BurnerHeat{heatNamed(sentence_), {}, 1, false};
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

    void takeVessel(const CookingVerb& verb, CookedOn on) {
        std::string_view ware = vesselIn(words_);
        if (!canStand(ware, on)) {
            ware = canStand(verb.ware, on) ? verb.ware : std::string_view();
        }
        if (ware.empty() && on != CookedOn::Nothing) {
            ware = on == CookedOn::Burner ? "saute-pan" : "baking-dish";
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

bool endsInAbbreviation(std::string_view text) {
    const std::size_t space = text.find_last_of(' ');
    const std::string_view word = text.substr(space == std::string_view::npos ? 0 : space + 1);
    return word.size() < 2 ||
           isOneOf(word, "tbsp tsp oz lb lbs pt qt approx ca min mins hr hrs sec in no fl e.g i.e");
}

}  // namespace

std::vector<std::string> sentencesOf(std::string_view text) {
    const std::string plain = plainLine(text);
    std::vector<std::string> sentences;
    std::size_t begin = 0;
    const auto take = [&](std::size_t end) {
        const std::string_view sentence =
            trimmed(std::string_view(plain).substr(begin, end - begin));
        if (!sentence.empty()) {
            sentences.emplace_back(sentence);
        }
    };
    for (std::size_t i = 0; i < plain.size(); ++i) {
        const bool mark = plain[i] == '.' || plain[i] == '!' || plain[i] == '?';
        const bool atEnd = i + 1 == plain.size() || plain[i + 1] == ' ';
        if (mark && atEnd &&
            (i + 1 == plain.size() ||
             !endsInAbbreviation(std::string_view(plain).substr(begin, i - begin)))) {
            take(i);
            begin = i + 1;
        }
    }
    take(plain.size());
    return sentences;
}

Instruction readInstruction(std::string_view sentence, Temperature usualOven) {
    return Reader(sentence, usualOven).read();
}

}  // namespace rangeline
