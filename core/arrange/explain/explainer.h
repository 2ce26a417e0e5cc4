#pragma once
// The questions of an explanation, put to one engine that keeps what it learns between them.

#include <chrono>
#include <map>
#include <stop_token>
#include <vector>

#include "arrange/engine/search.h"
#include "arrange/explain.h"
#include "arrange/explain/minimal_conflict.h"
#include "arrange/rules/formulation.h"
#include "model/expand.h"

namespace rangeline::explain {

class Explainer {
  public:
    Explainer(const Lesson& lesson, const ExplainOptions& options, std::stop_token stop);

    const Expanded& expanded() const { return expanded_; }
    /// From now on the plan must start then or later.
    void startNoEarlier(Instant instant);
    /// From now on the plan must be no later in all.
    void lateAtMost(Duration total);

    /// A smallest set of requirements that cannot hold together.
    Explanation explain();
    /// Whether these requirements can hold together, without the others.
    Answer ask(const std::vector<Requirement>& requirements);

    std::int64_t questions() const { return questions_; }

  private:
    Answer askNumbers(std::span<const int> numbers);
    std::vector<int> numbersOf(const std::vector<Requirement>& requirements) const;
    /// A first set, as small as comes for free.
    Answer firstConflict();
    bool keepGoing() const;

    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
    ExplainOptions options_;
    std::stop_token stop_;
    Expanded expanded_;
    rules::Formulation f_;
    std::vector<Requirement> requirements_;  ///< sorted
    std::vector<engine::Literal> literals_;  ///< by requirement
    std::map<engine::View, int> numberOf_;   ///< of the requirement, by the view of its literal
    std::vector<engine::Literal> aim_;       ///< always assumed
    bool possible_ = true;                   ///< without any requirement
    engine::Search search_;
    bool conflictKnown_ = false;  ///< what is asked now makes it smaller
    std::int64_t questions_ = 0;
};

}  // namespace rangeline::explain
