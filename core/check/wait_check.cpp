// Waits between steps: no shorter than the least, no longer than the most, food used in time.

#include <algorithm>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

/// One wait as it lies in time.
struct Given {
    const Wait& wait;
    PointInTime from;
    PointInTime to;

    Duration length() const { return to.at - from.at; }
    Interval interval() const { return {std::min(from.at, to.at), std::max(from.at, to.at)}; }
};

std::vector<PlacementKey> keysOf(const UseIndex& index, const Given& given) {
    std::vector<PlacementKey> keys;
    if (given.from.task >= 0) {
        keys.push_back(index.keyOf(given.from.task));
    }
    if (given.to.task >= 0) {
        keys.push_back(index.keyOf(given.to.task));
    }
    return keys;
}

std::string storageKey(Storage storage) {
    switch (storage) {
        case Storage::Room:
            return "room";
        case Storage::Cold:
            return "cold";
        case Storage::HotOnBurner:
            return "hot-on-burner";
        case Storage::HotInOven:
            return "hot-in-oven";
    }
    return {};
}

Finding keptTooLong(const UseIndex& index, const Given& given) {
    if (given.from.task >= 0) {
        return collision(FindingCode::KeptTooLong, keysOf(index, given), {}, given.interval(),
                         {given.length(), *given.wait.most, storageKey(given.wait.storage)});
    }
    const StepId& ahead = at(index.lesson().choices.doneAhead, given.wait.source).step;
    return collision(FindingCode::StoredTooLong, keysOf(index, given), {}, given.interval(),
                     {given.length(), *given.wait.most, stepName(index.lesson(), ahead)});
}

}  // namespace

void checkWait(const UseIndex& index, int wait, std::vector<Finding>& findings) {
    const Wait& wanted = at(index.expanded().waits, wait);
    const auto from = index.timeOf(wanted.from);
    const auto to = index.timeOf(wanted.to);
    if (!from || !to) {
        return;
    }
    const Given given{wanted, *from, *to};
    if (wanted.least && given.length() < *wanted.least) {
        findings.push_back(collision(FindingCode::TooEarlyAfter, keysOf(index, given), {},
                                     given.interval(), {given.length(), *wanted.least}));
    }
    if (wanted.most && given.length() > *wanted.most) {
        findings.push_back(wanted.origin == WaitOrigin::Keeping
                               ? keptTooLong(index, given)
                               : collision(FindingCode::TooLateAfter, keysOf(index, given), {},
                                           given.interval(), {given.length(), *wanted.most}));
    }
}

}  // namespace rangeline
