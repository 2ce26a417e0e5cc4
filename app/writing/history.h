#pragma once
// A value as it was before each change, and what was taken back of them.

#include <utility>
#include <vector>

namespace rangeline {

template <class Value>
class History {
  public:
    /// `value` is about to change: what was taken back can no longer be brought again.
    void changed(Value before) {
        before_.push_back(std::move(before));
        after_.clear();
    }
    bool canUndo() const { return !before_.empty(); }
    bool canRedo() const { return !after_.empty(); }
    /// The value becomes the one before, or after; nothing happens where there is none.
    void undo(Value& value) { go(value, before_, after_); }
    void redo(Value& value) { go(value, after_, before_); }

  private:
    static void go(Value& value, std::vector<Value>& from, std::vector<Value>& to) {
        if (!from.empty()) {
            to.push_back(std::exchange(value, std::move(from.back())));
            from.pop_back();
        }
    }

    std::vector<Value> before_;
    std::vector<Value> after_;
};

}  // namespace rangeline
