#include "safety/techniques.h"

#include <algorithm>

namespace rangeline {

namespace {

constexpr Duration s(int seconds) {
    return Duration::seconds(seconds);
}
constexpr Duration min(int minutes) {
    return Duration::minutes(minutes);
}
constexpr Duration h(int hours) {
    return Duration::hours(hours);
}

}  // namespace

std::span<const Technique> techniques() {
    static constexpr Technique rows[] = {
        {"sweat", min(4), min(10), ""},
        {"melt", min(20), min(45), ""},
        {"caramelize", min(45), min(90), ""},
        {"saute", min(3), min(7), ""},
        {"render", min(8), min(15), ""},
        {"reduce", min(2), min(45), ""},
        {"roast-in-packet", min(30), min(40), ""},
        {"slow-roast", min(20), h(8), ""},
        {"roast", min(10), h(4), ""},
        {"bake", min(8), h(2), ""},
        {"broil", min(1), min(15), ""},
        {"gratinate", min(2), h(1), ""},
        {"sear", min(1), min(15), ""},
        {"char", min(2), min(20), ""},
        {"toast", min(2), min(20), ""},
        {"deep-fry", min(1), min(20), "hot-fat"},
        {"pan-fry", min(2), min(25), "hot-fat"},
        {"flambe", s(15), min(3), "alcohol"},
        {"blanch", s(20), min(6), ""},
        {"boil", min(2), h(2), ""},
        {"simmer", min(3), h(6), ""},
        {"poach", min(2), min(40), ""},
        {"steam", min(2), min(60), "steam"},
        {"braise", min(30), h(6), ""},
        {"rest", min(3), min(60), ""},
        {"peel", min(1), min(45), ""},
        {"slice", min(1), min(45), ""},
        {"dice", min(1), min(45), ""},
        {"mince", min(1), min(30), ""},
        {"whisk", min(1), min(20), ""},
        {"knead", min(3), min(20), ""},
        {"marinate", min(15), h(48), ""},
        {"cool", min(10), h(6), ""},
        {"chill", min(20), h(24), ""},
        {"temper", min(10), h(2), ""},
    };
    return rows;
}

const Technique* findTechnique(std::string_view key) {
    const auto all = techniques();
    const auto it = std::ranges::find(all, key, &Technique::key);
    return it == all.end() ? nullptr : &*it;
}

}  // namespace rangeline
