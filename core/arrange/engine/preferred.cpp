// The values that a search tries first: those of the best solution, or suggested ones.

#include <algorithm>

#include "arrange/engine/search.h"

namespace rangeline::engine {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

}  // namespace

std::optional<Literal> Search::remembered(View view) const {
    const std::optional<Value> value = saved_[at(view / 2)];
    if (!value) {
        return std::nullopt;
    }
    const View positive = view & ~1;
    if (*value < engine_.low(positive) || *value > engine_.high(positive)) {
        return std::nullopt;
    }
    return *value > engine_.low(positive) ? Literal{positive, *value}
                                          : Literal{opposite(positive), -*value};
}

void Search::rememberValues() {
    found_ = true;
    for (const Choice& choice : choices_) {
        const View positive = choice.view & ~1;
        if (relevant(choice)) {
            saved_[at(choice.view / 2)] = engine_.low(positive);
        }
    }
}

void Search::suggest(View view, Value value) {
    found_ = suggested_ = true;
    saved_[at(view / 2)] = view % 2 == 0 ? value : -value;
}

std::vector<Literal> Search::outside(Value from, Value to, std::optional<Value> later) const {
    std::vector<Literal> kept;
    for (const Group& group : groups_) {
        const View start = group.start.view & ~1;
        const std::optional<Value> saved = saved_[at(start / 2)];
        if (!saved || (from <= *saved && *saved < to)) {
            continue;
        }
        for (const std::vector<Literal>& set : group.sets) {
            for (const Literal literal : set) {
                if (saved_[at(literal.view / 2)] == 1 && literal.view % 2 == 0) {
                    kept.push_back(literal);
                }
            }
        }
        kept.push_back({start, *saved});
        kept.push_back({opposite(start), -*saved - (*saved < from ? later.value_or(0) : 0)});
    }
    std::erase_if(kept, [this](Literal l) { return engine_.isFalse(l); });
    return kept;
}

void Search::prefer(const std::vector<std::optional<Value>>& values) {
    found_ = true;
    std::copy_n(values.begin(), std::min(values.size(), saved_.size()), saved_.begin());
}

std::vector<Value> Search::preferredStarts() const {
    std::vector<Value> starts;
    for (const Group& group : groups_) {
        if (const auto saved = saved_[at((group.start.view & ~1) / 2)]) {
            starts.push_back(*saved);
        }
    }
    return starts;
}

void Search::forgetValues() {
    found_ = suggested_ = false;
    std::ranges::fill(saved_, std::nullopt);
}

}  // namespace rangeline::engine
