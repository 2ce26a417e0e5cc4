#include "text/live_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <cstdlib>

#include "text/quantities.h"

namespace rangeline {
namespace {

using live::Bell;
using live::Stage;

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Live)
};

constexpr std::int64_t minute = 60;

/// The whole minute, upwards: what is said to be at 7:04 is not over at 7:04:30.
Instant upToMinute(Instant at) {
    const std::int64_t over = ((at.inSeconds() % minute) + minute) % minute;
    return over == 0 ? at : at + Duration::seconds(minute - over);
}

Instant downToMinute(Instant at) {
    return upToMinute(at - Duration::seconds(minute - 1));
}

int upToMinutes(Duration length) {
    return static_cast<int>((length.inSeconds() + minute - 1) / minute);
}

CardState stateOf(const live::Work& work, Instant due, Instant now) {
    if (work.stage == Stage::Waiting) {
        return due <= now ? CardState::Due : CardState::Later;
    }
    if (work.bell == Bell::Ringing) {
        return CardState::Rings;
    }
    return work.cueAt <= now ? CardState::Look : CardState::Runs;
}

/// In the words of the cook who wrote the component.
QString simplerForm(const Lesson& lesson, const live::Gain& gain) {
    const StepId& left = std::get<StepKey>(gain.keys.front()).step;
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            if (component.simpler && std::ranges::count(component.simpler->without, left) > 0) {
                return QString::fromStdString(component.simpler->how);
            }
        }
    }
    return {};
}

}  // namespace

QString countdownText(Duration left) {
    const std::int64_t all = std::abs(left.inSeconds());
    const auto two = [](std::int64_t number) {
        return QStringLiteral("%1").arg(number, 2, 10, QLatin1Char('0'));
    };
    const std::int64_t hours = all / 3600;
    const QString minutes = hours > 0 ? QString::number(hours) + u':' + two(all / minute % minute)
                                      : QString::number(all / minute);
    return (left < Duration() ? QStringLiteral("+") : QString()) + minutes + u':' +
           two(all % minute);
}

LiveText::LiveText(const live::Service& service, const TextContext& context)
    : service_(service),
      context_(context),
      names_(context),
      clock_(context.lesson.head, context.locale) {}

QString LiveText::name(const PlacementKey& key) const {
    return sentenceCase(names_.plainStep(key));
}

QString LiveText::now(Instant at) const {
    return clock_.at(downToMinute(at));
}

QString LiveText::minutes(Duration length) const {
    const int count = upToMinutes(length);
    constexpr int minutesInHour = 60;
    if (count >= minutesInHour) {
        return durationText(Duration::minutes(count), context_.locale);
    }
    return count == 1 ? Text::tr("1 minute") : Text::tr("%1 minutes").arg(count);
}

QString LiveText::where(const PlacementKey& key) const {
    const UseIndex& index = service_.index();
    const int node = index.nodeOf(key);
    if (node < 0 || !index.isTask(node)) {
        return {};
    }
    const int group = index.groupOf(node);
    QStringList places;
    const Expanded& expanded = index.expanded();
    for (std::size_t i = 0; i < expanded.chains.size(); ++i) {
        const Chain& chain = expanded.chains[i];
        if (std::ranges::find(chain.tasks, node) == chain.tasks.end()) {
            continue;
        }
        const auto owner = service_.lesson().placements.find(
            chain.owner < 0
                ? key
                : PlacementKey(expanded.tasks[static_cast<std::size_t>(chain.owner)].key));
        const auto spot = static_cast<std::size_t>(chain.key.spot);
        if (chain.fixedSpot) {
            places << names_.ware(*chain.fixedSpot, group);
        } else if (owner != service_.lesson().placements.end() &&
                   spot < owner->second.wares.size()) {
            places << names_.ware(owner->second.wares[spot], group);
        }
    }
    for (std::size_t i = 0; i < expanded.burnerHolds.size(); ++i) {
        const BurnerHold& hold = expanded.burnerHolds[i];
        const int unit = index.burnerUnit(static_cast<int>(i));
        if (unit >= 0 && std::ranges::find(hold.tasks, node) != hold.tasks.end()) {
            places << names_.burner(index.burnerOf(unit).id, group);
        }
    }
    const Placement& placement = service_.lesson().placements.at(key);
    if (placement.oven) {
        places << Text::tr("%1 at %2")
                      .arg(names_.oven(placement.oven->oven, group),
                           temperatureText(placement.oven->setTo, context_.lesson.head.units,
                                           context_.locale));
    }
    for (const Share& share : placement.hands) {
        if (context_.lesson.head.crew.size() > 1) {
            places << names_.cook(share.cook, group);
        }
    }
    places.removeDuplicates();
    return places.join(QStringLiteral(", "));
}

