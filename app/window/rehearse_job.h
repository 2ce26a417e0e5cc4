#pragma once
// Rehearsing in a thread of its own.

#include <QObject>
#include <memory>
#include <thread>

#include "rehearse/help.h"

namespace rangeline {

/// A lesson with what its rehearsal came to. Made of parts that refer to each other, so it stays
/// where it is.
struct Rehearsed {
    explicit Rehearsed(Lesson given);
    Rehearsed(const Rehearsed&) = delete;
    Rehearsed& operator=(const Rehearsed&) = delete;

    const Lesson lesson;
    const Expanded expanded;
    const UseIndex index;
    const Network network;
    Rehearsal rehearsal;
    Helps helps;  ///< once they are tried
};

class RehearseJob : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;
    /// Stops and waits.
    ~RehearseJob() override;

    /// Ends what runs. The signals come in this object's thread.
    void rehearse(const Lesson& lesson);
    /// Tries which change helps most. Ends what runs.
    void tryChanges(const Lesson& lesson);
    /// What runs ends soon, and tells of what it has done.
    void stop() { thread_.request_stop(); }
    /// The same, and nothing more is told of it.
    void forget() {
        ++run_;
        stop();
    }

  Q_SIGNALS:
    void progressed(int done, int of);
    void rehearsed(std::shared_ptr<const rangeline::Rehearsed> done);
    void changesTried(std::shared_ptr<const rangeline::Rehearsed> done);

  private:
    using Done = void (RehearseJob::*)(std::shared_ptr<const Rehearsed>);
    /// Does it in the thread and hands the outcome to `done`.
    template <class Work>
    void run(const Lesson& lesson, Done done, Work work);

    int run_ = 0;  ///< what is told by an earlier run is dropped
    std::jthread thread_;
};

}  // namespace rangeline
