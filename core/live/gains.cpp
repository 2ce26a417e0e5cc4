#include "live/gains.h"

#include <algorithm>

namespace rangeline::live {
namespace {

bool mayBeLeftOut(const Service& service, const PlacementKey& key, const Work& work) {
    const auto* step = std::get_if<StepKey>(&key);
    const int node = service.index().nodeOf(key);
    if (step == nullptr || node < 0 || work.stage != Stage::Waiting) {
        return false;
    }
    const Step& it = service.index().step(node);
    return !it.plates && !it.afterServing && !it.hazards.target && !it.hazards.raw &&
           std::holds_alternative<std::monostate>(it.heat);
}

}  // namespace

std::vector<Gain> gains(const Service& service, Instant now, std::stop_token stop) {
    std::vector<Gain> found;
    const Duration behind = outlook(service, now).behind;
    for (const auto& [key, work] : service.works()) {
        if (stop.stop_requested()) {
            break;
        }
        if (mayBeLeftOut(service, key, work)) {
            Service without = service.copy();
            without.apply(Skipped{key}, now);
            const Duration by = behind - outlook(without, now).behind;
            if (by >= Duration::minutes(1)) {
                found.push_back({key, by});
            }
        }
    }
    std::ranges::stable_sort(found, std::greater<>(), &Gain::by);
    return found;
}

}  // namespace rangeline::live
