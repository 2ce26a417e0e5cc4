#include "timeline_view/proposal.h"

#include <algorithm>

#include "text/finding_text.h"
#include "timeline/blocks.h"

namespace rangeline {
namespace {

constexpr std::size_t mostReasons = 3;

bool isShown(const Finding& finding) {
    return finding.severity != Severity::Caution;
}

/// The blocks of what the edit changes, in the lesson as it would be.
void addGhosts(const UseIndex& index, const TimelineScene& scene, const SetPlacements& edit,
               const Names& names, std::vector<std::pair<int, Ghost>>& ghosts) {
    for (const TimelineBlock& block : makeBlocks(index, scene.lanes(), scene.model().span.begin)) {
        const PlacementKey key = index.keyOf(block.item);
        const bool changed =
            std::ranges::find(edit.changes, key, &PlacementChange::key) != edit.changes.end();
        if (changed && block.kind != BlockKind::Waiting) {
            const QString name = block.main ? sentenceCase(names.plainStep(key)) : QString();
            ghosts.push_back({block.item, {block.lane, block.interval, name, false}});
        }
    }
}

}  // namespace

ProposalLook lookOf(const LessonDocument& document, const TimelineScene& scene,
                    const SetPlacements& edit, const QLocale& locale) {
    const TextContext text{document.lesson(), document.expanded(), locale};
    const Names names(text);
    std::vector<std::pair<int, Ghost>> ghosts;
    ProposalLook look;
    const auto findings = document.preview(edit, [&](const UseIndex& index) {
        addGhosts(index, scene, edit, names, ghosts);
        const int node = edit.changes.empty() ? -1 : index.nodeOf(edit.changes.front().key);
        look.interval = node < 0 ? Interval() : index.placed(node).interval;
    });
    std::vector<PlacementKey> colliding;
    for (const Finding& finding : findings) {
        if (!isShown(finding)) {
            continue;
        }
        look.collides = true;
        colliding.insert(colliding.end(), finding.keys.begin(), finding.keys.end());
        if (look.reasons.size() < mostReasons) {
            look.reasons.push_back(sentence(finding, text));
        }
    }
    for (auto& [node, ghost] : ghosts) {
        const PlacementKey key = document.index().keyOf(node);
        ghost.collides = std::ranges::find(colliding, key) != colliding.end();
        look.ghosts.push_back(std::move(ghost));
    }
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
