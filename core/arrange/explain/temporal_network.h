#pragma once
// Points in time and the least distances between them (a simple temporal network: Dechter, Meiri
// and Pearl, Artificial Intelligence 49, 1991; from memory). It can be met if and only if no cycle
// of distances adds up to more than nothing.

#include <cstdint>
#include <optional>
#include <vector>

namespace rangeline::explain {

class TemporalNetwork {
  public:
    explicit TemporalNetwork(int points) : points_(points) {}

    /// time(to) - time(from) >= distance. Points are numbered from 0. Returns the number of this
    /// distance, counted from 0.
    int atLeast(int from, int to, std::int64_t distance);

    /// The distances of one cycle whose sum is positive, if there is any.
    std::optional<std::vector<int>> positiveCycle() const;
    /// How long after the origin each point is at least; nothing where nothing says so. Requires
    /// that there is no positive cycle.
    std::vector<std::optional<std::int64_t>> leastFrom(int origin) const;

  private:
    struct Distance {
        int from = 0;
        int to = 0;
        std::int64_t atLeast = 0;
    };

    int points_;
    std::vector<Distance> distances_;
};

}  // namespace rangeline::explain
