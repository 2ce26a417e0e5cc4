#include "window/arrange_job.h"

namespace rangeline {

ArrangeJob::~ArrangeJob() = default;

void ArrangeJob::start(Lesson lesson, const ArrangeOptions& options) {
    // Results are handed over to this object's thread; those of a job that is gone are dropped.
    thread_ = std::jthread([this, lesson = std::move(lesson), options](std::stop_token stop) {
        const auto report = [this](const ArrangeProgress& progress) {
            QMetaObject::invokeMethod(
                this, [this, progress] { Q_EMIT progressed(progress); }, Qt::QueuedConnection);
        };
        ArrangeResult result = arrange(lesson, options, report, stop);
        QMetaObject::invokeMethod(
            this, [this, result = std::move(result)] { Q_EMIT finished(result); },
            Qt::QueuedConnection);
    });
}

void ArrangeJob::stop() {
    thread_.request_stop();
}

}  // namespace rangeline
