// One sentence for each kind of requirement.

#include <QCoreApplication>

#include "text/explain_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Requirement)
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

class RequirementWords {
  public:
    RequirementWords(int index, const TextContext& context)
        : index_(index), context_(context), names_(context), clock_(context) {}

    QString of(RequirementKind kind) const {
        switch (kind) {
            case RequirementKind::KitchenOpens:
                return Text::tr("The kitchen opens at %1.").arg(at(head().kitchenOpens));
            case RequirementKind::CookingMayStart:
                return Text::tr("Nothing may be on the heat before %1.")
                    .arg(at(head().cookingMayStart));
            case RequirementKind::PlateKeeps:
                return Text::tr("Plates of %1 wait at most %2 to be served.")
                    .arg(dish(), length(servingOfWindow().dish.platesHold));
            case RequirementKind::Serving:
                return Text::tr("%1 is served at %2.")
                    .arg(sentenceCase(dish()), at(window().latest));
            case RequirementKind::AfterServing:
                return Text::tr("%1 comes after the serving at %2.")
                    .arg(sentenceCase(step(window().task)), at(window().earliest));
            case RequirementKind::EveryoneOut:
                return Text::tr("Everyone is out by %1.").arg(at(head().everyoneOut));
            case RequirementKind::Follows:
                return follows();
            case RequirementKind::KeepsFor:
                return keepsFor();
            case RequirementKind::Burners:
                return count(kitchen().burners.size(), Text::tr("There is only one burner."),
                             Text::tr("There are only %1 burners."));
            case RequirementKind::Wares:
                return count(
                    static_cast<std::size_t>(item(kitchen().wares).count),
                    Text::tr("There is only one %1.").arg(q(item(kitchen().wares).name)),
                    Text::tr("%2: there are only %1.")
                        .arg(QStringLiteral("%1"), sentenceCase(q(item(kitchen().wares).name))));
            case RequirementKind::PoolCapacity:
                return Text::tr("%1 has room for %2.")
                    .arg(sentenceCase(q(item(kitchen().pools).name)),
                         context_.locale.toString(item(kitchen().pools).capacity));
            case RequirementKind::OvenSlots:
                return count(static_cast<std::size_t>(item(kitchen().ovens).slots),
                             Text::tr("%1 has one rack slot.").arg(oven()),
                             Text::tr("%2 has %1 rack slots.").arg(QStringLiteral("%1"), oven()));
            case RequirementKind::OvenSettings:
                return Text::tr("%1 has one temperature at a time, and takes its time to change.")
                    .arg(oven());
            case RequirementKind::OvenWarmUp:
                return Text::tr("%1 must be turned on and warm before its first load.").arg(oven());
            case RequirementKind::Hands:
                return Text::tr("%1 has one pair of hands.").arg(q(item(kitchen().cooks).name));
            case RequirementKind::Watching:
                return Text::tr("%1 can watch only %2 at once.")
                    .arg(q(item(kitchen().cooks).name),
                         context_.locale.toString(kitchen().watchLimit));
            default:
                return ofOneThing(kind);
        }
    }

  private:
    QString ofOneThing(RequirementKind kind) const {
        switch (kind) {
            case RequirementKind::ClassWatches:
                return context_.lesson.head.groups.count > 1
                           ? Text::tr("Nobody of group %1 works while it watches.")
                                 .arg(context_.locale.toString(index_ + 1))
                           : Text::tr("Nobody works while the class watches.");
            case RequirementKind::Wash:
            case RequirementKind::PinnedWash:
                return ofChain(kind);
            case RequirementKind::WidestVessel:
                return Text::tr("The vessel of %1 is too wide for some burners.").arg(hold());
            case RequirementKind::DoorShut:
                return Text::tr("The oven door stays shut during %1.").arg(load());
            case RequirementKind::OvenFits:
                return Text::tr("%1 needs an oven with both its heat and the room.")
                    .arg(sentenceCase(load()));
            case RequirementKind::Pinned:
                return Text::tr("%1 is pinned at %2.").arg(sentenceCase(step(index_)), pinnedAt());
            case RequirementKind::PinnedTurnOn:
                return Text::tr("Turning on the oven is pinned.");
            case RequirementKind::NobodyCan:
                return Text::tr(
                           "Nobody of the crew can do %1: it needs more cooks, or one who knows "
                           "how.")
                    .arg(step(index_));
            case RequirementKind::NoWare:
                return ofChain(kind);
            case RequirementKind::NoBurner:
                return Text::tr("No burner is strong enough for %1.").arg(hold());
            case RequirementKind::NoOven:
                return Text::tr("No oven has the heat and the room for %1.").arg(load());
            case RequirementKind::HandsInside:
                return Text::tr("%1 needs hands while the oven door must stay shut.")
                    .arg(sentenceCase(load()));
            default:
                return {};
        }
    }

