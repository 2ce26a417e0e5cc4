#include "text/plating_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

namespace rangeline {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Plating)
};

/// The words for one hold of one placement.
class HoldWords {
  public:
    /// For the holds of that placement.
    HoldWords(const Spare& own, const PlatingAnalysis& analysis, const TextContext& context)
        : own_(own), analysis_(analysis), context_(context), names_(context), clock_(context) {}

    QString of(const Hold& hold) const {
        switch (hold.by) {
            case HeldBy::Deadline:
                return deadline(hold);
            case HeldBy::Wait:
                return wait(hold);
            case HeldBy::Equipment:
                return hasBegun(hold) ? Text::tr("held by %1, which %2 needs again after it")
                                            .arg(names_.withArticle(hold.equipment), next(hold))
                                      : Text::tr("held by %1, which %2 needs at %3")
                                            .arg(names_.withArticle(hold.equipment), next(hold),
                                                 nextStart(hold));
            case HeldBy::Cook:
                return hasBegun(hold) ? Text::tr("held by %1, who goes back to %2 after it")
                                            .arg(names_.equipment(hold.equipment), next(hold))
                                      : Text::tr("held by %1, who goes on to %2 at %3")
                                            .arg(names_.equipment(hold.equipment), next(hold),
                                                 nextStart(hold));
            case HeldBy::Pin:
                break;
        }
        return Text::tr("pinned where it is");
    }

    QString start(const PlacementKey& key) const {
        const auto placed = context_.lesson.placements.find(key);
        return placed == context_.lesson.placements.end() ? QString()
                                                          : clock_.at(placed->second.start);
    }
    QString name(const PlacementKey& key) const { return names_.step(key); }

  private:
    const Spare* nextSpare(const Hold& hold) const {
        return hold.next < 0 ? nullptr : &analysis_.spares[static_cast<std::size_t>(hold.next)];
    }
    /// Whether what holds it starts earlier: only a later part of it is meant, and its start would
    /// say nothing.
    bool hasBegun(const Hold& hold) const {
        const Spare* spare = nextSpare(hold);
        const auto& placements = context_.lesson.placements;
        const auto own = placements.find(own_.key);
        const auto other = spare == nullptr ? placements.end() : placements.find(spare->key);
        return own != placements.end() && other != placements.end() &&
               other->second.start < own->second.start;
    }
    QString next(const Hold& hold) const {
        const Spare* spare = nextSpare(hold);
        return spare == nullptr ? Text::tr("what comes next") : names_.step(spare->key);
    }
    QString nextStart(const Hold& hold) const {
        const Spare* spare = nextSpare(hold);
        return spare == nullptr ? QString() : start(spare->key);
    }

    QString deadline(const Hold& hold) const {
        if (hold.window < 0) {
            return Text::tr("held by the end of the lesson");
        }
        const Window& window = context_.expanded.windows[static_cast<std::size_t>(hold.window)];
        const QString latest = window.latest ? clock_.at(*window.latest) : QString();
        return (window.origin == WindowOrigin::EveryoneOut
                    ? Text::tr("held by the kitchen, which everyone leaves at %1")
                    : Text::tr("held by serving at %1"))
            .arg(latest);
    }

    /// Whether the hold looks back: the other end of the wait cannot move and this may not leave it
    /// further behind.
    bool looksBack(const Hold& hold, const Wait& wait) const {
        const Spare* spare = nextSpare(hold);
        const auto* key = spare == nullptr ? nullptr : std::get_if<StepKey>(&spare->key);
        const int task = key == nullptr ? -1 : context_.expanded.taskOf(*key);
        return task < 0 || std::ranges::find(wait.from.tasks, task) != wait.from.tasks.end();
    }

    QString wait(const Hold& hold) const {
        if (hold.wait < 0 && hasBegun(hold)) {
            return Text::tr("held by %1").arg(next(hold));
        }
        if (hold.wait < 0) {
            return Text::tr("held by %1 at %2").arg(next(hold), nextStart(hold));
        }
        const Wait& wait = context_.expanded.waits[static_cast<std::size_t>(hold.wait)];
        if (wait.most && looksBack(hold, wait)) {
            const QString most = durationText(*wait.most, context_.locale);
            return (wait.origin == WaitOrigin::Keeping
                        ? Text::tr("held by the food of %1, which keeps %2")
                        : Text::tr("held by %1, which it may follow by %2 "
                                   "at most"))
                .arg(next(hold), most);
        }
        if (hasBegun(hold)) {
            return Text::tr("held by %1, which ends only after it").arg(next(hold));
        }
        switch (wait.origin) {
            case WaitOrigin::CarriesOn:
                return Text::tr("held by %1, which goes on in the same pan at %2")
                    .arg(next(hold), nextStart(hold));
            case WaitOrigin::Uses:
            case WaitOrigin::Keeping:
                return Text::tr("held by %1, which its food goes into at %2")
                    .arg(next(hold), nextStart(hold));
            case WaitOrigin::Link:
                break;
        }
        return wait.least.value_or(Duration()) > Duration()
                   ? Text::tr("held by %1 at %2, which waits %3 for it")
                         .arg(next(hold), nextStart(hold),
                              durationText(*wait.least, context_.locale))
                   : Text::tr("held by %1, which waits for it, at %2")
                         .arg(next(hold), nextStart(hold));
    }

    const Spare& own_;
    const PlatingAnalysis& analysis_;
    const TextContext& context_;
    Names names_;
    Clock clock_;
};

}  // namespace

QString spareText(Duration spare, const QLocale& locale) {
    if (spare == Duration()) {
        return Text::tr("no minutes to spare");
    }
    return spare < Duration() ? Text::tr("starts %1 too late").arg(durationText(-spare, locale))
                              : Text::tr("%1 to spare").arg(durationText(spare, locale));
}

QString holdText(const Spare& spare, const PlatingAnalysis& analysis, const TextContext& context) {
    const HoldWords words(spare, analysis, context);
    QStringList parts;
    std::set<int> named;
    for (const Hold& hold : spare.holds) {
        // The end of the lesson says nothing where there is a nearer reason.
        const bool far = hold.by == HeldBy::Deadline && hold.window < 0 && spare.holds.size() > 1;
        const QString text = words.of(hold);
        // Held up for two reasons by the same step: one will do.
        const bool again = hold.next >= 0 && !named.insert(hold.next).second;
        if (!far && !again && parts.size() < 2 && !parts.contains(text)) {
            parts << text;
        }
    }
    return parts.join(Text::tr(", "));
}

QString platingLine(const Spare& spare, const PlatingAnalysis& analysis,
                    const TextContext& context) {
    const HoldWords words(spare, analysis, context);
    const QString line = Text::tr("%1  %2: %3")
                             .arg(words.start(spare.key), words.name(spare.key),
                                  spareText(spare.spare, context.locale));
    const QString holds = holdText(spare, analysis, context);
    return holds.isEmpty() ? line : Text::tr("%1, %2").arg(line, holds);
}

QStringList platingLines(const PlatingAnalysis& analysis, const TextContext& context) {
    QStringList lines;
    for (const int number : analysis.path) {
        lines << platingLine(analysis.spares[static_cast<std::size_t>(number)], analysis, context);
    }
    return lines;
}

QStringList spareLines(const PlatingAnalysis& analysis, const TextContext& context) {
    QStringList lines;
    for (const Spare& spare : analysis.spares) {
        lines << platingLine(spare, analysis, context);
    }
    return lines;
}

}  // namespace rangeline
