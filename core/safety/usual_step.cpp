#include "safety/usual_step.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "model/fridge.h"
#include "safety/techniques.h"

namespace rangeline {
namespace {

enum class On : std::uint8_t { Nothing, Burner, Oven, FridgeShelf };

struct Usual {
    std::string_view technique;
    int likely;      ///< minutes
    int handsFirst;  ///< minutes
    Attention then;
    On on = On::Nothing;
    std::string_view level{};  ///< of the burner
    int from = 0;              ///< °F of the oven
    int to = 0;
    std::string_view ware{};
};

using enum Attention;
using enum On;

constexpr std::array rows = {
    Usual{"sweat", 6, 1, Watch, Burner, "medium-low", 0, 0, "saute-pan"},
    Usual{"melt", 30, 2, Watch, Burner, "low", 0, 0, "saute-pan"},
    Usual{"caramelize", 60, 5, Watch, Burner, "medium-low", 0, 0, "saute-pan"},
    Usual{"saute", 5, 0, Hands, Burner, "medium-high", 0, 0, "saute-pan"},
    Usual{"render", 10, 1, Watch, Burner, "medium-low", 0, 0, "saute-pan"},
    Usual{"reduce", 10, 0, Watch, Burner, "medium-high", 0, 0, "saute-pan"},
    Usual{"roast-in-packet", 35, 1, Away, Oven, "", 350, 375, "sheet"},
    Usual{"slow-roast", 120, 1, Away, Oven, "", 250, 300, "sheet"},
    Usual{"roast", 30, 1, Away, Oven, "", 400, 425, "sheet"},
    Usual{"bake", 30, 1, Away, Oven, "", 350, 375, "baking-dish"},
    Usual{"broil", 4, 0, Watch, Oven, "", 500, 550, "sheet"},
    Usual{"gratinate", 15, 1, Away, Oven, "", 400, 425, "baking-dish"},
    Usual{"sear", 6, 0, Hands, Burner, "high", 0, 0, "saute-pan"},
    Usual{"char", 8, 1, Watch, Burner, "high", 0, 0, "saute-pan"},
    Usual{"toast", 5, 0, Watch, Burner, "medium", 0, 0, "saute-pan"},
    Usual{"deep-fry", 6, 0, Hands, Burner, "medium-high", 0, 0, "pot"},
    Usual{"pan-fry", 8, 0, Hands, Burner, "medium-high", 0, 0, "saute-pan"},
    Usual{"flambe", 1, 0, Hands, Burner, "medium", 0, 0, "saute-pan"},
    Usual{"blanch", 2, 0, Hands, Burner, "high", 0, 0, "pot"},
    Usual{"boil", 12, 1, Watch, Burner, "high", 0, 0, "pot"},
    Usual{"simmer", 25, 1, Watch, Burner, "low", 0, 0, "saucepan"},
    Usual{"poach", 10, 1, Watch, Burner, "low", 0, 0, "saucepan"},
    Usual{"steam", 10, 1, Watch, Burner, "medium-high", 0, 0, "pot"},
    Usual{"braise", 90, 2, Away, Oven, "", 300, 325, "pot"},
    Usual{"rest", 10, 0, Away},
    Usual{"peel", 8, 0, Hands, Nothing, "", 0, 0, "board"},
    Usual{"slice", 5, 0, Hands, Nothing, "", 0, 0, "board"},
    Usual{"dice", 8, 0, Hands, Nothing, "", 0, 0, "board"},
    Usual{"mince", 5, 0, Hands, Nothing, "", 0, 0, "board"},
    Usual{"whisk", 4, 0, Hands, Nothing, "", 0, 0, "bowl"},
    Usual{"knead", 10, 0, Hands, Nothing, "", 0, 0, "board"},
    Usual{"marinate", 60, 2, Away, FridgeShelf, "", 0, 0, "bowl"},
    Usual{"cool", 30, 0, Away},
    Usual{"chill", 120, 1, Away, FridgeShelf},
    Usual{"temper", 30, 1, Away},
};

constexpr Duration plainTime = Duration::minutes(5);

Temperature setting(int fahrenheit, Units units) {
    const Temperature exact = Temperature::fahrenheit(fahrenheit);
    constexpr double dial = 10;  // °C
    const auto steps = static_cast<int>(std::lround(exact.inCelsius() / dial));
    return units == Units::UsCustomary ? exact : Temperature::celsius(steps * 10);
}

Heat heatOf(const Usual& row, Units units) {
    if (row.on == Burner) {
        BurnerHeat burner;
        burner.level = row.level;
        return burner;
    }
    if (row.on == Oven) {
        OvenHeat oven;
        oven.lowest = setting(row.from, units);
        oven.highest = setting(row.to, units);
        oven.mode = row.technique == "broil" ? OvenMode::Broil : OvenMode::Bake;
        return oven;
    }
    return {};
}

std::vector<WareNeed> waresOf(const Usual& row) {
    if (row.ware.empty()) {
        return {};
    }
    WareNeed need;
    need.kind = row.ware;
    return {need};
}

}  // namespace

DurationRange timeAround(Duration likely, Duration least, Duration most) {
    const std::int64_t minutes = likely.inSeconds() / 60;
    const auto shortest = Duration::minutes(std::max<std::int64_t>(1, minutes * 3 / 4));
    const auto longest = Duration::minutes(minutes + std::max<std::int64_t>(1, minutes / 3));
    return {std::min(std::max(shortest, least), likely), likely,
            std::max(std::min(longest, most), likely)};
}

std::vector<Segment> attentionOf(Duration handsFirst, Attention then) {
    std::vector<Segment> segments;
    if (handsFirst > Duration() && then != Hands) {
        segments.push_back({Hands, handsFirst, false});
    }
    segments.push_back({then, {}, true});
    return segments;
}

StepStart plainStart() {
    StepStart start;
    start.time = {plainTime, plainTime, plainTime};
    start.segments = attentionOf({}, Hands);
    return start;
}

StepStart usualStart(std::string_view technique, Units units) {
    const auto* row = std::ranges::find(rows, technique, &Usual::technique);
    const Technique* range = findTechnique(technique);
    if (row == rows.end() || range == nullptr) {
        return plainStart();
    }
    return {timeAround(Duration::minutes(row->likely), range->least, range->most),
            attentionOf(Duration::minutes(row->handsFirst), row->then),
            heatOf(*row, units),
            waresOf(*row),
            row->on == FridgeShelf,
            std::string(range->danger)};
}

void goOver(Step& step, const StepStart& before, const StepStart& next) {
    const StepStart plain = plainStart();
    const auto isAsIn = [&step](const StepStart& start) {
        return step.time == start.time && step.segments == start.segments;
    };
    if (isAsIn(before) || isAsIn(plain)) {
        step.time = next.time;
        step.segments = next.segments;
    }
    if (step.heat == before.heat || step.heat == plain.heat) {
        step.heat = next.heat;
    }
    if (step.wares == before.wares || step.wares.empty()) {
        step.wares = next.wares;
    }
    if (next.cold != before.cold) {
        keepInFridge(step, next.cold);
    }
    std::vector<std::string>& dangers = step.hazards.dangers;
    if (!next.danger.empty() && std::ranges::find(dangers, next.danger) == dangers.end()) {
        dangers.push_back(next.danger);
    }
}

}  // namespace rangeline
