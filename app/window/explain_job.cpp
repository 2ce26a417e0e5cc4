#include "window/explain_job.h"

namespace rangeline {

ExplainJob::~ExplainJob() = default;

void ExplainJob::start(const Lesson& lesson, const RemedyOptions& options) {
    stop();
    const int run = run_;
    const auto tell = [this, run](auto signal, auto result) {
        QMetaObject::invokeMethod(
            this,
            [this, run, signal, result = std::move(result)] {
                if (run == run_) {
                    Q_EMIT(this->*signal)(result);
                }
            },
            Qt::QueuedConnection);
    };
    thread_ = std::jthread([lesson, options, tell](const std::stop_token& stop) {
        Explanation explanation = explainNotPossible(lesson, options.explain, stop);
        tell(&ExplainJob::explained, explanation);
        std::vector<Remedy> remedies;
        if (!explanation.requirements.empty()) {
            remedies = whatMakesItPossible(lesson, explanation, options, stop);
        }
        tell(&ExplainJob::remediesFound, std::move(remedies));
    });
}

void ExplainJob::stop() {
    ++run_;
    thread_.request_stop();
}

}  // namespace rangeline
