// No cook's hands are at two things at once, or at work while the class watches a talk.

#include <algorithm>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

/// Adds the finding, or stretches the one about the same two.
void addOrStretch(Finding finding, std::vector<Finding>& findings) {
    const auto same = std::ranges::find_if(findings, [&](const Finding& other) {
        return other.code == finding.code && other.keys == finding.keys;
    });
    if (same == findings.end()) {
        findings.push_back(std::move(finding));
        return;
    }
    same->interval.begin = std::min(same->interval.begin, finding.interval.begin);
    same->interval.end = std::max(same->interval.end, finding.interval.end);
}

/// The one that begins first, first.
std::pair<int, int> inOrder(const UseIndex& index, int a, int b) {
    const auto rank = [&](int node) { return std::pair(index.placed(node).interval.begin, node); };
    return rank(a) < rank(b) ? std::pair(a, b) : std::pair(b, a);
}

void worksDuring(const UseIndex& index, int cook, int talk, std::vector<Finding>& findings) {
    const Placed& placed = index.placed(talk);
    for (const TimedSegment& segment : placed.timing.segments) {
        const Instant begin = placed.interval.begin + segment.offset;
        const Interval watched{begin, begin + segment.length};
        for (const CookUse& use : index.handsUses(cook)) {
            if (segment.attention == Attention::Hands && use.interval.overlaps(watched)) {
                addOrStretch(
                    collision(FindingCode::WorksDuringTalk,
                              {index.keyOf(talk), index.keyOf(use.node)},
                              {EquipmentSort::Cook, cook}, intersection(use.interval, watched)),
                    findings);
            }
        }
    }
}

}  // namespace

void checkHandsTwice(const UseIndex& index, int cook, std::vector<Finding>& findings) {
    forOverlaps(index.handsUses(cook), [&](const CookUse& a, const CookUse& b) {
        if (a.node != b.node) {
            const auto [first, second] = inOrder(index, a.node, b.node);
            addOrStretch(
                collision(FindingCode::HandsTwice, {index.keyOf(first), index.keyOf(second)},
                          {EquipmentSort::Cook, cook}, intersection(a.interval, b.interval)),
                findings);
        }
    });
}

void checkTalk(const UseIndex& index, int cook, std::vector<Finding>& findings) {
    for (const int talk : index.talks()) {
        if (index.placed(talk) && index.attends(cook, talk)) {
            worksDuring(index, cook, talk, findings);
        }
    }
}

}  // namespace rangeline
