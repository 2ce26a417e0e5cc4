#include "text/gathered_findings.h"

#include <algorithm>

namespace rangeline {
namespace {

bool belongs(const Finding& shown, const Finding& next) {
    if (shown.code != next.code || shown.equipment != next.equipment ||
        shown.severity != next.severity) {
        return false;
    }
    if (shown.code == FindingCode::NotPlaced) {
        return true;
    }
    // The same step too early for several reasons: the greatest tells how far to move it.
    if (shown.code == FindingCode::TooEarlyAfter) {
        return shown.keys == next.keys;
    }
    if (shown.code == FindingCode::Danger) {
        return shown.figures == next.figures;
    }
    return shown.code == FindingCode::HandsTwice && shown.interval.overlaps(next.interval);
}

/// By how much it is too early.
Duration shortBy(const Finding& finding) {
    const auto* given = std::get_if<Duration>(&finding.figures.at(0));
    const auto* wanted = std::get_if<Duration>(&finding.figures.at(1));
    return given == nullptr || wanted == nullptr ? Duration() : *wanted - *given;
}

void add(GatheredFinding& into, const GatheredFinding& from) {
    Finding& shown = into.shown;
    for (const PlacementKey& key : from.shown.keys) {
        if (std::ranges::find(shown.keys, key) == shown.keys.end()) {
            shown.keys.push_back(key);
        }
    }
    if (shown.code == FindingCode::TooEarlyAfter && shortBy(shown) < shortBy(from.shown)) {
        shown.figures = from.shown.figures;
    }
    shown.interval.begin = std::min(shown.interval.begin, from.shown.interval.begin);
    shown.interval.end = std::max(shown.interval.end, from.shown.interval.end);
    into.parts.insert(into.parts.end(), from.parts.begin(), from.parts.end());
}

}  // namespace

std::vector<GatheredFinding> gathered(const std::vector<Finding>& findings) {
    std::vector<GatheredFinding> rows;
    for (const Finding& finding : findings) {
        const GatheredFinding next{finding, {finding}};
        const auto first = std::ranges::find_if(
            rows, [&](const GatheredFinding& row) { return belongs(row.shown, finding); });
        if (first == rows.end()) {
            rows.push_back(next);
            continue;
        }
        add(*first, next);
        // What was apart until now may meet in the longer stretch.
        for (auto later = first + 1; later != rows.end();) {
            if (belongs(first->shown, later->shown)) {
                add(*first, *later);
                later = rows.erase(later);
            } else {
                ++later;
            }
        }
    }
    return rows;
}

}  // namespace rangeline
