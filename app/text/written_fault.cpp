#include "text/written_fault.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <string_view>

#include "text/fault_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(WrittenFault)
};

struct Word {
    std::string_view key;
    const char* text;
};

#define WORD(text) QT_TRANSLATE_NOOP("WrittenFault", text)

constexpr std::array fields = {
    Word{"name", WORD("the name")},
    Word{"technique", WORD("the technique")},
    Word{"cue", WORD("done when")},
    Word{"needsAbility", WORD("who can do it")},
    Word{"time", WORD("its time")},
    Word{"attention", WORD("what it needs")},
    Word{"piecesPerCover", WORD("pieces for each cover")},
    Word{"piecesPerBatch", WORD("pieces at a time")},
    Word{"pieceWidth", WORD("width of a piece")},
    Word{"volumePerCover", WORD("volume per cover")},
    Word{"cooks", WORD("cooks at once")},
    Word{"burner", WORD("the burner")},
    Word{"level", WORD("the heat of the burner")},
    Word{"leastPower", WORD("the least power of the burner")},
    Word{"burners", WORD("how many burners")},
    Word{"oven", WORD("the heat of the oven")},
    Word{"slots", WORD("rack slots")},
    Word{"wares", WORD("pans and tools")},
    Word{"kind", WORD("its kind")},
    Word{"leastWidth", WORD("least width")},
    Word{"leastVolume", WORD("what it holds")},
    Word{"count", WORD("how many")},
    Word{"carriesOn", WORD("the pan it goes on in")},
    Word{"uses", WORD("what goes into it")},
    Word{"amount", WORD("the amount")},
    Word{"onlyIfAhead", WORD("done only if made ahead")},
    Word{"atRoom", WORD("how long it keeps at room temperature")},
    Word{"cold", WORD("how long it keeps cold")},
    Word{"hot", WORD("how long it keeps hot")},
    Word{"waitingWeight", WORD("how much its waiting counts")},
    Word{"holdingHeat", WORD("the oven that keeps it hot")},
    Word{"place", WORD("where it stands until used")},
    Word{"storage", WORD("how it waits")},
    Word{"food", WORD("the food")},
    Word{"target", WORD("the heat in its thickest part")},
    Word{"allergens", WORD("allergens")},
    Word{"dangers", WORD("dangers")},
    Word{"cut", WORD("the cut")},
    Word{"note", WORD("the note")},
    Word{"usablePercent", WORD("usable %")},
    Word{"least", WORD("the least wait")},
    Word{"most", WORD("the most wait")},
    Word{"writtenFor", WORD("covers")},
    Word{"perCover", WORD("what each cover gets")},
    Word{"platesHold", WORD("how long plates may wait")},
    Word{"rangeWidth", WORD("the width of the range")},
    Word{"widestVessel", WORD("the widest vessel")},
    Word{"power", WORD("the power")},
    Word{"fromLeft", WORD("how far from the left")},
    Word{"fromFront", WORD("how far from the front")},
    Word{"lowest", WORD("the lowest heat")},
    Word{"highest", WORD("the highest heat")},
    Word{"dialStep", WORD("the steps of the dial")},
    Word{"modes", WORD("the modes")},
    Word{"warmUp", WORD("the warm-up")},
    Word{"heatsPerMinute", WORD("how fast it heats")},
    Word{"coolsPerMinute", WORD("how fast it cools")},
    Word{"modeChange", WORD("the change of mode")},
    Word{"width", WORD("the width")},
    Word{"depth", WORD("the depth")},
    Word{"volume", WORD("what it holds")},
    Word{"rackSlots", WORD("rack slots it takes")},
    Word{"takes", WORD("how long it takes")},
    Word{"sink", WORD("the sink")},
    Word{"capacity", WORD("room for")},
    Word{"pace", WORD("the pace")},
    Word{"can", WORD("what the cook can do")},
    Word{"watchLimit", WORD("how much one can watch")},
    Word{"room", WORD("the temperature of the room")},
    Word{"how", WORD("how it is made simpler")},
    Word{"without", WORD("what falls away where it is made simpler")},
};

struct Sentence {
    FaultCode code;
    std::string_view about;  ///< the field, or both figures of a contradiction
    const char* text;
};