StepCard LiveText::card(const PlacementKey& key, Instant due, Instant now) const {
    const live::Work& work = service_.work(key);
    const int node = service_.index().nodeOf(key);
    StepCard card{key, stateOf(work, due, now), name(key), where(key), {}, {}, {}, work.bellNumber};
    if (service_.index().isTask(node)) {
        card.cue = QString::fromStdString(service_.index().step(node).cue);
    }
    switch (card.state) {
        case CardState::Later:
            card.figure = Text::tr("in %1 min").arg(upToMinutes(due - now));
            card.stateText = Text::tr("Starts at %1").arg(clock_.at(upToMinute(due)));
            break;
        case CardState::Due: {
            const Duration late = now - due;
            card.figure = Text::tr("now");
            card.stateText = late < Duration::minutes(1)
                                 ? Text::tr("Start it now")
                                 : Text::tr("Start it now: %1 late").arg(minutes(late));
            break;
        }
        case CardState::Runs:
            card.figure = countdownText(work.cueAt - now);
            card.stateText = Text::tr("Runs until %1").arg(clock_.at(upToMinute(work.cueAt)));
            break;
        case CardState::Look:
        case CardState::Rings:
            card.figure = countdownText(work.cueAt - now);
            card.stateText =
                card.cue.isEmpty() ? Text::tr("Its time is over") : Text::tr("Look now");
            break;
    }
    return card;
}

QString LiveText::headline(const live::Outlook& outlook) const {
    if (outlook.plated) {
        return Text::tr("Everything is plated");
    }
    if (outlook.behind < live::behindFrom) {
        const Instant planned = outlook.plating - std::max(outlook.behind, Duration());
        return Text::tr("Plating at %1, on time").arg(clock_.at(planned));
    }
    return Text::tr("Plating at %1, %2 behind")
        .arg(clock_.at(upToMinute(outlook.plating)), minutes(outlook.behind));
}

QString LiveText::alarm(const live::Timer& timer) const {
    const QString place = where(timer.key);
    const QString subject =
        place.isEmpty() ? name(timer.key) : Text::tr("%1 (%2)").arg(name(timer.key), place);
    const int node = service_.index().nodeOf(timer.key);
    const QString cue = service_.index().isTask(node)
                            ? QString::fromStdString(service_.index().step(node).cue)
                            : QString();
    return cue.isEmpty() ? Text::tr("%1: its time is over").arg(subject)
                         : Text::tr("%1: %2?").arg(subject, cue);
}

QString LiveText::rangLate(const live::Timer& timer) const {
    const Duration late = service_.work(timer.key).rangLate;
    if (late <= live::rangLateFrom) {
        return {};
    }
    constexpr Duration exact = Duration::minutes(10);  // later than that no second counts
    return Text::tr("rang %1 late")
        .arg(late < exact ? durationText(late, context_.locale) : minutes(late));
}

QString LiveText::moved(const live::Moves& moves) const {
    if (moves.moved.empty()) {
        return {};
    }
    const live::MovedStep& first = moves.moved.front();
    const int others = static_cast<int>(moves.moved.size()) - 1;
    QString text =
        Text::tr("“%1” moves to %2").arg(name(first.key), clock_.at(upToMinute(first.to)));
    if (others > 0) {
        text += others == 1 ? Text::tr(", and 1 more moves")
                            : Text::tr(", and %1 more move").arg(others);
    }
    text += u'.';
    if (!moves.held.empty()) {
        const live::HeldFood& held = moves.held.front();
        text += u' ' + Text::tr("Hold what “%1” made until %2.")
                           .arg(name(held.made), clock_.at(upToMinute(held.at)));
    }
    return text;
}

QString LiveText::gain(const live::Gain& gain) const {
    const QString by = minutes(gain.by);
    switch (gain.how) {
        case live::GainBy::SimplerForm:
            return Text::tr("“%1” made simpler (%2) gains %3")
                .arg(names_.component(std::get<StepKey>(gain.keys.front())),
                     simplerForm(context_.lesson, gain), by);
        case live::GainBy::LeavingOutComponent:
            return Text::tr("Leaving out “%1” as a whole gains %2")
                .arg(names_.component(std::get<StepKey>(gain.keys.front())), by);
        case live::GainBy::SwappingIn:
            return Text::tr("If “%1” is there ready from before, using that gains %2")
                .arg(name(gain.keys.front()), by);
        case live::GainBy::ServingLater:
            return Text::tr("Serving %1 later is what is left").arg(by);
        case live::GainBy::LeavingOutStep:
            break;
    }
    return Text::tr("Leaving out “%1” gains %2").arg(name(gain.keys.front()), by);
}

QString LiveText::gainAct(const live::Gain& gain) const {
    switch (gain.how) {
        case live::GainBy::SimplerForm:
            return Text::tr("Make it simpler");
        case live::GainBy::SwappingIn:
            return Text::tr("Use that");
        default:
            return Text::tr("Leave it out");
    }
}

QString LiveText::serveLater(const live::Outlook& outlook) const {
    return Text::tr("Plating at %1 instead, and nothing is rushed")
        .arg(clock_.at(upToMinute(outlook.plating)));
}

}  // namespace rangeline
