#pragma once
// What a check looks at: one of many alike things, so that after an edit only those that the edit
// touched are looked at again.

#include <array>
#include <cstdint>
#include <vector>

namespace rangeline {

enum class Subject : std::uint8_t {
    Task,    ///< index into Expanded::tasks; also touched when a ware it stands in changes
    Wash,    ///< the wash after a chain; index into Expanded::chains
    TurnOn,  ///< turning an oven on; unit of Stations::ovens
    Wait,    ///< index into Expanded::waits
    Window,  ///< index into Expanded::windows
    Burner,  ///< units of Stations from here on
    Oven,
    Ware,
    Pool,
    Cook,
    Whole  ///< the lesson without its placements; always 0, never touched by placements
};
inline constexpr std::size_t subjectSorts = static_cast<std::size_t>(Subject::Whole) + 1;

/// Subjects that a change has touched, each once and in ascending order.
class TouchedSubjects {
  public:
    const std::vector<int>& of(Subject sort) const {
        return lists_[static_cast<std::size_t>(sort)];
    }
    /// Ignores an index below zero ("no such unit").
    void add(Subject sort, int index) {
        if (index >= 0) {
            lists_[static_cast<std::size_t>(sort)].push_back(index);
        }
    }
    /// Sorts and drops repetitions; called once after the last add.
    void tidy();

  private:
    std::array<std::vector<int>, subjectSorts> lists_;
};

}  // namespace rangeline
