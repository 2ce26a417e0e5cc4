#include "support/random_placements.h"

namespace rangeline::test {
namespace {

template <class List>
const auto& oneOf(Random& random, const List& list) {
    return list[static_cast<std::size_t>(random.between(0, std::ssize(list) - 1))];
}

CookId cook(Random& random, const Lesson& lesson) {
    return random.chance(0.02) ? CookId{"nobody"} : oneOf(random, lesson.head.crew);
}

OvenSpot ovenSpot(Random& random, const Kitchen& kitchen) {
    const Oven& oven = oneOf(random, kitchen.ovens);
    return {oven.id, static_cast<int>(random.between(0, oven.slots - 1)),
            Temperature::fahrenheit(325 + 25 * random.between(0, 4)), oneOf(random, oven.modes)};
}

WareSpot wareSpot(Random& random, const Kitchen& kitchen) {
    const Ware& ware = oneOf(random, kitchen.wares);
    const int beyond = random.chance(0.02) ? 1 : 0;
    return {ware.id, static_cast<int>(random.between(0, ware.count - 1 + beyond))};
}

}  // namespace

std::vector<PlacementKey> possibleKeys(const Lesson& lesson, const Expanded& expanded) {
    std::vector<PlacementKey> keys;
    for (const Task& task : expanded.tasks) {
        keys.push_back(task.key);
    }
    for (const Chain& chain : expanded.chains) {
        keys.push_back(chain.key);
    }
    for (const Oven& oven : lesson.kitchen.ovens) {
        for (int group = 0; group < lesson.head.groups.count; ++group) {
            keys.push_back(TurnOnKey{oven.id, group});
        }
    }
    return keys;
}

Placement randomPlacement(Random& random, const Lesson& lesson) {
    const Kitchen& kitchen = lesson.kitchen;
    Placement placement;
    placement.start = Instant::atSeconds(random.between(-240, 20) * 30);
    const auto times = [&](auto add) {
        for (std::int64_t n = random.between(0, 4); n > 0; --n) {
            add();
        }
    };
    times([&] { placement.wares.push_back(wareSpot(random, kitchen)); });
    times([&] { placement.watchers.push_back(cook(random, lesson)); });
    if (!kitchen.burners.empty()) {
        times([&] { placement.burners.push_back(oneOf(random, kitchen.burners).id); });
        times([&] { placement.keptOn.push_back(oneOf(random, kitchen.burners).id); });
    }
    if (!kitchen.ovens.empty() && random.chance(0.9)) {
        placement.oven = ovenSpot(random, kitchen);
        placement.keptIn = ovenSpot(random, kitchen);
    }
    if (random.chance(0.9)) {
        placement.hands.push_back({cook(random, lesson), 0});
    }
    if (random.chance(0.2)) {
        placement.hands.push_back({cook(random, lesson), static_cast<int>(random.between(0, 3))});
    }
    placement.pinned = random.chance(0.1);
    if (random.chance(0.1)) {
        placement.lasts = Duration::seconds(random.between(0, 40) * 30);
    }
    return placement;
}

void placeAtRandom(Random& random, Lesson& lesson, const Expanded& expanded, double share) {
    for (const PlacementKey& key : possibleKeys(lesson, expanded)) {
        if (random.chance(share)) {
            lesson.placements.insert_or_assign(key, randomPlacement(random, lesson));
        }
    }
}

}  // namespace rangeline::test
