#include "timeline_view/describe.h"

#include <QCoreApplication>
#include <algorithm>

#include "text/plating_text.h"
#include "text/quantities.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Timeline)
};

QString laneName(const TimelineScene& scene, int lane) {
    const Lane& it = scene.lane(lane);
    if (it.kind != LaneKind::OvenSlot) {
        return it.name;
    }
    const QString& oven = scene.lane(scene.lanes().heatOf(it.equipment.unit)).name;
    return Text::tr("%1, %2").arg(oven, it.name.toLower());
}

}  // namespace

QString nameOf(const LessonDocument& document, const PlacementKey& key, const QLocale& locale) {
    const TextContext text = document.text(locale);
    return Names(text).step(key);
}

QString describeItem(const LessonDocument& document, const TimelineScene& scene, int item,
                     const QLocale& locale) {
    const TimelineItem& it = scene.item(item);
    const Clock clock(document.text(locale));
    const int block = scene.mainBlockOf(item);
    QStringList parts{it.name};
    if (block >= 0) {
        parts << laneName(scene, scene.model().blocks[static_cast<std::size_t>(block)].lane);
    }
    parts << clock.span(it.interval);
    const std::array states = {
        std::pair(it.collides, QT_TRANSLATE_NOOP("Timeline", "collides")),
        std::pair(it.late, QT_TRANSLATE_NOOP("Timeline", "late")),
        std::pair(it.begun, QT_TRANSLATE_NOOP("Timeline", "has begun")),
        std::pair(it.pinned && !it.begun, QT_TRANSLATE_NOOP("Timeline", "pinned")),
        std::pair(it.decides, QT_TRANSLATE_NOOP("Timeline", "decides plating"))};
    for (const auto& [holds, text] : states) {
        if (holds) {
            parts << Text::tr(text);
        }
    }
    parts << spareText(it.spare, locale);
    return parts.join(QStringLiteral(", "));
}

QString describeProposal(const LessonDocument& document, const Proposal& proposal,
                         const ProposalLook& look, const QLocale& locale) {
    const QString name = sentenceCase(nameOf(document, proposal.lead, locale));
    if (proposal.removes) {
        return Text::tr("%1 goes back to the shelf").arg(name);
    }
    if (proposal.begun) {
        const Clock clock(document.text(locale));
        return look.interval.empty() ? Text::tr("%1 has begun: only its end moves").arg(name)
                                     : Text::tr("%1 has begun and would end at %2")
                                           .arg(name, clock.at(look.interval.end));
    }
    const auto lead =
        std::ranges::find(proposal.edit.changes, proposal.lead, &PlacementChange::key);
    if (lead == proposal.edit.changes.end() || !lead->placement) {
        return name;
    }
    const Clock clock(document.text(locale));
    QString text = Text::tr("%1 at %2").arg(name, clock.at(lead->placement->start));
    if (proposal.refused) {
        text += Text::tr(", which does not go there: only its time changes");
    }
    const QString why = !look.reason.isEmpty() ? look.reason
                        : look.notes.empty()   ? QString()
                                               : look.notes.front();
    return why.isEmpty() ? text : Text::tr("%1. %2").arg(text, why);
}

QString describeAction(const LessonDocument& document, const Proposal& proposal, ActionKind kind,
                       const QLocale& locale) {
    const QString name = nameOf(document, proposal.lead, locale);
    if (proposal.begun) {
        return Text::tr("move the end of %1").arg(name);
    }
    switch (kind) {
        case ActionKind::Move:
            return Text::tr("move %1").arg(name);
        case ActionKind::Place:
            return Text::tr("place %1").arg(name);
        case ActionKind::TakeAway:
            break;
    }
    return Text::tr("take %1 off").arg(name);
}

}  // namespace rangeline
