#pragma once
// Variables by how often conflicts touched them of late.

#include <optional>
#include <utility>
#include <vector>

namespace rangeline::engine {

class ActivityOrder {
  public:
    /// From now on the variable can be taken, first those with more activity.
    void add(int variable, double activity);
    /// Knows of that many variables; those that are not added are counted but never taken.
    void grow(std::size_t variables);

    /// A conflict touched the variable.
    void bump(int variable);
    /// What was touched before counts less from here on.
    void decay();

    /// The most active variable that has not been taken, which now is, at that level.
    std::optional<int> take(int level);
    /// Puts back what was taken at that level or above.
    void putBack(int level);

  private:
    static std::size_t at(int index) { return static_cast<std::size_t>(index); }

    void insert(int variable);
    int pop();
    void up(std::size_t position);
    void down(std::size_t position);
    void put(int variable, std::size_t position);
    double activityAt(std::size_t position) const { return activity_[at(heap_[position])]; }

    std::vector<double> activity_;  ///< by variable
    std::vector<char> isAdded_;     ///< by variable
    std::vector<int> heap_;
    std::vector<int> position_;               ///< in the heap, by variable, -1: not in it
    std::vector<std::pair<int, int>> taken_;  ///< level and variable
    double bumpBy_ = 1;
};

}  // namespace rangeline::engine
