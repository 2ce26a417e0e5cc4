// The core temperature that a step cooks to, against the limit for its kind of food. Food that is
// cooked in several steps is judged by the one that finishes it.

#include <algorithm>
#include <unordered_map>

#include "check/cautions.h"
#include "safety/foods.h"

namespace rangeline {

namespace {

/// The steps of a lesson and which food goes on to which step.
class FoodPaths {
  public:
    explicit FoodPaths(const Lesson& lesson) {
        forEachStep(lesson, [&](const Serving&, const Component&, const Step& step) {
            numbers_[step.id] = static_cast<int>(steps_.size());
            steps_.push_back(&step);
        });
        before_.resize(steps_.size());
        after_.resize(steps_.size());
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            for (const Use& use : steps_[i]->uses) {
                join(use.step, i);
            }
            for (const WareNeed& need : steps_[i]->wares) {
                if (need.carriesOn) {
                    join(*need.carriesOn, i);
                }
            }
        }
    }

    const std::vector<const Step*>& steps() const { return steps_; }

    /// Whether any step before (or after) this one, on the way of its food, fulfils `wanted`.
    template <class Predicate>
    bool anyBefore(std::size_t step, Predicate wanted) const {
        return any(before_, step, wanted);
    }
    template <class Predicate>
    bool anyAfter(std::size_t step, Predicate wanted) const {
        return any(after_, step, wanted);
    }

  private:
    using Neighbours = std::vector<std::vector<std::size_t>>;

    void join(const StepId& from, std::size_t to) {
        if (const auto found = numbers_.find(from); found != numbers_.end()) {
            const auto number = static_cast<std::size_t>(found->second);
            after_[number].push_back(to);
            before_[to].push_back(number);
        }
    }

    template <class Predicate>
    bool any(const Neighbours& neighbours, std::size_t start, Predicate wanted) const {
        std::vector<bool> seen(steps_.size(), false);
        std::vector<std::size_t> open{start};
        seen[start] = true;
        while (!open.empty()) {
            const std::size_t here = open.back();
            open.pop_back();
            for (const std::size_t next : neighbours[here]) {
                if (seen[next]) {
                    continue;
                }
                if (wanted(*steps_[next])) {
                    return true;
                }
                seen[next] = true;
                open.push_back(next);
            }
        }
        return false;
    }

    std::vector<const Step*> steps_;
    std::unordered_map<StepId, int> numbers_;
    Neighbours before_;
    Neighbours after_;
};

bool isHeated(const Step& step) {
    return !std::holds_alternative<std::monostate>(step.heat);
}

bool isKeptHot(const Step& step) {
    return step.after.storage == Storage::HotOnBurner || step.after.storage == Storage::HotInOven;
}

std::optional<CoreLimit> limitFor(const Step& step, SafetyProfile profile) {
    const Food* food = findFood(step.hazards.food);
    if (food == nullptr || !food->core(profile)) {
        return std::nullopt;
    }
    const CoreLimit& limit = *food->core(profile);
    return limit.onlyForHotHolding && !isKeptHot(step) ? std::nullopt : std::optional(limit);
}

void judge(const FoodPaths& paths, std::size_t number, const CoreLimit& limit,
           std::vector<Finding>& findings) {
    const Step& step = *paths.steps()[number];
    const auto& hazards = step.hazards;
    const auto reaches = [&](const Step& other) {
        return other.hazards.food == hazards.food && other.hazards.target >= limit.least;
    };
    if (hazards.target) {
        if (*hazards.target < limit.least && !paths.anyAfter(number, reaches)) {
            findings.push_back(
                caution(FindingCode::CoreBelowLimit, step,
                        {*hazards.target, limit.least, hazards.food, std::string(limit.source)}));
        }
        return;
    }
    // A target below the limit elsewhere is that step's own finding.
    const auto states = [&](const Step& other) {
        return other.hazards.food == hazards.food && other.hazards.target;
    };
    const auto cooksOn = [&](const Step& other) {
        return other.hazards.food == hazards.food && isHeated(other);
    };
    if (isHeated(step) && !paths.anyBefore(number, states) && !paths.anyAfter(number, states) &&
        !paths.anyAfter(number, cooksOn)) {
        findings.push_back(caution(FindingCode::CoreNotStated, step,
                                   {limit.least, hazards.food, std::string(limit.source)}));
    }
}

}  // namespace

void cautionCore(const UseIndex& index, int, std::vector<Finding>& findings) {
    const Lesson& lesson = index.lesson();
    const FoodPaths paths(lesson);
    for (std::size_t i = 0; i < paths.steps().size(); ++i) {
        if (const auto limit = limitFor(*paths.steps()[i], lesson.head.profile)) {
            judge(paths, i, *limit, findings);
        }
    }
}

}  // namespace rangeline
