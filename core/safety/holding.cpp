#include "safety/holding.h"

namespace rangeline {

const HoldingLimits& holdingLimits(SafetyProfile profile) {
    static constexpr HoldingLimits household{
        SafetyProfile::Household,    Temperature::fahrenheit(40), Temperature::fahrenheit(140),
        "usda-danger-zone",          Duration::hours(2),          "usda-danger-zone",
        Temperature::fahrenheit(90), Duration::hours(1)};
    static constexpr HoldingLimits foodCode{SafetyProfile::FoodCode,
                                            Temperature::fahrenheit(41),
                                            Temperature::fahrenheit(135),
                                            "food-code-holding",
                                            Duration::hours(4),
                                            "food-code-time",
                                            std::nullopt,
                                            Duration()};
    return profile == SafetyProfile::Household ? household : foodCode;
}

std::span<const CoolingStage> coolingStages() {
    static constexpr CoolingStage rows[] = {
        {Temperature::fahrenheit(135), Temperature::fahrenheit(70), Duration::hours(2),
         "food-code-cooling"},
        {Temperature::fahrenheit(135), Temperature::fahrenheit(41), Duration::hours(6),
         "food-code-cooling"},
    };
    return rows;
}

const GarlicInOil& garlicInOil() {
    static constexpr GarlicInOil row{Temperature::fahrenheit(40), Duration::hours(4 * 24),
                                     "nchfp-garlic"};
    return row;
}

}  // namespace rangeline
