#pragma once
// Looking for reasons in a thread of its own.

#include <QObject>
#include <thread>
#include <vector>

#include "arrange/remedies.h"

namespace rangeline {

class ExplainJob : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;
    /// Stops and waits.
    ~ExplainJob() override;

    /// Looks for why the lesson is not possible, then for what would help. Ends what runs. The
    /// signals come in this object's thread.
    void start(const Lesson& lesson, const RemedyOptions& options);
    /// Ends what runs; nothing more is told of it.
    void stop();

  Q_SIGNALS:
    void explained(const rangeline::Explanation& explanation);
    void remediesFound(const std::vector<rangeline::Remedy>& remedies);

  private:
    int run_ = 0;  ///< what is told by an earlier run is dropped
    std::jthread thread_;
};

}  // namespace rangeline
