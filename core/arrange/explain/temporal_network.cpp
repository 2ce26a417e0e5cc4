#include "arrange/explain/temporal_network.h"

#include <algorithm>

namespace rangeline::explain {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

}  // namespace

int TemporalNetwork::atLeast(int from, int to, std::int64_t distance) {
    distances_.push_back({from, to, distance});
    return static_cast<int>(distances_.size()) - 1;
}

/// Bellman and Ford: what still moves after as many rounds as there are points is in a cycle, or
/// behind one.
std::optional<std::vector<int>> TemporalNetwork::positiveCycle() const {
    std::vector<std::int64_t> time(at(points_), 0);
    std::vector<int> pushedBy(at(points_), -1);
    int moved = -1;
    for (int round = 0; round <= points_; ++round) {
        moved = -1;
        for (std::size_t d = 0; d < distances_.size(); ++d) {
            const Distance& distance = distances_[d];
            const std::int64_t least = time[at(distance.from)] + distance.atLeast;
            if (least > time[at(distance.to)]) {
                time[at(distance.to)] = least;
                pushedBy[at(distance.to)] = static_cast<int>(d);
                moved = distance.to;
            }
        }
        if (moved < 0) {
            return std::nullopt;
        }
    }
    for (int step = 0; step < points_; ++step) {
        moved = distances_[at(pushedBy[at(moved)])].from;  // back into the cycle
    }
    std::vector<int> cycle;
    int point = moved;
    do {
        cycle.push_back(pushedBy[at(point)]);
        point = distances_[at(cycle.back())].from;
    } while (point != moved);
    std::ranges::reverse(cycle);
    return cycle;
}

std::vector<std::optional<std::int64_t>> TemporalNetwork::leastFrom(int origin) const {
    std::vector<std::optional<std::int64_t>> time(at(points_));
    time[at(origin)] = 0;
    bool moved = true;
    while (moved) {
        moved = false;
        for (const Distance& distance : distances_) {
            const auto& from = time[at(distance.from)];
            auto& to = time[at(distance.to)];
            if (from && (!to || *from + distance.atLeast > *to)) {
                to = *from + distance.atLeast;
                moved = true;
            }
        }
    }
    return time;
}

}  // namespace rangeline::explain
