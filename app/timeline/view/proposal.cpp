#include "timeline_view/proposal.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "text/finding_text.h"
#include "text/quantities.h"
#include "timeline/blocks.h"

namespace rangeline {
namespace {

constexpr std::size_t mostNotes = 2;

bool isShown(const Finding& finding) {
    return finding.severity == Severity::Collision || finding.severity == Severity::Late;
}

/// The blocks that would be elsewhere: those of what the edit changes, and what goes along because
/// it is in the same vessel or on the same burner.
class GhostFinder {
  public:
    GhostFinder(const TimelineScene& scene, const SetPlacements& edit, const Names& names)
        : scene_(scene), edit_(edit), names_(names) {
        for (const TimelineBlock& block : scene.model().blocks) {
            now_.emplace(block.item, block.lane);
        }
    }

    void run(const UseIndex& index) {
        for (const TimelineBlock& block :
             makeBlocks(index, scene_.lanes(), scene_.model().span.begin)) {
            const PlacementKey key = index.keyOf(block.item);
            if (block.kind != BlockKind::Waiting && isElsewhere(key, block.lane)) {
                const QString name = block.main ? sentenceCase(names_.plainStep(key)) : QString();
                ghosts_.emplace_back(key, Ghost{block.lane, block.interval, name, false});
            }
        }
    }

    /// In the order of the blocks, those that collide marked.
    std::vector<Ghost> ghosts(const std::vector<PlacementKey>& colliding) const {
        std::vector<Ghost> found;
        for (const auto& [key, ghost] : ghosts_) {
            found.push_back(ghost);
            found.back().collides = std::ranges::find(colliding, key) != colliding.end();
        }
        return found;
    }

  private:
    bool isElsewhere(const PlacementKey& key, int lane) const {
        return std::ranges::find(edit_.changes, key, &PlacementChange::key) !=
                   edit_.changes.end() ||
               !now_.contains({scene_.itemOf(key), lane});
    }

    const TimelineScene& scene_;
    const SetPlacements& edit_;
    const Names& names_;
    std::set<std::pair<int, int>> now_;  ///< item and lane
    std::vector<std::pair<PlacementKey, Ghost>> ghosts_;
};

/// "Burner taken twice: char the leeks": what is wrong, and with what else.
QString noteOf(const Finding& finding, const PlacementKey& lead, const Names& names) {
    const auto other = std::ranges::find_if(
        finding.keys, [&lead](const PlacementKey& key) { return key != lead; });
    const QString what = title(finding);
    return other == finding.keys.end() ? what
                                       : QCoreApplication::translate("Timeline", "%1: %2")
                                             .arg(what, names.plainStep(*other));
}

void addNote(const QString& note, ProposalLook& look) {
    if (std::ranges::find(look.notes, note) != look.notes.end()) {
        return;
    }
    if (look.notes.size() < mostNotes) {
        look.notes.push_back(note);
    } else {
        ++look.more;
    }
}

/// Whether the placement is held, over others or at once, by a time at which something is served.
bool isHeldByServing(const PlatingAnalysis& analysis, const Expanded& expanded,
                     const Spare* spare) {
    for (std::size_t steps = 0; steps < analysis.spares.size() && !spare->holds.empty(); ++steps) {
        const Hold& hold = spare->holds.front();
        if (hold.by == HeldBy::Deadline && hold.window >= 0) {
            return expanded.windows[static_cast<std::size_t>(hold.window)].origin !=
                   WindowOrigin::EveryoneOut;
        }
        if (hold.next < 0) {
            return false;
        }
        spare = &analysis.spares[static_cast<std::size_t>(hold.next)];
    }
    return false;
}

/// Moving later by more than there is to spare makes the plates late, even where nothing collides.
void addLateness(const LessonDocument& document, const Proposal& proposal, const QLocale& locale,
                 ProposalLook& look) {
    const auto& analysis = document.analysis();
    const auto spare = std::ranges::find(analysis.spares, proposal.lead, &Spare::key);
    const auto now = document.lesson().placements.find(proposal.lead);
    if (spare == analysis.spares.end() || now == document.lesson().placements.end()) {
        return;
    }
    const Duration over = look.interval.begin - now->second.start - spare->spare;
    if (look.interval.begin <= now->second.start || over <= Duration()) {
        return;
    }
    const QString much = durationText(over, locale);
    look.notes.push_back(
        (isHeldByServing(analysis, document.expanded(), &*spare)
             ? QCoreApplication::translate("Timeline", "Plating would be %1 late")
             : QCoreApplication::translate("Timeline", "%1 more than it can spare"))
            .arg(much));
}

}  // namespace

ProposalLook lookOf(const LessonDocument& document, const TimelineScene& scene,
                    const Proposal& proposal, const QLocale& locale) {
    const SetPlacements& edit = proposal.edit;
    const TextContext text = document.text(locale);
    const Names names(text);
    GhostFinder ghosts(scene, edit, names);
    ProposalLook look;
    const auto findings = document.preview(edit, [&](const UseIndex& index) {
        ghosts.run(index);
        const int node = index.nodeOf(proposal.lead);
        look.interval = node < 0 ? Interval() : index.placed(node).interval;
    });
    addLateness(document, proposal, locale, look);
    std::vector<PlacementKey> colliding;
    for (const Finding& finding : findings) {
        if (!isShown(finding)) {
            continue;
        }
        look.collides = true;
        colliding.insert(colliding.end(), finding.keys.begin(), finding.keys.end());
        look.reason = look.reason.isEmpty() ? sentence(finding, text) : look.reason;
        addNote(noteOf(finding, proposal.lead, names), look);
    }
    look.ghosts = ghosts.ghosts(colliding);
    for (const PlacementKey& key : colliding) {
        const bool moves =
            std::ranges::find(edit.changes, key, &PlacementChange::key) != edit.changes.end();
        if (!moves && scene.itemOf(key) >= 0) {
            look.clashing.push_back(scene.itemOf(key));
        }
    }
    return look;
}

}  // namespace rangeline
