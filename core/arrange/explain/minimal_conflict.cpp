#include "arrange/explain/minimal_conflict.h"

#include <algorithm>

namespace rangeline::explain {
namespace {

class Deletion {
  public:
    Deletion(std::vector<int> conflict, const Question& ask)
        : order_(std::move(conflict)), open_(order_), ask_(ask) {}

    MinimalConflict run() {
        while (!open_.empty()) {
            if (suspects_ == 1) {
                keepLast();
            } else {
                tryWithoutLast(
                    std::min({chunk_, open_.size(), suspects_ > 0 ? suspects_ - 1 : open_.size()}));
            }
        }
        std::erase_if(order_,
                      [this](int member) { return std::ranges::count(kept_, member) == 0; });
        result_.members = std::move(order_);
        return std::move(result_);
    }

  private:
    void tryWithoutLast(std::size_t count) {
        std::vector<int> rest(kept_);
        rest.insert(rest.end(), open_.begin(), open_.end() - static_cast<std::ptrdiff_t>(count));
        const Answer answer = ask_(rest);
        if (answer.verdict == Verdict::NotPossible) {
            leaveOut(count, answer.needed);
            chunk_ = 2 * count;
            return;
        }
        chunk_ = std::max<std::size_t>(count / 2, 1);
        suspects_ = answer.verdict == Verdict::Possible ? count : 0;
        if (count == 1) {
            result_.irreducible = result_.irreducible && answer.verdict == Verdict::Possible;
            keepLast();
        }
    }

    void leaveOut(std::size_t count, const std::vector<int>& needed) {
        const std::size_t suspectsLeft = suspects_ > count ? suspects_ - count : 0;
        open_.resize(open_.size() - count);
        // Of the suspects one at least is needed; what else is not may go as well.
        const auto firstSuspect = open_.end() - static_cast<std::ptrdiff_t>(suspectsLeft);
        const auto unneeded = [&](int member) { return std::ranges::count(needed, member) == 0; };
        const auto suspectsGone =
            static_cast<std::size_t>(std::count_if(firstSuspect, open_.end(), unneeded));
        std::erase_if(open_, unneeded);
        suspects_ = suspectsLeft - suspectsGone;
    }

    void keepLast() {
        kept_.push_back(open_.back());
        open_.pop_back();
        suspects_ = 0;
    }

    std::vector<int> order_;
    std::vector<int> open_;  ///< not decided yet
    std::vector<int> kept_;
    const Question& ask_;
    std::size_t chunk_ = 1;
    /// So many of the last open ones cannot all be left out; 0: nothing is known.
    std::size_t suspects_ = 0;
    MinimalConflict result_;
};

}  // namespace

MinimalConflict minimalConflict(std::vector<int> conflict, const Question& ask) {
    return Deletion(std::move(conflict), ask).run();
}

}  // namespace rangeline::explain
