#include "recipe/main_verb.h"

#include <algorithm>

#include "recipe/plain_words.h"

namespace rangeline {
namespace {

using Words = std::vector<std::string>;

std::string_view bare(std::string_view word) {
    constexpr std::string_view marks = ".,;:!?()\"'";
    const std::size_t begin = word.find_first_not_of(marks);
    if (begin == std::string_view::npos) {
        return {};
    }
    return word.substr(begin, word.find_last_not_of(marks) - begin + 1);
}

/// "until brown", "medium heat" and "a boil" are no verbs; nor is "the roast".
bool isNoun(const Words& words, std::size_t at) {
    constexpr std::string_view before =
        "until the a medium low high over medium-high medium-low or";
    return at > 0 &&
           (isOneOf(words[at - 1], before) || (words[at] == "heat" && at + 1 == words.size()));
}

/// What the verb is done to is the heat: "reduce the heat", "heat your oven".
bool isAboutHeat(const Words& words, std::size_t at) {
    std::size_t object = at + 1;
    if (object < words.size() && isOneOf(words[object], "the your")) {
        ++object;
    }
    return object < words.size() && isOneOf(words[object], "heat oven temperature flame broiler");
}

bool onlyHeats(const CookingVerb& verb) {
    return verb.word == "heat" || verb.word == "warm";
}

/// "Bring to a boil", "bring the milk to a simmer".
const CookingVerb* broughtTo(const Words& words) {
    const auto bring = std::ranges::find(words, "bring");
    const auto at = std::find_if(
        bring, words.end(), [](const std::string& word) { return isOneOf(word, "boil simmer"); });
    return at == words.end() ? nullptr : findCookingVerb(*at);
}

}  // namespace

Words bareWords(std::string_view sentence) {
    Words words;
    for (const std::string_view word : wordsOf(sentence)) {
        words.push_back(lowered(bare(word)));
    }
    return words;
}

bool hasWord(const Words& words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

bool namesOven(const Words& words) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "oven" && (i == 0 || words[i - 1] != "dutch")) {
            return true;
        }
    }
    return false;
}

const CookingVerb* mainVerb(const Words& words) {
    const CookingVerb* chills = nullptr;
    const CookingVerb* heats = nullptr;
    const CookingVerb* other = nullptr;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const CookingVerb* verb = findCookingVerb(words[i]);
        if (verb == nullptr || isNoun(words, i) || isAboutHeat(words, i)) {
            continue;
        }
        const bool onHeat = verb->on == DoneOn::Burner || verb->on == DoneOn::Oven;
        if (onHeat && !onlyHeats(*verb)) {
            return verb;
        }
        const CookingVerb*& first = onHeat                            ? heats
                                    : verb->on == DoneOn::FridgeShelf ? chills
                                                                      : other;
        first = first == nullptr ? verb : first;
    }
    for (const CookingVerb* verb : {chills, broughtTo(words), heats}) {
        if (verb != nullptr) {
            return verb;
        }
    }
    return other;
}

bool turnsOvenOn(const Words& words, bool namesTemperature) {
    if (mainVerb(words) != nullptr) {
        return false;
    }
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool aboutOven = isAboutHeat(words, i);
        if (words[i] == "preheat" && (aboutOven || namesTemperature)) {
            return true;
        }
        if (aboutOven &&
            (words[i] == "heat" || (isOneOf(words[i], "set turn") && namesTemperature))) {
            return true;
        }
    }
    return false;
}

}  // namespace rangeline
