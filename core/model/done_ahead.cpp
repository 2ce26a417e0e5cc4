#include "model/done_ahead.h"

#include <algorithm>
#include <set>

namespace rangeline {
namespace {

constexpr Duration longestAhead = Duration::hours(12);

class Ahead {
  public:
    Ahead(const Lesson& lesson, const Expanded& expanded) : lesson_(lesson), expanded_(expanded) {}

    /// The step and all whose food goes into it. False if one of them cannot be done ahead.
    bool collect(const StepId& id) {
        const Step* step = find(id);
        if (step == nullptr || steps_.contains(id)) {
            return true;  // done ahead already
        }
        steps_.insert(id);
        return step->after.mayBeDoneAhead &&
               std::ranges::all_of(step->uses,
                                   [this](const Use& use) { return collect(use.step); });
    }

    Choices choices() const {
        Choices choices = lesson_.choices;
        for (const StepId& id : steps_) {
            std::erase_if(choices.swapIns, [&](const SwapIn& swap) { return swap.step == id; });
            std::erase_if(choices.batches,
                          [&](const StatedBatches& stated) { return stated.step == id; });
            choices.doneAhead.push_back(stored(*find(id)));
        }
        return choices;
    }

  private:
    const Step* find(const StepId& id) const {
        const auto first = expanded_.firstTask.find(id);
        return first == expanded_.firstTask.end()
                   ? nullptr
                   : &stepOf(lesson_, expanded_.tasks[static_cast<std::size_t>(first->second)]);
    }

    static DoneAhead stored(const Step& step) {
        DoneAhead done;
        done.step = step.id;
        const bool cold = step.after.cold.has_value() || !step.after.atRoom;
        done.storage = cold ? Storage::Cold : Storage::Room;
        const auto& limit = cold ? step.after.cold : step.after.atRoom;
        done.before = std::min(limit.value_or(longestAhead), longestAhead);
        if (step.after.storage == *done.storage) {
            done.place = step.after.place;
        }
        return done;
    }

    const Lesson& lesson_;
    const Expanded& expanded_;
    std::set<StepId> steps_;
};

}  // namespace

std::optional<Choices> doneAheadWith(const Lesson& lesson, const Expanded& expanded,
                                     const StepId& step) {
    Ahead ahead(lesson, expanded);
    return ahead.collect(step) ? std::optional(ahead.choices()) : std::nullopt;
}

}  // namespace rangeline
