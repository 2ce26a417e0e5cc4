#include "text/rehearsal_tables.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "analysis/at.h"
#include "text/explain_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Rehearsal)
};

int percentOf(double part) {
    return static_cast<int>(std::lround(part * 100));
}

/// Makes rows of what has at least one in a hundred.
template <class Fill>
std::vector<SufferingRow> rowsOf(const std::vector<Excess>& excesses, const QLocale& locale,
                                 Fill fill) {
    std::vector<SufferingRow> rows;
    for (const Excess& excess : excesses) {
        if (percentOf(excess.share) > 0) {
            SufferingRow row;
            row.percent = percentOf(excess.share);
            row.by = durationText(wholeMinutes(excess.by), locale);
            row.excess = excess;
            fill(row);
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

QString changeName(const Help& help, const TextContext& context) {
    Remedy remedy;
    switch (help.kind) {
        case HelpKind::Ware:
            remedy.kind = RemedyKind::AnotherWare;
            break;
        case HelpKind::Burner:
            remedy.kind = RemedyKind::AnotherBurner;
            break;
        case HelpKind::Helper:
            remedy.kind = RemedyKind::AnotherCook;
            break;
        case HelpKind::DoneAhead:
            remedy.kind = RemedyKind::DoAhead;
            break;
    }
    remedy.index = help.index;
    return sentenceCase(remedyName(remedy, context));
}

}  // namespace

std::vector<SufferingRow> waitingFoodRows(const Rehearsal& rehearsal, const Network& network,
                                          const UseIndex& index, const TextContext& context) {
    const Names names(context);
    const auto nameOf = [&](const std::vector<Moment>& moments) {
        const int node = at(network.activities, moments.front().activity).node;
        return sentenceCase(names.plainStep(index.keyOf(node)));
    };
    return rowsOf(rehearsal.waitsTooLong, context.locale, [&](SufferingRow& row) {
        const WaitLimit& limit = at(network.limits, row.excess.of);
        row.who = limit.from.empty() ? Text::tr("What was done ahead") : nameOf(limit.from);
        row.step = nameOf(limit.to);
    });
}

std::vector<SufferingRow> shortHandsRows(const Rehearsal& rehearsal, const Network& network,
                                         const UseIndex& index, const TextContext& context) {
    const Names names(context);
    return rowsOf(rehearsal.waitsForCook, context.locale, [&](SufferingRow& row) {
        const Following& following = at(network.followings, row.excess.of);
        row.who = names.equipment(following.equipment);
        row.step =
            sentenceCase(names.plainStep(index.keyOf(at(network.activities, following.to).node)));
    });
}

std::vector<HelpRow> helpRows(const Helps& helps, const TextContext& context) {
    std::vector<HelpRow> rows;
    for (const Help& help : helps.tried) {
        const Duration earlier = wholeMinutes(help.earlier);
        rows.push_back({changeName(help, context), percentOf(help.onTime),
                        earlier == Duration()
                            ? Text::tr("as planned")
                            : Text::tr("%1 earlier").arg(durationText(earlier, context.locale))});
    }
    return rows;
}

QString helpsMostText(const Helps& helps, const TextContext& context) {
    if (helps.tried.empty()) {
        return Text::tr(
            "There is nothing to try: nobody waits for a pan, a burner or a cook, and "
            "nothing may be done ahead.");
    }
    const Help& best = helps.tried.front();
    if (percentOf(best.onTime) <= percentOf(helps.onTime)) {
        return Text::tr("None of these changes makes plating on time more likely.");
    }
    return Text::tr("What helps most: %1. Plating is on time in %2 of 100 then, instead of %3.")
        .arg(changeName(best, context), QString::number(percentOf(best.onTime)),
             QString::number(percentOf(helps.onTime)));
}

}  // namespace rangeline
