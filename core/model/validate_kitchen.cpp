#include <algorithm>

#include "model/quantity_text.h"
#include "model/stations.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

constexpr std::int64_t mostAlike = 1000;

/// A kitchen outside of these is a slip of the pen.
constexpr Temperature coldestRoom = Temperature::celsius(-10);
constexpr Temperature hottestRoom = Temperature::celsius(60);

void room(ValueChecks& checks, const Place& place, Temperature room) {
    checks.temperature(place, room);
    if (checks.none() && (room < coldestRoom || hottestRoom < room)) {
        checks.report(place, FaultCode::OutOfRange,
                      {toText(room, Units::Metric), toText(coldestRoom, Units::Metric),
                       toText(hottestRoom, Units::Metric)});
    }
}

void validatePower(ValueChecks& checks, const Place& place, const std::optional<Power>& power) {
    checks.whole(place, power ? power->amount : 1, 1, 1'000'000);
}

void burner(ValueChecks& checks, const Place& place, const Burner& burner) {
    checks.text(place.key("name"), burner.name);
    checks.length(place.key("widestVessel"), burner.widestVessel);
    validatePower(checks, place.key("power"), burner.power);
    checks.length(place.key("fromLeft"), burner.fromLeft);
    checks.length(place.key("fromFront"), burner.fromFront);
}

void warmUp(ValueChecks& checks, const Place& place, const std::vector<WarmUpPoint>& points) {
    if (points.empty()) {
        checks.whole(place, 0, 1, mostAlike);
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Place point = place.at(i);
        checks.temperature(point.key("to"), points[i].to);
        checks.duration(point.key("takes"), points[i].takes);
        if (i > 0 && points[i].to <= points[i - 1].to) {
            checks.report(point.key("to"), FaultCode::Contradiction, {"to", "to"});
        }
    }
}

void modes(ValueChecks& checks, const Place& place, const std::vector<OvenMode>& modes) {
    if (modes.empty()) {
        checks.whole(place, 0, 1, 3);
    }
    for (std::size_t i = 0; i < modes.size(); ++i) {
        if (std::find(modes.begin(), modes.begin() + static_cast<std::ptrdiff_t>(i), modes[i]) !=
            modes.begin() + static_cast<std::ptrdiff_t>(i)) {
            checks.report(place.at(i), FaultCode::Contradiction, {"modes", "modes"});
        }
    }
}

void oven(ValueChecks& checks, const Place& place, const Oven& oven) {
    checks.text(place.key("name"), oven.name);
    checks.whole(place.key("slots"), oven.slots, 1, 50);
    checks.temperature(place.key("lowest"), oven.lowest);
    checks.temperature(place.key("highest"), oven.highest);
    if (oven.highest < oven.lowest) {
        checks.report(place.key("highest"), FaultCode::Contradiction, {"highest", "lowest"});
    }
    checks.difference(place.key("dialStep"), oven.dialStep);
    modes(checks, place.key("modes"), oven.modes);
    warmUp(checks, place.key("warmUp"), oven.warmUp);
    checks.difference(place.key("heatsPerMinute"), oven.heatsPerMinute);
    checks.difference(place.key("coolsPerMinute"), oven.coolsPerMinute);
    checks.duration(place.key("modeChange"), oven.modeChange);
}

void ware(ValueChecks& checks, const Place& place, const Ware& ware, const Kitchen& kitchen) {
    checks.text(place.key("name"), ware.name);
    checks.kind(place.key("kind"), ware.kind, EquipmentRole::Ware);
    checks.whole(place.key("count"), ware.count, 1, mostAlike);
    checks.length(place.key("width"), ware.width);
    checks.length(place.key("depth"), ware.depth.value_or(Length()));
    checks.whole(place.key("volume"), ware.millilitres.value_or(1), 1, 1'000'000);
    checks.whole(place.key("rackSlots"), ware.rackSlots, 1, 50);
    const Place cleaning = place.key("cleaning");
    checks.duration(cleaning.key("takes"), ware.cleaning.takes);
    if (ware.cleaning.sink && poolItem(kitchen, *ware.cleaning.sink) < 0) {
        checks.report(cleaning.key("sink"), FaultCode::UnknownReference,
                      {ware.cleaning.sink->text, "pool"});
    }
}

void pool(ValueChecks& checks, const Place& place, const Pool& pool) {
    checks.text(place.key("name"), pool.name);
    checks.kind(place.key("kind"), pool.kind, EquipmentRole::Pool);
    checks.whole(place.key("capacity"), pool.capacity, 1, 10'000);
}

void cook(ValueChecks& checks, const Place& place, const Cook& cook) {
    checks.text(place.key("name"), cook.name);
    if (cook.pacePercent < 10 || cook.pacePercent > 1000) {
        checks.report(place.key("pace"), FaultCode::OutOfRange,
                      {std::to_string(cook.pacePercent) + " %", "10 %", "1000 %"});
    }
    checks.texts(place.key("can"), cook.can);
}

}  // namespace

void validateKitchen(ValueChecks& checks, const Kitchen& kitchen) {
    const Place file;
    const Place place = file.key("kitchen");
    checks.text(place.key("name"), kitchen.name);
    checks.length(place.key("rangeWidth"), kitchen.rangeWidth);
    MetIds met;  // one for all sorts: groups name what they share by id alone
    const auto each = [&](const char* key, const auto& items, auto check) {
        const Place list = place.key(key);
        checks.whole(list, static_cast<std::int64_t>(items.size()), 0, mostAlike);
        for (std::size_t i = 0; i < items.size() && !checks.full(); ++i) {
            const Place item = list.at(i);
            checks.newId(item.key("id"), items[i].id.text, met);
            check(item, items[i]);
        }
    };
    each("burners", kitchen.burners,
         [&](const Place& p, const Burner& b) { burner(checks, p, b); });
    each("ovens", kitchen.ovens, [&](const Place& p, const Oven& o) { oven(checks, p, o); });
    each("wares", kitchen.wares,
         [&](const Place& p, const Ware& w) { ware(checks, p, w, kitchen); });
    each("pools", kitchen.pools, [&](const Place& p, const Pool& o) { pool(checks, p, o); });
    each("cooks", kitchen.cooks, [&](const Place& p, const Cook& c) { cook(checks, p, c); });
    checks.whole(place.key("watchLimit"), kitchen.watchLimit, 0, 100);
    if (kitchen.room) {
        room(checks, place.key("room"), *kitchen.room);
    }
}

}  // namespace rangeline
