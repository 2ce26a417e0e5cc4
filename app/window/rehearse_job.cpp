#include "window/rehearse_job.h"

#include <algorithm>
#include <atomic>

namespace rangeline {
namespace {

RehearsalOptions usualOptions() {
    RehearsalOptions options;
    options.threads = std::clamp(static_cast<int>(std::thread::hardware_concurrency()), 1, 8);
    return options;
}

}  // namespace

Rehearsed::Rehearsed(Lesson given)
    : lesson(std::move(given)),
      expanded(expand(lesson)),
      index(lesson, expanded),
      network(networkOf(index)) {}

RehearseJob::~RehearseJob() = default;

template <class Work>
void RehearseJob::run(const Lesson& lesson, Done done, Work work) {
    stop();
    const int run = ++run_;
    const auto tell = [this, run](auto what) {
        QMetaObject::invokeMethod(
            this,
            [this, run, what = std::move(what)] {
                if (run == run_) {
                    what();
                }
            },
            Qt::QueuedConnection);
    };
    // A hundred steps are enough for whoever looks on.
    const auto progress = [this, tell, shown = std::make_shared<std::atomic<int>>(0)](
                              std::int64_t ready, std::int64_t of) {
        constexpr int steps = 100;
        const int step = static_cast<int>(ready * steps / of);
        if (shown->exchange(step) != step) {
            tell([this, step] { Q_EMIT progressed(step, steps); });
        }
    };
    thread_ = std::jthread([this, lesson, done, tell, progress, work](const std::stop_token& stop) {
        auto made = std::make_shared<Rehearsed>(lesson);
        work(*made, stop, progress);
        tell([this, done, made] { Q_EMIT(this->*done)(made); });
    });
}

void RehearseJob::rehearse(const Lesson& lesson) {
    run(lesson, &RehearseJob::rehearsed,
        [](Rehearsed& made, const std::stop_token& stop, const auto& progress) {
            const RehearsalOptions options = usualOptions();
            made.rehearsal = rangeline::rehearse(made.network, options, stop,
                                                 [&](int done) { progress(done, options.runs); });
        });
}

void RehearseJob::tryChanges(const Lesson& lesson) {
    run(lesson, &RehearseJob::changesTried,
        [](Rehearsed& made, const std::stop_token& stop, const auto& progress) {
            made.helps = whatHelps(made.index, usualOptions(), stop, progress);
        });
}

}  // namespace rangeline
