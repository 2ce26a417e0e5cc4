#include "arrange/lanes/board.h"

namespace rangeline::lanes {

void Board::offer(int stage, BoardPlan plan) {
    const std::scoped_lock lock(mutex_);
    if (stage != static_cast<int>(closed_.size()) || (best_ && *best_ <= plan.value)) {
        return;
    }
    best_ = plan.value;
    plan_ = std::make_shared<const BoardPlan>(std::move(plan));
    version_.fetch_add(1, std::memory_order_release);
}

void Board::raise(int stage, Value bound) {
    const std::scoped_lock lock(mutex_);
    if (stage != static_cast<int>(closed_.size()) || bound <= bound_) {
        return;
    }
    bound_ = bound;
    version_.fetch_add(1, std::memory_order_release);
}

void Board::close(int stage, std::optional<Value> value) {
    const std::scoped_lock lock(mutex_);
    if (stage != static_cast<int>(closed_.size())) {
        return;
    }
    closed_.push_back(value);
    best_.reset();
    bound_ = noBound;
    version_.fetch_add(1, std::memory_order_release);
}

Board::State Board::state(int stage) const {
    const std::scoped_lock lock(mutex_);
    const auto index = static_cast<std::size_t>(stage);
    if (index < closed_.size()) {
        return {true, closed_[index], closed_[index].value_or(noBound), plan_};
    }
    return {false, best_, bound_, plan_};
}

}  // namespace rangeline::lanes
