#include "arrange/engine/activity_order.h"

namespace rangeline::engine {
namespace {

constexpr double growth = 1 / 0.95;  // of what a touch counts, from one conflict to the next
constexpr double largest = 1e100;

}  // namespace

void ActivityOrder::add(int variable, double activity) {
    grow(at(variable) + 1);
    activity_[at(variable)] = activity;
    isAdded_[at(variable)] = 1;
    insert(variable);
}

void ActivityOrder::grow(std::size_t variables) {
    if (variables > activity_.size()) {
        activity_.resize(variables, 0);
        isAdded_.resize(variables, 0);
        position_.resize(variables, -1);
    }
}

void ActivityOrder::bump(int variable) {
    activity_[at(variable)] += bumpBy_;
    if (activity_[at(variable)] > largest) {
        for (double& activity : activity_) {
            activity /= largest;
        }
        bumpBy_ /= largest;
    }
    if (isAdded_[at(variable)] != 0) {
        insert(variable);
        up(at(position_[at(variable)]));
    }
}

void ActivityOrder::decay() {
    bumpBy_ *= growth;
}

std::optional<int> ActivityOrder::take(int level) {
    if (heap_.empty()) {
        return std::nullopt;
    }
    const int variable = pop();
    taken_.emplace_back(level, variable);
    return variable;
}

void ActivityOrder::putBack(int level) {
    while (!taken_.empty() && taken_.back().first >= level) {
        insert(taken_.back().second);
        taken_.pop_back();
    }
}

// ---- a binary heap ---------------------------------------------------------------------------

void ActivityOrder::put(int variable, std::size_t position) {
    heap_[position] = variable;
    position_[at(variable)] = static_cast<int>(position);
}

void ActivityOrder::up(std::size_t position) {
    const int variable = heap_[position];
    while (position > 0) {
        const std::size_t parent = (position - 1) / 2;
        if (activityAt(parent) >= activity_[at(variable)]) {
            break;
        }
        put(heap_[parent], position);
        position = parent;
    }
    put(variable, position);
}

void ActivityOrder::down(std::size_t position) {
    const int variable = heap_[position];
    while (2 * position + 1 < heap_.size()) {
        std::size_t child = 2 * position + 1;
        if (child + 1 < heap_.size() && activityAt(child + 1) > activityAt(child)) {
            ++child;
        }
        if (activityAt(child) <= activity_[at(variable)]) {
            break;
        }
        put(heap_[child], position);
        position = child;
    }
    put(variable, position);
}

void ActivityOrder::insert(int variable) {
    if (position_[at(variable)] < 0) {
        heap_.push_back(variable);
        up(heap_.size() - 1);
    }
}

int ActivityOrder::pop() {
    const int top = heap_.front();
    position_[at(top)] = -1;
    const int last = heap_.back();
    heap_.pop_back();
    if (!heap_.empty()) {
        heap_.front() = last;
        down(0);
    }
    return top;
}

}  // namespace rangeline::engine
