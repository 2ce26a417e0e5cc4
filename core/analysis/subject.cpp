#include "analysis/subject.h"

#include <algorithm>

namespace rangeline {

void TouchedSubjects::tidy() {
    for (auto& list : lists_) {
        std::ranges::sort(list);
        const auto repeated = std::ranges::unique(list);
        list.erase(repeated.begin(), repeated.end());
    }
}

}  // namespace rangeline