constexpr std::array sentences = {
    Sentence{FaultCode::MissingKey, "piecesPerCover",
             WORD("it goes by pieces: how many does each cover get?")},
    Sentence{FaultCode::MissingKey, "holdingHeat",
             WORD("it waits hot in the oven: how hot is that oven?")},
    Sentence{FaultCode::MissingKey, "how",
             WORD("say in a few words how it is made simpler when time runs short")},
    Sentence{FaultCode::OutOfRange, "without",
             WORD("tick at least one step that falls away where it is made simpler")},
    Sentence{FaultCode::Contradiction, "without plates",
             WORD("where it is made simpler, plating cannot fall away")},
    Sentence{FaultCode::Contradiction, "without afterServing",
             WORD("where it is made simpler, a step after serving cannot fall away")},
    Sentence{FaultCode::Contradiction, "without target",
             WORD("where it is made simpler, a step that cooks to a temperature cannot fall away")},
    Sentence{FaultCode::Contradiction, "without raw",
             WORD("where it is made simpler, a step with raw food cannot fall away")},
    Sentence{FaultCode::Contradiction, "staysOnHeat carriesOn",
             WORD("it stays on the burner, but goes on in no pan of a step on a burner; choose the "
                  "step it goes on from")},
    Sentence{FaultCode::Contradiction, "to from",
             WORD("the oven is at most less hot than at least; write the lower heat first")},
    Sentence{FaultCode::Contradiction, "rest rest",
             WORD("only one part can take the rest of the time")},
    Sentence{FaultCode::Contradiction, "holdingHeat storage",
             WORD("an oven is set for keeping it hot, but it does not wait in the oven")},
    Sentence{FaultCode::Contradiction, "place storage",
             WORD("where it stands does not suit how it waits: cold food on a fridge shelf, food "
                  "at room temperature on a counter")},
    Sentence{FaultCode::Contradiction, "afterServing plates",
             WORD("it cannot both end on the plate and come after serving")},
    Sentence{FaultCode::Contradiction, "amount amount",
             WORD("the amount is at most less than at least")},
    Sentence{FaultCode::Contradiction, "highest lowest",
             WORD("its highest heat is below its lowest")},
    Sentence{FaultCode::Contradiction, "modes modes", WORD("a mode is there twice")},
    Sentence{FaultCode::Contradiction, "to to", WORD("two warm-ups are to the same heat")},
    Sentence{FaultCode::NeedsVessel, "burner",
             WORD("it is on a burner and needs a pan that goes on one; choose one under “In or "
                  "on”")},
    Sentence{FaultCode::NeedsVessel, "storage",
             WORD("it waits hot on a burner and must stay in a pan that goes on one")},
    Sentence{FaultCode::DurationOrder, {}, WORD("at least %1, usually %2, at most %3 do not rise")},
    Sentence{FaultCode::SegmentsTooLong,
             {},
             WORD("hands and watching come to %1, but it may take only %2")},
    Sentence{FaultCode::LinkOrder, {}, WORD("it waits at least %1, but at most %2")},
    Sentence{FaultCode::CycleInSteps,
             {},
             WORD("these wait for each other in a circle: %1; take one of them out")},
    Sentence{FaultCode::CarriesOnUnlike, {}, WORD("it cannot go on in the pan of %1: %2")},
    Sentence{FaultCode::OutOfRange, {}, WORD("%1 is out of range; use %2 to %3")},
    Sentence{FaultCode::UnknownReference, "sink", WORD("its sink is no longer there")},
    Sentence{FaultCode::UnknownReference, {}, WORD("it speaks of a step that is no longer there")},
    Sentence{FaultCode::DuplicateId, {}, WORD("the same is there twice")},
};

/// Reasons that the model gives as figures, and what they mean to who writes.
constexpr std::array reasons = {
    Word{"other-kind", WORD("it has none of this kind")},
    Word{"other-count", WORD("it has another number of them")},
    Word{"taken-already", WORD("this step has it already")},
    Word{"too-long", WORD("it is too long")},
    Word{"bad-character", WORD("it has a character that cannot be shown")},
    Word{"not-a-temperature", WORD("it is no whole degree")},
    Word{"not-an-amount", WORD("it is no amount that can be measured")},
    Word{"not-a-unit", WORD("it is no unit; begin with a letter")},
};

#undef WORD

template <class Words>
const char* lookUp(const Words& words, std::string_view key) {
    const auto found = std::ranges::find(words, key, &Word::key);
    return found == words.end() ? nullptr : found->text;
}

/// "leastWidth" of "…wares[0].leastWidth", "wares" of "…wares[0]".
std::string_view lastKey(std::string_view place) {
    const std::size_t dot = place.rfind('.');
    std::string_view last = place.substr(dot == std::string_view::npos ? 0 : dot + 1);
    return last.substr(0, last.find('['));
}

std::string aboutOf(const Fault& fault) {
    const auto figure = [&](std::size_t number) {
        return number < fault.figures.size() ? fault.figures[number] : std::string();
    };
    return fault.code == FaultCode::Contradiction ? figure(0) + " " + figure(1)
           : fault.code == FaultCode::MissingKey  ? figure(0)
                                                  : std::string(lastKey(fault.place));
}

const char* patternOf(const Fault& fault) {
    const std::string about = aboutOf(fault);
    for (const Sentence& each : sentences) {
        if (each.code == fault.code && (each.about.empty() || each.about == about)) {
            return each.text;
        }
    }
    return nullptr;
}

/// Steps by their names, "a > b" too; known reasons in the language of the window.
QString figureText(const std::string& figure, const NameOfStep& nameOf) {
    if (const char* reason = lookUp(reasons, figure)) {
        return Text::tr(reason);
    }
    QStringList parts = QString::fromStdString(figure).split(QStringLiteral(" > "));
    for (QString& part : parts) {
        const QString name = nameOf(part.toStdString());
        part = name.isEmpty() ? part : Text::tr("“%1”").arg(name);
    }
    return parts.join(QStringLiteral(" → "));
}

}  // namespace

QString writtenField(const std::string& place) {
    const char* word = lookUp(fields, lastKey(place));
    return word == nullptr ? QString() : Text::tr(word);
}

QString writtenSentence(const Fault& fault, const NameOfStep& nameOf) {
    Fault said = fault;
    said.place.clear();
    for (std::string& figure : said.figures) {
        figure = figureText(figure, nameOf).toStdString();
    }
    const char* pattern = patternOf(fault);
    const QString text =
        pattern == nullptr ? sentence(said) : filledIn(Text::tr(pattern), said.figures);
    const QString field = writtenField(fault.place);
    const bool named = pattern == nullptr || fault.code == FaultCode::OutOfRange;
    return named && !field.isEmpty() ? Text::tr("%1: %2").arg(field, text) : text;
}

}  // namespace rangeline
