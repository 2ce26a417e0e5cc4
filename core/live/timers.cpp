#include "live/timers.h"

#include <algorithm>
#include <tuple>

namespace rangeline::live {
namespace {

template <class Keep>
std::vector<Timer> timersThat(const Service& service, Keep keep) {
    std::vector<Timer> found;
    for (const auto& [key, work] : service.works()) {
        if (work.stage == Stage::Running && keep(work)) {
            found.push_back({key, work.generation, work.cueAt, work.bell});
        }
    }
    std::ranges::stable_sort(found, {}, &Timer::deadline);
    return found;
}

}  // namespace

std::vector<Timer> timers(const Service& service) {
    return timersThat(service, [](const Work&) { return true; });
}

std::vector<Timer> dueTimers(const Service& service, Instant now) {
    return timersThat(service, [&](const Work& work) {
        return work.bell == Bell::Counting && work.cueAt <= now;
    });
}

std::vector<Timer> ringingTimers(const Service& service) {
    auto found = timersThat(service, [](const Work& work) { return work.bell == Bell::Ringing; });
    std::ranges::stable_sort(found, {}, [&](const Timer& timer) {
        const int number = service.work(timer.key).bellNumber;
        return number == 0 ? 10 : number;
    });
    return found;
}

}  // namespace rangeline::live