    QString ofChain(RequirementKind kind) const {
        const Chain& chain = context_.expanded.chains[static_cast<std::size_t>(index_)];
        const QString name = names_.step(chain.key.after);
        if (kind == RequirementKind::NoWare) {
            return Text::tr("The kitchen has nothing that %1 can be done in, or on.").arg(name);
        }
        return (kind == RequirementKind::Wash
                    ? Text::tr("What %1 is done in is washed before it is used again.")
                    : Text::tr("The wash after %1 is pinned."))
            .arg(name);
    }

    const Head& head() const { return context_.lesson.head; }
    const Kitchen& kitchen() const { return context_.lesson.kitchen; }
    template <class Thing>
    const Thing& item(const std::vector<Thing>& things) const {
        return things[static_cast<std::size_t>(index_)];
    }
    QString oven() const {
        return sentenceCase(Text::tr("the %1").arg(q(item(kitchen().ovens).name)));
    }
    QString at(const std::optional<Instant>& instant) const {
        return instant ? clock_.at(*instant) : QString();
    }
    QString length(Duration duration) const { return durationText(duration, context_.locale); }
    QString step(int task) const {
        return names_.step(context_.expanded.tasks[static_cast<std::size_t>(task)].key);
    }
    QString hold() const { return step(item(context_.expanded.burnerHolds).owner); }
    QString load() const { return step(item(context_.expanded.ovenLoads).owner); }
    const Window& window() const { return item(context_.expanded.windows); }
    const Serving& servingOfWindow() const {
        const Task& task = context_.expanded.tasks[static_cast<std::size_t>(window().task)];
        return context_.lesson.servings[static_cast<std::size_t>(task.serving)];
    }
    QString dish() const {
        const QString name = q(servingOfWindow().dish.name);
        const Task& task = context_.expanded.tasks[static_cast<std::size_t>(window().task)];
        return context_.lesson.head.groups.count > 1
                   ? Text::tr("%1 (group %2)")
                         .arg(name, context_.locale.toString(task.key.group + 1))
                   : name;
    }
    QString pinnedAt() const {
        const Task& task = context_.expanded.tasks[static_cast<std::size_t>(index_)];
        const auto placed = context_.lesson.placements.find(task.key);
        return placed == context_.lesson.placements.end() ? QString()
                                                          : clock_.at(placed->second.start);
    }
    QString count(std::size_t number, const QString& one, const QString& many) const {
        return number == 1 ? one
                           : many.arg(context_.locale.toString(static_cast<qulonglong>(number)));
    }

    /// The first or last step meant, which says enough in a sentence.
    QString pointStep(const StepPoint& point) const {
        if (point.tasks.empty()) {
            return Text::tr("what was done ahead");
        }
        return step(point.end == StepEnd::End ? point.tasks.back() : point.tasks.front());
    }

    QString ends(const StepPoint& point) const {
        return (point.end == StepEnd::End ? Text::tr("the end of %1") : Text::tr("the start of %1"))
            .arg(pointStep(point));
    }

    QString follows() const {
        const Wait& wait = item(context_.expanded.waits);
        switch (wait.origin) {
            case WaitOrigin::Uses:
            case WaitOrigin::Keeping:
                return Text::tr("%1 takes the food of %2.")
                    .arg(sentenceCase(pointStep(wait.to)), pointStep(wait.from));
            case WaitOrigin::CarriesOn:
                return Text::tr("%1 goes on in the pan of %2.")
                    .arg(sentenceCase(pointStep(wait.to)), pointStep(wait.from));
            case WaitOrigin::Link:
                break;
        }
        const Duration least = wait.least.value_or(Duration());
        if (least == Duration()) {
            return Text::tr("%1 comes after %2.").arg(sentenceCase(ends(wait.to)), ends(wait.from));
        }
        return least > Duration()
                   ? Text::tr("%1 comes at least %2 after %3.")
                         .arg(sentenceCase(ends(wait.to)), length(least), ends(wait.from))
                   : Text::tr("%1 comes at most %2 before %3.")
                         .arg(sentenceCase(ends(wait.to)), length(-least), ends(wait.from));
    }

    QString keepsFor() const {
        const Wait& wait = item(context_.expanded.waits);
        const QString most = length(wait.most.value_or(Duration()));
        return wait.origin == WaitOrigin::Keeping
                   ? Text::tr("The food of %1 keeps %2 before %3.")
                         .arg(madeBy(wait), most, pointStep(wait.to))
                   : Text::tr("%1 comes at most %2 after %3.")
                         .arg(sentenceCase(ends(wait.to)), most, ends(wait.from));
    }

    QString madeBy(const Wait& wait) const {
        if (!wait.from.tasks.empty() || wait.source < 0) {
            return pointStep(wait.from);
        }
        const DoneAhead& ahead =
            context_.lesson.choices.doneAhead[static_cast<std::size_t>(wait.source)];
        return names_.step(StepKey{ahead.step, 0, 0});
    }

    int index_;
    const TextContext& context_;
    Names names_;
    Clock clock_;
};

}  // namespace

QString requirementText(const Requirement& requirement, const TextContext& context) {
    return RequirementWords(requirement.index, context).of(requirement.kind);
}

}  // namespace rangeline
