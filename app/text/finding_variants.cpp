// Cases of a finding that would read oddly in the sentence of their code.

#include <QtGlobal>
#include <variant>

#include "text/finding_words.h"

namespace rangeline {

namespace {

template <class Key>
bool isKey(const Finding& finding, std::size_t number) {
    return number < finding.keys.size() && std::holds_alternative<Key>(finding.keys[number]);
}

const char* wareTwice(const Finding& finding) {
    if (isKey<WashKey>(finding, 0)) {
        return QT_TRANSLATE_NOOP("Finding",
                                 "{thing}: {b} needs it {span} while it is being washed.");
    }
    if (isKey<WashKey>(finding, 1)) {
        return QT_TRANSLATE_NOOP("Finding", "{thing} is washed {span} while {a} still has it.");
    }
    return nullptr;
}

const char* tooEarly(const Finding& finding) {
    const auto* given =
        finding.figures.empty() ? nullptr : std::get_if<Duration>(&finding.figures[0]);
    return given != nullptr && *given < Duration()
               ? QT_TRANSLATE_NOOP("Finding",
                                   "{b} comes {short} too early: it has to wait for {a}.")
               : nullptr;
}

const char* notPlaced(const Finding& finding) {
    constexpr std::size_t named = 3;
    if (finding.keys.size() > named) {
        return QT_TRANSLATE_NOOP("Finding", "{count} steps are not placed yet.");
    }
    return finding.keys.size() > 1 ? QT_TRANSLATE_NOOP("Finding", "{all} have no time yet.")
                                   : nullptr;
}

/// A step against itself, as one that was given the same pan for both of its pans.
const char* twiceInOne(const Finding& finding) {
    if (finding.keys.size() != 2 || finding.keys[0] != finding.keys[1]) {
        return nullptr;
    }
    switch (finding.code) {
        case FindingCode::BurnerTwice:
        case FindingCode::WareTwice:
            return QT_TRANSLATE_NOOP("Finding", "{thing} is chosen twice for {a}.");
        case FindingCode::OvenSlotTwice:
            return QT_TRANSLATE_NOOP("Finding", "{thing}, slot {0}, is chosen twice for {a}.");
        case FindingCode::HandsTwice:
            return QT_TRANSLATE_NOOP("Finding", "{thing} is counted twice for {a}.");
        default:
            return nullptr;
    }
}

const char* variantOf(const Finding& finding) {
    if (const char* itself = twiceInOne(finding)) {
        return itself;
    }
    if (finding.code == FindingCode::NotPlaced) {
        return notPlaced(finding);
    }
    if (finding.code == FindingCode::WareTwice) {
        return wareTwice(finding);
    }
    if (finding.code == FindingCode::TooEarlyAfter) {
        return tooEarly(finding);
    }
    if (finding.code == FindingCode::OvenTwoTemperatures && isKey<TurnOnKey>(finding, 0)) {
        return QT_TRANSLATE_NOOP("Finding", "{thing} is turned on to {0}, but {b} wants {1}.");
    }
    if (finding.code == FindingCode::OvenTwoModes && isKey<TurnOnKey>(finding, 0)) {
        return QT_TRANSLATE_NOOP("Finding",
                                 "{thing} is turned on to {0:mode}, but {b} wants {1:mode}.");
    }
    if (finding.code == FindingCode::Danger && finding.keys.size() > 1) {
        return QT_TRANSLATE_NOOP("Finding", "{all}: {0:danger}");
    }
    if (finding.code == FindingCode::HandsTwice && finding.keys.size() > 2) {
        return QT_TRANSLATE_NOOP("Finding", "{thing} is wanted {span} for {all} at once.");
    }
    if (finding.code == FindingCode::Danger && !finding.interval.empty()) {
        return QT_TRANSLATE_NOOP("Finding", "{a} at {at}: {0:danger}");
    }
    if (finding.code == FindingCode::OutOfTemperatureTooLong && finding.keys.size() == 1) {
        return QT_TRANSLATE_NOOP("Finding",
                                 "Food made ahead is out of the cold and the heat for {0} before "
                                 "{a}, past the limit chosen: {1} ({2:source}).");
    }
    return nullptr;
}

}  // namespace

const char* sentencePattern(const Finding& finding) {
    const char* variant = variantOf(finding);
    return variant == nullptr ? wordsOf(finding.code).sentence : variant;
}

}  // namespace rangeline
