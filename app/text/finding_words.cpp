#include "text/finding_words.h"

#include <QtGlobal>

namespace rangeline {

FindingWords wordsOf(FindingCode code) {
    switch (code) {
        case FindingCode::NotPlaced:
            return {"not-placed", QT_TRANSLATE_NOOP("Finding", "Not placed yet"),
                    QT_TRANSLATE_NOOP("Finding", "{a} has no time yet."),
                    QT_TRANSLATE_NOOP(
                        "Finding",
                        "Drag from the shelf onto the timeline, or let Arrange find places.")};
        case FindingCode::MissingAssignment:
            return {"missing-assignment", QT_TRANSLATE_NOOP("Finding", "Something is missing"),
                    QT_TRANSLATE_NOOP("Finding", "{a} has no {0:need} yet."),
                    QT_TRANSLATE_NOOP("Finding", "Choose one, or let Arrange choose.")};
        case FindingCode::UnknownEquipment:
            return {"unknown-equipment", QT_TRANSLATE_NOOP("Finding", "Not there"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{a} is placed on “{0}”, which this kitchen does not have."),
                    QT_TRANSLATE_NOOP("Finding",
                                      "Choose something that is there, or add it to the kitchen.")};
        case FindingCode::OffGrain:
            return {"off-grain", QT_TRANSLATE_NOOP("Finding", "Between the lines"),
                    QT_TRANSLATE_NOOP(
                        "Finding", "{a} starts at {at}, but starts in this lesson are {0} apart."),
                    QT_TRANSLATE_NOOP("Finding", "Move it to the nearest start.")};
        case FindingCode::BurnerTwice:
            return {
                "burner-twice", QT_TRANSLATE_NOOP("Finding", "Burner taken twice"),
                QT_TRANSLATE_NOOP("Finding", "{thing}: {b} needs it {span} while {a} is on it."),
                QT_TRANSLATE_NOOP("Finding",
                                  "Move one of them to another burner or another time.")};
        case FindingCode::WareTwice:
            return {"ware-twice", QT_TRANSLATE_NOOP("Finding", "Taken twice"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{thing}: {b} needs it {span} while {a} still has it."),
                    QT_TRANSLATE_NOOP("Finding", "Use another one, or move one of them.")};
        case FindingCode::OvenSlotTwice:
            return {
                "oven-slot-twice", QT_TRANSLATE_NOOP("Finding", "Rack slot taken twice"),
                QT_TRANSLATE_NOOP("Finding",
                                  "{thing}, slot {0}: {b} needs it {span} while {a} stands there."),
                QT_TRANSLATE_NOOP("Finding", "Use another slot, or move one of them.")};
        case FindingCode::OvenTwoTemperatures:
            return {
                "oven-two-temperatures", QT_TRANSLATE_NOOP("Finding", "One oven, two temperatures"),
                QT_TRANSLATE_NOOP("Finding",
                                  "{thing}: {b} wants {1} {span} while {a} holds it at {0}."),
                QT_TRANSLATE_NOOP(
                    "Finding", "Bake one after the other, or find a temperature that suits both.")};
        case FindingCode::OvenTwoModes:
            return {
                "oven-two-modes", QT_TRANSLATE_NOOP("Finding", "One oven, two modes"),
                QT_TRANSLATE_NOOP(
                    "Finding", "{thing}: {b} wants {1:mode} {span} while {a} runs it on {0:mode}."),
                QT_TRANSLATE_NOOP("Finding", "Bake one after the other, or use the same mode.")};
        case FindingCode::OvenChangedTooFast:
            return {
                "oven-changed-too-fast", QT_TRANSLATE_NOOP("Finding", "Oven changed over too fast"),
                QT_TRANSLATE_NOOP("Finding",
                                  "{thing}: from {2} for {a} to {3} for {b} takes {0}, but only "
                                  "{1} lie between."),
                QT_TRANSLATE_NOOP(
                    "Finding", "Start the later one later, or bring the two temperatures closer.")};
        case FindingCode::OvenNotWarm:
            return {
                "oven-not-warm", QT_TRANSLATE_NOOP("Finding", "Oven not yet warm"),
                QT_TRANSLATE_NOOP(
                    "Finding",
                    "{thing}: it needs {0} from the room’s temperature before {a}, but has {1}."),
                QT_TRANSLATE_NOOP("Finding",
                                  "Turn the oven on earlier, or put the food in later.")};
        case FindingCode::OvenNotTurnedOn:
            return {"oven-not-turned-on", QT_TRANSLATE_NOOP("Finding", "Oven not turned on"),
                    QT_TRANSLATE_NOOP("Finding", "{thing}: nobody turns it on before {a} at {at}."),
                    QT_TRANSLATE_NOOP("Finding", "Add turning it on, early enough to warm up.")};
        case FindingCode::OvenOutsideRange:
            return {"oven-outside-range", QT_TRANSLATE_NOOP("Finding", "Wrong oven temperature"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{thing} is set to {0} for {a}, which wants {1} to {2}."),
                    QT_TRANSLATE_NOOP("Finding", "Set it within that range.")};
        case FindingCode::OvenOffDial:
            return {
                "oven-off-dial", QT_TRANSLATE_NOOP("Finding", "Not on the dial"),
                QT_TRANSLATE_NOOP(
                    "Finding",
                    "{thing} cannot be set to {0} for {a}: its dial goes in steps of {1:dial}."),
                QT_TRANSLATE_NOOP("Finding", "Choose the nearest setting.")};
        case FindingCode::OvenWrongMode:
            return {"oven-wrong-mode", QT_TRANSLATE_NOOP("Finding", "Wrong oven mode"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{thing} runs on {0:mode} for {a}, which wants {1:mode}."),
                    QT_TRANSLATE_NOOP("Finding", "Change the mode, or use another oven.")};
        case FindingCode::OvenTooFewSlots:
            return {"oven-too-few-slots", QT_TRANSLATE_NOOP("Finding", "Oven is full"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{thing}: {a} needs {0} rack slots, but only {1} are there "
                                      "from where it stands."),
                    QT_TRANSLATE_NOOP("Finding", "Move it to a higher slot, or split the load.")};
        case FindingCode::DoorOpened:
            return {
                "door-opened", QT_TRANSLATE_NOOP("Finding", "Door opened"),
                QT_TRANSLATE_NOOP(
                    "Finding",
                    "{thing}: {b} opens the door {span} while {a} must bake with the door shut."),
                QT_TRANSLATE_NOOP("Finding", "Put it in before, or take it out after.")};
        case FindingCode::HandsBehindShutDoor:
            return {
                "hands-behind-shut-door", QT_TRANSLATE_NOOP("Finding", "Hands behind a shut door"),
                QT_TRANSLATE_NOOP("Finding",
                                  "{a} wants hands {span} while its own oven door must stay shut."),
                QT_TRANSLATE_NOOP("Finding", "Let the hands work come first or last.")};
        case FindingCode::WareTooSmall:
            return {"ware-too-small", QT_TRANSLATE_NOOP("Finding", "Too small"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{thing} measures {0:volume}, but {a} needs {1:volume}."),
                    QT_TRANSLATE_NOOP("Finding", "Use a bigger one, or split the load.")};
        case FindingCode::WareWrongKind:
            return {"ware-wrong-kind", QT_TRANSLATE_NOOP("Finding", "Wrong kind of pan"),
                    QT_TRANSLATE_NOOP(
                        "Finding", "{a} is placed in {thing} ({0}), but wants another kind: {1}."),
                    QT_TRANSLATE_NOOP("Finding", "Choose one of the right kind.")};
        case FindingCode::WareTooWide:
            return {
                "ware-too-wide", QT_TRANSLATE_NOOP("Finding", "Too wide for the burner"),
                QT_TRANSLATE_NOOP(
                    "Finding", "{thing}: the vessel of {a} is {0} wide, but no more than {1} fit."),
                QT_TRANSLATE_NOOP("Finding", "Use a wider burner or a smaller pan.")};
        case FindingCode::BurnerTooWeak:
            return {
                "burner-too-weak", QT_TRANSLATE_NOOP("Finding", "Burner too weak"),
                QT_TRANSLATE_NOOP("Finding", "{thing} gives {0:power}, but {a} needs {1:power}."),
                QT_TRANSLATE_NOOP("Finding", "Use a stronger burner.")};
        case FindingCode::NotYetWashed:
            return {"not-yet-washed", QT_TRANSLATE_NOOP("Finding", "Not yet washed"),
                    QT_TRANSLATE_NOOP(
                        "Finding",
                        "{thing} is not washed between {a} and {b} at {until}; washing takes {0}."),
                    QT_TRANSLATE_NOOP("Finding", "Add the wash, or use another one.")};
        case FindingCode::WashTooShort:
            return {"wash-too-short", QT_TRANSLATE_NOOP("Finding", "Wash too short"),
                    QT_TRANSLATE_NOOP("Finding", "{a} takes {0}, but has {1}."),
                    QT_TRANSLATE_NOOP("Finding", "Give it the whole time.")};
        case FindingCode::PoolOver:
            return {"pool-over", QT_TRANSLATE_NOOP("Finding", "Not enough room"),
                    QT_TRANSLATE_NOOP("Finding", "{thing}: {0} wanted {span}, {1} there: {all}."),
                    QT_TRANSLATE_NOOP("Finding", "Move one of them.")};
        case FindingCode::HandsTwice:
            return {"hands-twice", QT_TRANSLATE_NOOP("Finding", "Two things at once"),
                    QT_TRANSLATE_NOOP(
                        "Finding", "{thing} has both hands in {a} and is wanted for {b} {span}."),
                    QT_TRANSLATE_NOOP("Finding", "Move one of them, or give it to another cook.")};
        case FindingCode::TooFewHands:
            return {"too-few-hands", QT_TRANSLATE_NOOP("Finding", "Too few hands"),
                    QT_TRANSLATE_NOOP("Finding", "{a} needs {1} cooks, but has {0}."),
                    QT_TRANSLATE_NOOP("Finding", "Give it another cook.")};
        case FindingCode::CannotDo:
            return {"cannot-do", QT_TRANSLATE_NOOP("Finding", "Not this cook’s job"),
                    QT_TRANSLATE_NOOP("Finding", "{thing} is down for {a}, which asks for “{0}”."),
                    QT_TRANSLATE_NOOP("Finding", "Give it to a cook who can.")};
        case FindingCode::PiecesDoNotAdd:
            return {
                "pieces-do-not-add", QT_TRANSLATE_NOOP("Finding", "Pieces do not add up"),
                QT_TRANSLATE_NOOP("Finding", "{a}: {0} pieces are shared out, but there are {1}."),
                QT_TRANSLATE_NOOP("Finding", "Share out all of them.")};
        case FindingCode::WatchesTooMuch:
            return {"watches-too-much", QT_TRANSLATE_NOOP("Finding", "Too much to watch"),
                    QT_TRANSLATE_NOOP(
                        "Finding",
                        "{thing} watches {0} things {span}, but no more than {1} go well: {all}."),
                    QT_TRANSLATE_NOOP("Finding", "Let another cook watch, or move one of them.")};
        case FindingCode::WorksDuringTalk:
            return {"works-during-talk", QT_TRANSLATE_NOOP("Finding", "Work during the talk"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{thing} works on {b} {span}, while everyone watches {a}."),
                    QT_TRANSLATE_NOOP("Finding", "Move the work before or after the talk.")};
        case FindingCode::TooEarlyAfter:
            return {"too-early-after", QT_TRANSLATE_NOOP("Finding", "Too early"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{b} comes {0} after {a}, but should wait at least {1}."),
                    QT_TRANSLATE_NOOP("Finding", "Move it later.")};
        case FindingCode::TooLateAfter:
            return {"too-late-after", QT_TRANSLATE_NOOP("Finding", "Too late"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{b} comes {0} after {a}, but should wait no more than {1}."),
                    QT_TRANSLATE_NOOP("Finding", "Move the two closer together.")};
        case FindingCode::KeptTooLong:
            return {"kept-too-long", QT_TRANSLATE_NOOP("Finding", "Kept too long"),
                    QT_TRANSLATE_NOOP(
                        "Finding",
                        "The food of {a} waits {0} {2:storage}, {span}, for {b}; it keeps {1}."),
                    QT_TRANSLATE_NOOP("Finding",
                                      "Make it later, use it sooner, or keep it another way.")};
        case FindingCode::StoredTooLong:
            return {
                "stored-too-long", QT_TRANSLATE_NOOP("Finding", "Stored too long"),
                QT_TRANSLATE_NOOP("Finding", "“{2}”, made ahead, waits {0} for {a}; it keeps {1}."),
                QT_TRANSLATE_NOOP("Finding", "Make it ahead later, or keep it another way.")};
        case FindingCode::AheadWithoutStorage:
            return {"ahead-without-storage", QT_TRANSLATE_NOOP("Finding", "No place for it"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "“{0}” is made ahead, but nothing says where it is kept."),
                    QT_TRANSLATE_NOOP("Finding", "Choose room temperature or the cold.")};
        case FindingCode::AheadBeforeParts:
            return {"ahead-before-parts", QT_TRANSLATE_NOOP("Finding", "Made before its parts"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "“{0}” is made ahead, but food that goes into it is not."),
                    QT_TRANSLATE_NOOP("Finding", "Make its parts ahead too.")};
        case FindingCode::BeforeOpening:
            return {
                "before-opening", QT_TRANSLATE_NOOP("Finding", "Before the kitchen opens"),
                QT_TRANSLATE_NOOP("Finding", "{a} starts at {at}, but the kitchen opens at {0}."),
                QT_TRANSLATE_NOOP("Finding", "Start it later, or open earlier.")};
        case FindingCode::BeforeCooking:
            return {
                "before-cooking", QT_TRANSLATE_NOOP("Finding", "Before cooking may start"),
                QT_TRANSLATE_NOOP("Finding", "{a} starts at {at}, but cooking may start at {0}."),
                QT_TRANSLATE_NOOP("Finding", "Start it later.")};
        case FindingCode::PlatedTooEarly:
            return {"plated-too-early", QT_TRANSLATE_NOOP("Finding", "Plated too early"),
                    QT_TRANSLATE_NOOP(
                        "Finding",
                        "{a} is done {0} before it is served; plated food waits no more than {1}."),
                    QT_TRANSLATE_NOOP("Finding", "Plate later.")};
        case FindingCode::AfterServingTooEarly:
            return {
                "after-serving-too-early", QT_TRANSLATE_NOOP("Finding", "Before serving"),
                QT_TRANSLATE_NOOP("Finding", "{a} starts at {at}, but comes after serving at {0}."),
                QT_TRANSLATE_NOOP("Finding", "Move it after serving.")};
        case FindingCode::NotFinished:
            return {
                "not-finished", QT_TRANSLATE_NOOP("Finding", "Not finished in time"),
                QT_TRANSLATE_NOOP("Finding", "{a} is not done before everyone must be out at {0}."),
                QT_TRANSLATE_NOOP("Finding", "Start earlier, or take more hands.")};
        case FindingCode::PlatingLate:
            return {"plating-late", QT_TRANSLATE_NOOP("Finding", "Late"),
                    QT_TRANSLATE_NOOP("Finding", "{a} is {0} late for serving at {at}."),
                    QT_TRANSLATE_NOOP("Finding", "Start earlier, or serve later.")};
        case FindingCode::OutOfTemperatureTooLong:
            return {
                "out-of-temperature-too-long", QT_TRANSLATE_NOOP("Finding", "Out too long"),
                QT_TRANSLATE_NOOP("Finding",
                                  "The food of {a} is out of the cold and the heat for {0} until "
                                  "{b}, past the limit chosen: {1} ({2:source})."),
                QT_TRANSLATE_NOOP("Finding", "Keep it cold or hot in between, or make it later.")};
        case FindingCode::CoreBelowLimit:
            return {
                "core-below-limit", QT_TRANSLATE_NOOP("Finding", "Below the core temperature"),
                QT_TRANSLATE_NOOP(
                    "Finding",
                    "{a} cooks {2:food} to {0}, below the limit chosen: {1} inside ({3:source})."),
                QT_TRANSLATE_NOOP("Finding",
                                  "Cook it to {1}{held}; measure in the thickest part.")};
        case FindingCode::CoreNotStated:
            return {"core-not-stated", QT_TRANSLATE_NOOP("Finding", "No core temperature"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{a} cooks {1:food} and states no core temperature; the "
                                      "limit chosen is {0} ({2:source})."),
                    QT_TRANSLATE_NOOP("Finding",
                                      "State {0} or more{held}; measure in the thickest part.")};
        case FindingCode::Danger:
            return {"danger", QT_TRANSLATE_NOOP("Finding", "Mind"),
                    QT_TRANSLATE_NOOP("Finding", "{a}: {0:danger}"), ""};
        case FindingCode::CrossContact:
            return {
                "cross-contact", QT_TRANSLATE_NOOP("Finding", "Raw, then ready to eat"),
                QT_TRANSLATE_NOOP(
                    "Finding",
                    "{thing}: {b} at {at} comes after the raw food of {a} with no wash between."),
                QT_TRANSLATE_NOOP("Finding",
                                  "Wash it at a sink in between, or use another board.")};
        case FindingCode::AllergenContact:
            return {
                "allergen-contact", QT_TRANSLATE_NOOP("Finding", "Traces of an allergen"),
                QT_TRANSLATE_NOOP("Finding",
                                  "{thing}: {a} leaves {0:allergen} on it, and {b} comes at {at} "
                                  "with no wash between."),
                QT_TRANSLATE_NOOP("Finding", "Wash it at a sink in between, or use another one.")};
        case FindingCode::GuestAllergen:
            return {"guest-allergen", QT_TRANSLATE_NOOP("Finding", "A guest must not eat this"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "“{1}” ({2}) has {0:allergen}, which a guest must not eat."),
                    QT_TRANSLATE_NOOP("Finding",
                                      "Leave it out for that guest, or serve something else.")};
        case FindingCode::DepthChanged:
            return {"depth-changed", QT_TRANSLATE_NOOP("Finding", "Deeper or shallower"),
                    QT_TRANSLATE_NOOP(
                        "Finding",
                        "{a}: for so many covers the food lies about {0} per cent as deep "
                        "as it was written; heating and reducing take about as "
                        "much more or less time (common practice)."),
                    QT_TRANSLATE_NOOP("Finding", "Go by the cue, or take a pan of another size.")};
        case FindingCode::HandworkUnchanged:
            return {"handwork-unchanged", QT_TRANSLATE_NOOP("Finding", "Timed for fewer covers"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{all}: timed as for {0} covers, though {1} are served."),
                    QT_TRANSLATE_NOOP("Finding",
                                      "Time it by the piece, or change what it takes in the "
                                      "dish. Then arrange again.")};
        case FindingCode::UnusualDuration:
            return {"unusual-duration", QT_TRANSLATE_NOOP("Finding", "Unusual time"),
                    QT_TRANSLATE_NOOP("Finding",
                                      "{a} takes {0}; usual are {1} to {2} (common practice)."),
                    QT_TRANSLATE_NOOP("Finding", "Check the time on the card.")};
        case FindingCode::AtItsLimit:
            return {
                "at-its-limit", QT_TRANSLATE_NOOP("Finding", "At its limit"),
                QT_TRANSLATE_NOOP("Finding", "{thing} is at its highest setting, {1}, for {a}."),
                QT_TRANSLATE_NOOP("Finding", "Try it beforehand: it may not get there.")};
    }
    return {"", "", "", ""};
}

}  // namespace rangeline
