#include "arrange/arrange.h"

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

#include "arrange/lanes/lane.h"

namespace rangeline {
namespace {

using lanes::Board;
using lanes::Lane;
using lanes::LaneKind;

/// What is planned sooner is not worth a second thread.
constexpr std::chrono::milliseconds secondLaneAfter{4};

/// False if it was stopped meanwhile.
bool waitALittle(const std::stop_token& stop) {
    std::mutex mutex;
    std::condition_variable_any never;
    std::unique_lock lock(mutex);
    never.wait_for(lock, stop, secondLaneAfter, [] { return false; });
    return !stop.stop_requested();
}

}  // namespace

ArrangeResult arrange(const Lesson& lesson, const ArrangeOptions& options,
                      const ArrangeCallback& progress, std::stop_token stop) {
    Board board;
    std::int64_t conflicts = 0;
    std::jthread raising;  // ends before what it works on
    if (options.threads > 1) {
        raising = std::jthread([&](const std::stop_token& ended) {
            if (waitALittle(ended)) {
                const ArrangeCallback silent;
                conflicts = Lane(lesson, options, LaneKind::Raises, board, silent, ended)
                                .run()
                                .statistics.conflicts;
            }
        });
    }
    ArrangeResult result =
        Lane(lesson, options, LaneKind::Lowers, board, progress, std::move(stop)).run();
    if (raising.joinable()) {
        raising.request_stop();
        raising.join();
        result.statistics.conflicts += conflicts;
    }
    return result;
}

}  // namespace rangeline
