#include <algorithm>
#include <cassert>

#include "model/expand.h"

namespace rangeline {
namespace {

/// How long each share works on hands work that takes `length` at pace 1 for all `pieces`.
std::vector<Duration> shareLengths(Duration length, int pieces, std::span<const HandShare> shares) {
    std::vector<Duration> lengths;
    for (const HandShare& share : shares) {
        const std::int64_t part = share.pieces == 0 ? 1 : share.pieces;
        const std::int64_t whole = share.pieces == 0 ? 1 : std::max(pieces, 1);
        const std::int64_t scaled = length.inSeconds() * part * share.pacePercent;
        lengths.push_back(Duration::seconds((scaled + whole * 100 - 1) / (whole * 100)));
    }
    return lengths;
}

/// Whole-step shares all work until the slowest is done.
void evenOut(std::vector<Duration>& lengths, std::span<const HandShare> shares, Duration longest) {
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        if (shares[i].pieces == 0) {
            lengths[i] = longest;
        }
    }
}

TimedSegment timedSegment(const Segment& segment, const Task& task,
                          std::span<const HandShare> shares) {
    TimedSegment timed{segment.attention, Duration(), segment.length, {}};
    if (segment.attention == Attention::Hands && !shares.empty()) {
        timed.shares = shareLengths(segment.length, task.pieces, shares);
        timed.length = std::ranges::max(timed.shares);
        evenOut(timed.shares, shares, timed.length);
    }
    return timed;
}

/// Gives the stretching segment what a stated whole length leaves; never less than nothing.
void stretchTo(Timing& timing, int stretching, Duration whole) {
    Duration others;
    for (std::size_t i = 0; i < timing.segments.size(); ++i) {
        others += static_cast<int>(i) == stretching ? Duration() : timing.segments[i].length;
    }
    if (stretching < 0) {
        return;
    }
    TimedSegment& segment = timing.segments[static_cast<std::size_t>(stretching)];
    const Duration before = segment.length;
    segment.length = std::max(whole - others, Duration());
    for (Duration& share : segment.shares) {
        share = share == before ? segment.length : std::min(share, segment.length);
    }
}

/// What was done before its fixed parts had all had their time: it ended in the middle of one, and
/// what would have come after never began.
void cutTo(Timing& timing, Duration whole) {
    for (TimedSegment& segment : timing.segments) {
        segment.offset = std::min(segment.offset, whole);
        segment.length = std::min(segment.length, whole - segment.offset);
        for (Duration& share : segment.shares) {
            share = std::min(share, segment.length);
        }
    }
}

}  // namespace

Duration atPace(Duration length, int pacePercent) {
    return Duration::seconds((length.inSeconds() * pacePercent + 99) / 100);
}

Timing timingOf(const Task& task, std::span<const HandShare> shares,
                std::optional<Duration> lasts) {
    Timing timing;
    for (const Segment& segment : task.segments) {
        timing.segments.push_back(timedSegment(segment, task, shares));
    }
    if (lasts) {
        stretchTo(timing, task.stretching, *lasts);
    }
    for (TimedSegment& segment : timing.segments) {
        segment.offset = timing.length;
        timing.length += segment.length;
    }
    if (lasts) {
        timing.length = *lasts;
        cutTo(timing, *lasts);
    }
    return timing;
}

}  // namespace rangeline
