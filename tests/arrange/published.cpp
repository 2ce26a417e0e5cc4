#include "arrange/published.h"

#include <string>

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

std::string named(const char* what, std::size_t number) {
    return what + std::to_string(number);
}

std::vector<Segment> unattended(int minutes) {
    if (minutes == 0) {
        return {};
    }
    return {away(Duration::minutes(minutes))};
}

}  // namespace

Lesson jobShop(const std::vector<std::vector<std::pair<int, int>>>& jobs, int machines) {
    LessonBuilder builder;
    for (int m = 0; m < machines; ++m) {
        builder.pool(named("machine", static_cast<std::size_t>(m)), "socket", 1);
    }
    for (std::size_t j = 0; j < jobs.size(); ++j) {
        std::string before;
        for (std::size_t i = 0; i < jobs[j].size(); ++i) {
            const auto [machine, minutes] = jobs[j][i];
            const std::string id = named("job", j) + named(".", i);
            Step& step = builder.step(id, unattended(minutes));
            step.pools = {{{named("machine", static_cast<std::size_t>(machine))}, 1}};
            if (!before.empty()) {
                builder.uses(id, before);
            }
            before = id;
        }
    }
    return builder.lesson;
}

std::vector<Lag> finishToStart(const std::vector<int>& lengths,
                               const std::vector<std::vector<int>>& followers) {
    std::vector<Lag> lags;
    for (std::size_t from = 0; from < followers.size(); ++from) {
        for (const int to : followers[from]) {
            lags.push_back({static_cast<int>(from), to, lengths[from]});
        }
    }
    return lags;
}

Lesson project(const std::vector<int>& capacities, const std::vector<int>& lengths,
               const std::vector<std::vector<int>>& demands, const std::vector<Lag>& lags) {
    LessonBuilder builder;
    for (std::size_t r = 0; r < capacities.size(); ++r) {
        builder.pool(named("pool", r), "socket", capacities[r]);
    }
    for (std::size_t a = 0; a < lengths.size(); ++a) {
        Step& step = builder.step(named("activity", a), unattended(lengths[a]));
        for (std::size_t r = 0; r < capacities.size(); ++r) {
            if (demands[a][r] > 0) {
                step.pools.push_back({{named("pool", r)}, demands[a][r]});
            }
        }
    }
    for (const Lag& lag : lags) {
        Link link;
        link.from = {{named("activity", static_cast<std::size_t>(lag.from))}, StepEnd::Start};
        link.to = {{named("activity", static_cast<std::size_t>(lag.to))}, StepEnd::Start};
        link.least = Duration::minutes(lag.minutes);
        builder.lesson.servings.front().dish.links.push_back(link);
    }
    return builder.lesson;
}

}  // namespace rangeline::test
