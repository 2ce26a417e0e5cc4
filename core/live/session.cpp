#include "live/session.h"

#include "model/edit.h"
#include "model/validate.h"

namespace rangeline::live {
namespace {

/// Smaller differences come of reading two clocks one after the other, and of slewing.
constexpr milliseconds wallWasSetFrom(2000);

/// A plan that was read from a file must be one of this lesson.
bool isUsable(const Event& event, const Lesson& lesson) {
    const auto* replaced = std::get_if<PlanReplaced>(&event);
    if (replaced == nullptr) {
        return true;
    }
    Lesson changed = lesson;
    apply(changed, Edit(replaced->change));
    return validate(changed, 1).empty();
}

}  // namespace

Session::Session(Lesson lesson, milliseconds at, const ClockSource& clock, WriteDown write)
    : service_(std::move(lesson)),
      begun_{clock.read(), at},
      anchor_(begun_),
      clock_(clock),
      write_(std::move(write)) {}

Session::Session(Lesson lesson, const ClockAnchor& begun, const std::vector<Entry>& entries,
                 const ClockSource& clock, WriteDown write)
    : service_(std::move(lesson)),
      begun_(begun),
      anchor_(begun),
      clock_(clock),
      write_(std::move(write)) {
    for (const Entry& entry : entries) {
        if (isUsable(entry.event, service_.lesson())) {
            service_.apply(entry.event, instantOf(entry.when.at));
        }
        anchor_ = entry.when;
    }
    if (clock_.read().boot != anchor_.reading.boot && !doubt()) {
        record(ClockNoted());
    }
}

milliseconds Session::now() const {
    const auto time = serviceTime(anchor_, clock_.read());
    return time.ok() ? time.value() : anchor_.at;
}

std::optional<ClockDoubt> Session::doubt() const {
    const auto time = serviceTime(anchor_, clock_.read());
    return time.ok() ? std::nullopt : std::optional(time.error());
}

void Session::setClock(Instant at) {
    recordAt(ClockSet(), {clock_.read(), millisecondsOf(at)});
}

bool Session::record(const Event& event) {
    const ClockReading reading = clock_.read();
    const auto time = serviceTime(anchor_, reading);
    // In doubt the last sure reading stays the anchor, so that the question is not forgotten.
    return recordAt(event, time.ok() ? ClockAnchor{reading, time.value()} : anchor_);
}

bool Session::recordAt(const Event& event, const ClockAnchor& when) {
    Entry entry{when, event};
    // The state is the judge of what means anything; it is asked first, but nobody sees the answer
    // before the entry is on the disk.
    if (!service_.apply(event, instantOf(when.at))) {
        return false;
    }
    anchor_ = when;
    unwritten_.push_back(std::move(entry));
    if (write_(unwritten_)) {
        unwritten_.clear();
    }
    return true;
}

void Session::noteSetWall() {
    const ClockReading reading = clock_.read();
    const milliseconds by =
        (reading.utc - reading.sinceBoot) - (anchor_.reading.utc - anchor_.reading.sinceBoot);
    if (reading.boot == anchor_.reading.boot && std::chrono::abs(by) > wallWasSetFrom) {
        record(ClockNoted());
    }
}

std::vector<Timer> Session::tick() {
    if (doubt()) {
        return {};
    }
    if (!unwritten_.empty() && write_(unwritten_)) {
        unwritten_.clear();
    }
    noteSetWall();
    std::vector<Timer> rung;
    for (const Timer& timer : dueTimers(service_, instant())) {
        if (record(AlarmFired{timer.key, timer.generation})) {
            rung.push_back(timer);
        }
    }
    return rung;
}

}  // namespace rangeline::live
