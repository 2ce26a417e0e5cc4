#include "cookalong/cook_along.h"

#include <utility>

namespace rangeline {
namespace {

constexpr int reckonEvery = 30;  // seconds: nothing of it is read to the second

/// Whether it tells of something that reality did differently, so that the rest may have to move.
bool mayMoveOthers(const live::Event& event) {
    return !std::holds_alternative<live::AlarmFired>(event) &&
           !std::holds_alternative<live::AlarmStopped>(event) &&
           !std::holds_alternative<live::ClockNoted>(event) &&
           !std::holds_alternative<live::Ended>(event);
}

}  // namespace

CookAlong::CookAlong(std::unique_ptr<live::ServiceFile> file, const live::ClockSource& clock,
                     QObject* parent)
    : QObject(parent),
      clock_(clock),
      file_(std::move(file)),
      session_(file_->head().lesson, file_->head().begun, file_->entries(), clock,
               [this](const std::vector<live::Entry>& entries) { return file_->append(entries); }) {
    timer_.setSingleShot(true);
    timer_.setTimerType(Qt::PreciseTimer);
    connect(&timer_, &QTimer::timeout, this, [this] {
        look();
        startTimer();
    });
    lookAhead();
}

CookAlong::~CookAlong() = default;

void CookAlong::run() {
    look();
    startTimer();
}

/// Until the next whole second of the service, so that figures change when they should.
void CookAlong::startTimer() {
    constexpr std::int64_t second = 1000;
    const std::int64_t part = ((session_.now().count() % second) + second) % second;
    timer_.start(static_cast<int>(second - part));
}

void CookAlong::look() {
    const auto rung = session_.tick();
    const bool wasBehind = isBehind();
    lookAhead();
    if (isBehind() != wasBehind || session_.instant().inSeconds() % reckonEvery == 0) {
        reckonAnew();
    }
    if (!rung.empty()) {
        Q_EMIT rang();
        Q_EMIT changed();
    }
    Q_EMIT ticked();
}

bool CookAlong::record(const live::Event& event) {
    const auto before = live::courseOf(service(), session_.instant()).dues();
    if (!session_.record(event)) {
        return false;
    }
    lookAhead();
    if (mayMoveOthers(event)) {
        live::Moves next = live::moves(service(), before, dues_);
        if (!next.moved.empty()) {
            moved_ = std::move(next);
        }
        if (!std::holds_alternative<live::PlanReplaced>(event)) {
            reckonAnew();
        }
    }
    Q_EMIT changed();
    return true;
}

void CookAlong::take(const live::Gain& gain) {
    for (const PlacementKey& key : gain.keys) {
        record(live::Skipped{key});
    }
}

void CookAlong::setClock(Instant at) {
    session_.setClock(at);
    lookAhead();
    Q_EMIT changed();
    look();
}

void CookAlong::end() {
    record(live::Ended());
    timer_.stop();
}

void CookAlong::lookAhead() {
    const auto course = live::courseOf(service(), session_.instant());
    outlook_ = live::outlook(service(), course);
    dues_ = course.dues();
}

Instant CookAlong::dueAt(const PlacementKey& key) const {
    const auto found = dues_.find(key);
    return found == dues_.end() ? session_.instant() : found->second;
}

/// In a thread of its own, on a copy: it takes longer than a press may wait. The rest is arranged
/// anew where that makes plating less late; what could be left out on top of it is offered.
void CookAlong::reckonAnew() {
    if (!isBehind()) {
        ++reckoning_;
        gains_.clear();
        return;
    }
    auto copy = std::make_shared<live::Service>(service().copy());
    const Instant now = session_.instant();
    const int number = ++reckoning_;
    thread_ = std::jthread([this, copy, now, number](std::stop_token stop) {
        live::Anew anew = live::rearrange(*copy, now, live::limitsFor(*copy), stop);
        copy->apply(live::PlanReplaced{anew.change}, now);
        auto gains = live::gains(*copy, now, stop);
        QMetaObject::invokeMethod(
            this,
            [this, number, anew = std::move(anew), gains = std::move(gains)]() mutable {
                reckoned(number, std::move(anew), std::move(gains));
            },
            Qt::QueuedConnection);
    });
}

void CookAlong::reckoned(int number, live::Anew anew, std::vector<live::Gain> gains) {
    if (number != reckoning_) {
        return;  // something has happened since
    }
    const bool changes = gains != gains_ || !anew.change.changes.empty();
    gains_ = std::move(gains);
    if (!anew.change.changes.empty()) {
        record(live::PlanReplaced{std::move(anew.change)});
    } else if (changes) {
        Q_EMIT changed();
    }
}

}  // namespace rangeline
