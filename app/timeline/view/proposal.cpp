#include "timeline_view/proposal.h"

#include <algorithm>
#include <set>

#include "text/finding_text.h"
#include "timeline/blocks.h"

namespace rangeline {
namespace {

constexpr std::size_t mostReasons = 3;

bool isShown(const Finding& finding) {
    return finding.severity != Severity::Caution;
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

void addReason(const QString& reason, std::vector<QString>& reasons) {
    if (reasons.size() < mostReasons && std::ranges::count(reasons, reason) == 0) {
        reasons.push_back(reason);
    }
}

}  // namespace

ProposalLook lookOf(const LessonDocument& document, const TimelineScene& scene,
                    const Proposal& proposal, const QLocale& locale) {
    const SetPlacements& edit = proposal.edit;
    const TextContext text{document.lesson(), document.expanded(), locale};
    const Names names(text);
    GhostFinder ghosts(scene, edit, names);
    ProposalLook look;
    const auto findings = document.preview(edit, [&](const UseIndex& index) {
        ghosts.run(index);
        const int node = index.nodeOf(proposal.lead);
        look.interval = node < 0 ? Interval() : index.placed(node).interval;
    });
    std::vector<PlacementKey> colliding;
    for (const Finding& finding : findings) {
        if (isShown(finding)) {
            look.collides = true;
            colliding.insert(colliding.end(), finding.keys.begin(), finding.keys.end());
            addReason(sentence(finding, text), look.reasons);
        }
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
