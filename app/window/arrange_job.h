#pragma once
// Arranging a lesson in a thread of its own.

#include <QObject>
#include <thread>

#include "arrange/arrange.h"

namespace rangeline {

class ArrangeJob : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;
    /// Stops and waits.
    ~ArrangeJob() override;

    /// Requires that it is not running. The signals come in this object's thread.
    void start(Lesson lesson, const ArrangeOptions& options);
    /// The best plan found so far, if any, is the result.
    void stop();

  Q_SIGNALS:
    void progressed(const rangeline::ArrangeProgress& progress);
    void finished(const rangeline::ArrangeResult& result);

  private:
    std::jthread thread_;
};

}  // namespace rangeline
