#include "arrange/engine/linear.h"

#include <limits>
#include <memory>

namespace rangeline::engine {

LinearAtMost::LinearAtMost(std::vector<Term> terms, std::int64_t constant, View total)
    : terms_(std::move(terms)), constant_(constant), total_(total) {}

std::vector<View> LinearAtMost::watched() const {
    std::vector<View> views{opposite(total_)};
    for (const Term& term : terms_) {
        views.push_back(term.view);
    }
    return views;
}

bool LinearAtMost::propagate(Engine& engine) {
    std::int64_t least = constant_;
    because_.clear();
    for (const Term& term : terms_) {
        least += std::int64_t{term.weight} * engine.low(term.view);
        because_.push_back({term.view, engine.low(term.view)});
    }
    if (least > std::numeric_limits<Value>::max() / 2) {
        return engine.conflict(because_);
    }
    if (!engine.enqueueBecause({total_, static_cast<Value>(least)}, because_)) {
        return false;
    }
    const std::int64_t room = engine.high(total_) - least;
    because_.push_back({});
    for (std::size_t i = 0; i < terms_.size(); ++i) {
        const Term& term = terms_[i];
        const std::int64_t most = engine.low(term.view) + room / term.weight;
        if (most < engine.high(term.view)) {
            // All the others, and the limit on the total, instead of this term's own bound.
            const Literal own = because_[i];
            because_[i] = {opposite(total_), engine.low(opposite(total_))};
            because_.back() = because_[i];
            const bool fine =
                engine.enqueueBecause({opposite(term.view), static_cast<Value>(-most)}, because_);
            because_[i] = own;
            if (!fine) {
                return false;
            }
        }
    }
    return true;
}

void addLinearAtMost(Engine& engine, std::vector<Term> terms, std::int64_t constant, View total) {
    auto propagator = std::make_unique<LinearAtMost>(std::move(terms), constant, total);
    const std::vector<View> watched = propagator->watched();
    engine.addPropagator(std::move(propagator), watched);
}

}  // namespace rangeline::engine
