#pragma once
// What is said at the stove: cards, countdowns, alarms, the headline. Short, to be read from afar.

#include <QString>
#include <vector>

#include "live/gains.h"
#include "live/moves.h"
#include "live/timers.h"
#include "text/names.h"

namespace rangeline {

/// How a step of a service stands.
enum class CardState : std::uint8_t {
    Later,  ///< not due yet
    Due,    ///< to be started now
    Runs,   ///< its timer counts
    Look,   ///< its time is over: is the cue there?
    Rings   ///< the same, and its alarm rings
};

struct StepCard {
    PlacementKey key;
    CardState state = CardState::Later;
    QString name;       ///< "Simmer the stock"
    QString where;      ///< "big pot, front left burner"
    QString cue;        ///< "until a knife slips in"; empty: none
    QString figure;     ///< what is read first: "12:30", "+2:10", "in 4 min"
    QString stateText;  ///< "Start now", "Runs until 6:40 PM"
    int bellNumber = 0;
};

class LiveText {
  public:
    /// The service and the names' context must outlive it.
    LiveText(const live::Service& service, const TextContext& context);

    /// `due`: when it begins, if it waits.
    StepCard card(const PlacementKey& key, Instant due, Instant now) const;
    /// "Plating at 7:04 PM, 4 minutes behind"
    QString headline(const live::Outlook& outlook) const;
    /// "3 Simmer the stock (big pot, front left burner): look whether it is ready"
    QString alarm(const live::Timer& timer) const;
    /// How late it rang, where that is worth saying; else empty.
    QString rangLate(const live::Timer& timer) const;
    /// "Later now: “Dress” at 6:42 PM, 3 more. Hold the leeks until then." Empty: nothing moved.
    QString moved(const live::Moves& moves) const;
    /// "Leaving out “Toast the seeds” gains 4 minutes"
    QString gain(const live::Gain& gain) const;
    /// What a button says that takes the offer: "Leave it out"
    QString gainAct(const live::Gain& gain) const;
    /// "Plating at 7:04 PM instead, and nothing is rushed"
    QString serveLater(const live::Outlook& outlook) const;
    QString now(Instant at) const;

  private:
    QString where(const PlacementKey& key) const;
    QString name(const PlacementKey& key) const;
    QString minutes(Duration length) const;

    const live::Service& service_;
    const TextContext& context_;
    Names names_;
    Clock clock_;
};

/// "12:30", "1:02:30"; what is over carries a plus: "+2:10".
QString countdownText(Duration left);

}  // namespace rangeline
