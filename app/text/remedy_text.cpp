// What would help, in words.

#include <QCoreApplication>

#include "text/explain_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Remedy)
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

template <class Thing>
const Thing& at(const std::vector<Thing>& things, int index) {
    return things[static_cast<std::size_t>(index)];
}

QString stepOfPoint(const StepPoint& point, const TextContext& context, const Names& names) {
    return point.tasks.empty() ? Text::tr("what was done ahead")
                               : names.step(at(context.expanded.tasks, point.tasks.front()).key);
}

QString waitName(const Remedy& remedy, const TextContext& context, const QString& by) {
    const Names names(context);
    const Wait& wait = at(context.expanded.waits, remedy.index);
    const QString to = stepOfPoint(wait.to, context, names);
    const QString from =
        wait.from.tasks.empty() && wait.source >= 0
            ? names.step(StepKey{at(context.lesson.choices.doneAhead, wait.source).step, 0, 0})
            : stepOfPoint(wait.from, context, names);
    if (remedy.kind == RemedyKind::WaitLess) {
        return Text::tr("let %1 come %2 sooner after %3").arg(to, by, from);
    }
    return remedy.kind == RemedyKind::WaitLonger
               ? Text::tr("let %1 come up to %2 later after %3").arg(to, by, from)
               : Text::tr("let the food of %1 keep %2 longer before %3").arg(from, by, to);
}

QString equipmentName(const Remedy& remedy, const TextContext& context) {
    const Kitchen& kitchen = context.lesson.kitchen;
    switch (remedy.kind) {
        case RemedyKind::TurnOut:
            return Text::tr("turn food out of the %1 as soon as it is done there")
                .arg(q(at(kitchen.wares, remedy.index).name));
        case RemedyKind::AnotherWare:
            return Text::tr("one more %1").arg(q(at(kitchen.wares, remedy.index).name));
        case RemedyKind::MoreRoom:
            return Text::tr("room for one more: %1").arg(q(at(kitchen.pools, remedy.index).name));
        case RemedyKind::AnotherBurner:
            return Text::tr("one more burner");
        case RemedyKind::AnotherOven:
            return Text::tr("a second oven");
        default:
            return Text::tr("one more helper");
    }
}

}  // namespace

QString remedyName(const Remedy& remedy, const TextContext& context) {
    const QString by = durationText(remedy.by.value_or(Duration()), context.locale);
    const Names names(context);
    const auto step = [&] { return names.step(at(context.expanded.tasks, remedy.index).key); };
    switch (remedy.kind) {
        case RemedyKind::ServeLater:
            return Text::tr("serve %1 later").arg(by);
        case RemedyKind::OpenEarlier:
            return Text::tr("open the kitchen %1 earlier").arg(by);
        case RemedyKind::CookEarlier:
            return Text::tr("let cooking start %1 earlier").arg(by);
        case RemedyKind::LeaveLater:
            return Text::tr("stay %1 longer").arg(by);
        case RemedyKind::PlatesWaitLonger:
            return Text::tr("let plates wait %1 longer").arg(by);
        case RemedyKind::WaitLess:
        case RemedyKind::WaitLonger:
        case RemedyKind::KeepLonger:
            return waitName(remedy, context, by);
        case RemedyKind::Unpin:
            return Text::tr("take the pin off %1").arg(step());
        case RemedyKind::DoAhead:
            return Text::tr("do %1 ahead").arg(step());
        default:
            return equipmentName(remedy, context);
    }
}

QString remedyText(const Remedy& remedy, const TextContext& context) {
    const Clock clock(context);
    const bool later = remedy.kind == RemedyKind::ServeLater;
    // Serving moves on the clock, and what counts from it with it.
    const Instant start = later ? remedy.start + *remedy.by : remedy.start;
    QString text = remedy.by && !remedy.least ? Text::tr("%1: it starts at %2 then. Less may do.")
                                              : Text::tr("%1: it starts at %2 then.");
    text = text.arg(sentenceCase(remedyName(remedy, context)), clock.at(start));
    const bool keeping =
        remedy.kind == RemedyKind::KeepLonger || remedy.kind == RemedyKind::DoAhead;
    return keeping ? Text::tr("%1 Only if the food bears it: mind your local food rules.").arg(text)
                   : text;
}

}  // namespace rangeline
