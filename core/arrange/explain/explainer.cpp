#include "arrange/explain/explainer.h"

#include <algorithm>
#include <numeric>

#include "arrange/explain/wait_cycle.h"

namespace rangeline::explain {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

}  // namespace

Explainer::Explainer(const Lesson& lesson, const ExplainOptions& options, std::stop_token stop)
    : options_(options),
      stop_(std::move(stop)),
      expanded_(expand(lesson)),
      f_(lesson, expanded_, rules::Requirements::Switched),
      requirements_(f_.requirements.all()),
      search_(f_.engine, f_.groups, f_.choices, options.seed, [this] { return keepGoing(); }) {
    std::ranges::sort(requirements_);
    for (std::size_t i = 0; i < requirements_.size(); ++i) {
        literals_.push_back(f_.requirements.of(requirements_[i]));
        numberOf_[literals_.back().view] = static_cast<int>(i);
    }
    possible_ = f_.possible && f_.engine.propagate();
}

bool Explainer::keepGoing() const {
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - begun_;
    return !stop_.stop_requested() &&
           !(options_.secondsLimit && spent.count() > *options_.secondsLimit);
}

void Explainer::startNoEarlier(Instant instant) {
    aim_.push_back({engine::opposite(f_.earliestStart), rules::toValue(instant)});
}

void Explainer::lateAtMost(Duration total) {
    aim_.push_back({engine::opposite(f_.lateness), -rules::toValue(total)});
}

Answer Explainer::askNumbers(std::span<const int> numbers) {
    ++questions_;
    if (!possible_) {
        return {Verdict::NotPossible, {}};
    }
    if (!keepGoing()) {
        return {};
    }
    std::vector<engine::Literal> assumptions = aim_;
    for (const int number : numbers) {
        assumptions.push_back(literals_[at(number)]);
    }
    // The true literal keeps the list from being empty: no assumption is one too.
    assumptions.push_back(f_.yes());
    const engine::Goal goal{f_.yes().view, std::nullopt, false, assumptions};
    const engine::Outcome outcome = search_.solve(
        goal, conflictKnown_ ? options_.conflictsPerQuestion : options_.conflictsForFirst);
    if (outcome == engine::Outcome::Interrupted) {
        return {};
    }
    if (outcome == engine::Outcome::Solution) {
        search_.rememberValues();
        f_.engine.backtrackTo(0);
        return {Verdict::Possible, {}};
    }
    Answer answer{Verdict::NotPossible, {}};
    for (const engine::Literal literal : search_.core()) {
        if (const auto found = numberOf_.find(literal.view); found != numberOf_.end()) {
            answer.needed.push_back(found->second);
        }
    }
    std::ranges::sort(answer.needed);
    return answer;
}

std::vector<int> Explainer::numbersOf(const std::vector<Requirement>& requirements) const {
    std::vector<int> numbers;
    for (const Requirement& requirement : requirements) {
        const auto found = std::ranges::lower_bound(requirements_, requirement);
        if (found != requirements_.end() && *found == requirement) {
            numbers.push_back(static_cast<int>(found - requirements_.begin()));
        }
    }
    return numbers;
}

Answer Explainer::ask(const std::vector<Requirement>& requirements) {
    return askNumbers(numbersOf(requirements));
}

Answer Explainer::firstConflict() {
    if (possible_ && aim_.empty()) {
        const std::vector<int> times = numbersOf(conflictingTimes(f_));
        if (!times.empty()) {
            Answer answer = askNumbers(times);
            if (answer.verdict == Verdict::NotPossible) {
                return answer;
            }
        }
    }
    std::vector<int> all(requirements_.size());
    std::iota(all.begin(), all.end(), 0);
    return askNumbers(all);
}

Explanation Explainer::explain() {
    Explanation result;
    if (!f_.requirements.lacking().empty()) {
        result.status = ExplainStatus::Smallest;
        result.requirements = {f_.requirements.lacking().front()};
    } else {
        const Answer first = firstConflict();
        if (first.verdict == Verdict::Possible) {
            result.status = ExplainStatus::Possible;
        } else if (first.verdict == Verdict::NotPossible && f_.hasAllWays) {
            conflictKnown_ = true;
            const auto ask = [this](std::span<const int> numbers) { return askNumbers(numbers); };
            const MinimalConflict conflict = minimalConflict(first.needed, ask);
            result.status =
                conflict.irreducible ? ExplainStatus::Smallest : ExplainStatus::NotProvedSmall;
            for (const int number : conflict.members) {
                result.requirements.push_back(requirements_[at(number)]);
            }
        }
    }
    result.questions = questions_;
    result.conflicts = search_.conflicts();
    result.seconds =
        std::chrono::duration<double>(std::chrono::steady_clock::now() - begun_).count();
    return result;
}

}  // namespace rangeline::explain
