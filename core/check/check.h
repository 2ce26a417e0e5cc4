#pragma once
// The checks of a lesson. A check is one function in a file of its own and one line in the registry
// (checks.cpp); it looks at one subject and adds what it finds.

#include <span>
#include <string_view>
#include <vector>

#include "analysis/use_index.h"
#include "check/finding.h"

namespace rangeline {

/// Adds the findings about one subject. Reads only what the index marks as touched with that
/// subject (subject.h), so that running it again for the touched ones is enough after an edit.
using CheckFunction = void (*)(const UseIndex& index, int subject, std::vector<Finding>& findings);

struct Check {
    std::string_view name;
    Subject subject;
    CheckFunction run;
};

/// All checks, in the order of their rows.
std::span<const Check> checks();

/// The findings of a lesson, kept up to date.
class Findings {
  public:
    /// Runs every check. The index outlives this.
    explicit Findings(const UseIndex& index);

    /// Runs the checks again for what UseIndex::update said was touched.
    void update(const TouchedSubjects& touched);

    /// In the order of severity, time and kind; the same however the lesson came about.
    std::vector<Finding> all() const;
    /// How many there are of that severity.
    int count(Severity severity) const;

  private:
    void run(std::size_t check, int subject);

    const UseIndex* index_;
    std::vector<std::vector<std::vector<Finding>>> found_;  ///< by check, then by subject
};

/// From scratch. `expanded` is that of the lesson.
std::vector<Finding> checkLesson(const Lesson& lesson, const Expanded& expanded);

}  // namespace rangeline
