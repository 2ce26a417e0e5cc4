#include "safety/dangers.h"

#include <algorithm>

namespace rangeline {

std::span<const Danger> dangers() {
    static constexpr Danger rows[] = {
        {"hot-fat", "common-practice"},      {"steam", "common-practice"},
        {"alcohol", "common-practice"},      {"knife", "common-practice"},
        {"mandoline", "common-practice"},    {"foil-packet", "common-practice"},
        {"broiler", "common-practice"},      {"hot-sugar", "common-practice"},
        {"hot-handle", "common-practice"},   {"heavy-pot", "common-practice"},
        {"hot-blending", "common-practice"}, {"open-flame", "common-practice"},
        {"garlic-in-oil", "nchfp-garlic"},
    };
    return rows;
}

const Danger* findDanger(std::string_view key) {
    const auto all = dangers();
    const auto it = std::ranges::find(all, key, &Danger::key);
    return it == all.end() ? nullptr : &*it;
}

}  // namespace rangeline
