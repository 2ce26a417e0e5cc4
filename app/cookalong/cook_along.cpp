#include "cookalong/cook_along.h"

#include <utility>

namespace rangeline {
namespace {

constexpr int lookAheadEvery = 5;  // seconds: nothing of it is read to the second

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
    const bool ahead = session_.instant().inSeconds() % lookAheadEvery == 0;
    if (ahead || !rung.empty()) {
        lookAhead();
    }
    if (!rung.empty()) {
        Q_EMIT rang();
        Q_EMIT changed();
    }
    Q_EMIT ticked();
}

bool CookAlong::record(const live::Event& event) {
    if (!session_.record(event)) {
        return false;
    }
    if (mayMoveOthers(event)) {
        const auto course = live::courseOf(service(), session_.instant());
        live::Push next = live::push(service(), course);
        if (!next.change.changes.empty()) {
            session_.record(live::PlanReplaced{next.change});
            moved_ = std::move(next);
        }
    }
    lookAhead();
    Q_EMIT changed();
    return true;
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
    outlook_ = live::outlook(service(), session_.instant());
    if (outlook_.behind >= Duration::minutes(1) && !outlook_.plated) {
        reckonGains();
    } else {
        ++reckoning_;
        gains_.clear();
    }
}

/// In a thread of its own, on a copy: with many steps it takes longer than a press may wait.
void CookAlong::reckonGains() {
    auto copy = std::make_shared<live::Service>(service().copy());
    const Instant now = session_.instant();
    const int number = ++reckoning_;
    thread_ = std::jthread([this, copy, now, number](std::stop_token stop) {
        auto found = live::gains(*copy, now, stop);
        QMetaObject::invokeMethod(
            this,
            [this, number, found = std::move(found)]() mutable {
                if (number == reckoning_ && found != gains_) {
                    gains_ = std::move(found);
                    Q_EMIT changed();
                }
            },
            Qt::QueuedConnection);
    });
}

}  // namespace rangeline
