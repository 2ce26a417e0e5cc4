#include "recipe/cuts.h"

#include <algorithm>
#include <cctype>

namespace rangeline {
namespace {

constexpr Length sixteenths(int count) {
    return Length::nanometres(count * 1'587'500);
}

constexpr Cut cube(std::string_view name, int side) {
    return {name, sixteenths(side), sixteenths(side), sixteenths(side), sixteenths(side)};
}

bool sameLetters(std::string_view a, std::string_view b) {
    return std::ranges::equal(
        a, b, [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

}  // namespace

std::span<const Cut> cuts() {
    // Open textbooks of the trade, as quoted there in inches: fine brunoise 1/16, brunoise 1/8,
    // dice 1/4, 1/2, 3/4; julienne 1/8 x 1/8 x 1 to 2 1/2; batonnet 1/4 x 1/4 x 2 to 3; paysanne
    // 1/2 x 1/2 x 1/8.
    static constexpr Cut rows[] = {
        cube("fine brunoise", 1),
        cube("brunoise", 2),
        cube("small dice", 4),
        cube("medium dice", 8),
        cube("large dice", 12),
        {"julienne", sixteenths(2), sixteenths(2), sixteenths(16), sixteenths(40)},
        {"batonnet", sixteenths(4), sixteenths(4), sixteenths(32), sixteenths(48)},
        {"paysanne", sixteenths(2), sixteenths(8), sixteenths(8), sixteenths(8)},
    };
    return rows;
}

const Cut* findCut(std::string_view name) {
    const auto all = cuts();
    const auto it =
        std::ranges::find_if(all, [&](const Cut& cut) { return sameLetters(cut.name, name); });
    return it == all.end() ? nullptr : &*it;
}

}  // namespace rangeline
