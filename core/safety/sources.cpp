#include "safety/sources.h"

#include <algorithm>

namespace rangeline {

std::span<const Source> sources() {
    static constexpr Source rows[] = {
        {"common-practice", "common practice, no source"},
        {"usda-temperatures", "USDA FSIS, minimum internal temperatures"},
        {"usda-danger-zone", "USDA FSIS, danger zone 40 to 140 °F"},
        {"nchfp-garlic", "National Center for Home Food Preservation, garlic in oil"},
        {"food-code-tcs", "FDA Food Code 1-201.10"},
        {"food-code-cook-1", "FDA Food Code 3-401.11(A)(1)"},
        {"food-code-cook-2", "FDA Food Code 3-401.11(A)(2)"},
        {"food-code-cook-3", "FDA Food Code 3-401.11(A)(3)"},
        {"food-code-roasts", "FDA Food Code 3-401.11(B)"},
        {"food-code-plants", "FDA Food Code 3-401.13"},
        {"food-code-reheating", "FDA Food Code 3-403.11"},
        {"food-code-cooling", "FDA Food Code 3-501.14"},
        {"food-code-holding", "FDA Food Code 3-501.16"},
        {"food-code-time", "FDA Food Code 3-501.19"},
        {"faster-act", "FASTER Act of 2021, in force 1 January 2023"},
        {"eu-1169-2011", "Regulation (EU) 1169/2011, Annex II"},
    };
    return rows;
}

const Source* findSource(std::string_view key) {
    const auto all = sources();
    const auto it = std::ranges::find(all, key, &Source::key);
    return it == all.end() ? nullptr : &*it;
}

}  // namespace rangeline
