#pragma once
// Small lessons by hand, for tests: one dish with one component, served at 0 to one cover. A
// reference that a function returns is good for filling in more, until the next call.

#include <initializer_list>
#include <string>
#include <vector>

#include "model/expand.h"
#include "model/lesson.h"

namespace rangeline::test {

constexpr Duration operator""_s(unsigned long long n) {
    return Duration::seconds(static_cast<std::int64_t>(n));
}
constexpr Duration operator""_min(unsigned long long n) {
    return Duration::minutes(static_cast<std::int64_t>(n));
}
constexpr Duration operator""_h(unsigned long long n) {
    return Duration::hours(static_cast<std::int64_t>(n));
}
constexpr Temperature operator""_F(unsigned long long n) {
    return Temperature::fahrenheit(static_cast<std::int64_t>(n));
}
constexpr Temperature operator""_C(unsigned long long n) {
    return Temperature::celsius(static_cast<std::int64_t>(n));
}
constexpr Instant minute(std::int64_t n) {
    return Instant::atMinutes(n);
}
constexpr Interval minutes(std::int64_t begin, std::int64_t end) {
    return {Instant::atMinutes(begin), Instant::atMinutes(end)};
}

constexpr Segment hands(Duration length) {
    return {Attention::Hands, length, false};
}
constexpr Segment watch(Duration length) {
    return {Attention::Watch, length, false};
}
constexpr Segment away(Duration length) {
    return {Attention::Away, length, false};
}

/// A fresh ware of that kind.
WareNeed fresh(const std::string& kind);
/// The ware of that kind that an earlier step used.
WareNeed carryOn(const std::string& kind, const std::string& step);
BurnerHeat onBurner();
OvenHeat inOven(Temperature lowest, Temperature highest);
OvenSpot spot(const std::string& oven, Temperature setTo, int firstSlot = 0);

StepKey key(const std::string& step, int batch = 0, int group = 0);
WashKey washAfter(const std::string& step, int spot = 0);
TurnOnKey turningOn(const std::string& oven, int group = 0);

struct LessonBuilder {
    /// One cook, "ann", is the crew.
    LessonBuilder();

    Lesson lesson;

    Burner& burner(const std::string& id);
    /// 325 to 500 °F and more, two slots, warm in 10 min whatever the setting; 10 °F a minute up
    /// and 5 °F a minute down.
    Oven& oven(const std::string& id);
    /// Needs no cleaning unless that is filled in.
    Ware& ware(const std::string& id, const std::string& kind, int count = 1);
    Pool& pool(const std::string& id, const std::string& kind, int capacity);
    /// Joins the crew.
    Cook& cook(const std::string& id, int pacePercent = 100);

    /// The duration is the sum of the segments.
    Step& step(const std::string& id, const std::vector<Segment>& segments);
    Step& get(const std::string& id);
    void uses(const std::string& user, const std::string& made);
    /// From the end of one to the start of the other, at least `least`.
    Link& link(const std::string& from, const std::string& to, Duration least = {});

    Placement& place(const PlacementKey& key, Instant start);
    Placement& place(const std::string& step, std::int64_t minute);
    Placement& placeWash(const std::string& step, std::int64_t minute, const std::string& cook);
    Placement& placeTurnOn(const std::string& oven, Instant start, Temperature setTo,
                           const std::string& cook);
};

/// Gives all the steps' hands and watches to that cook.
void assign(Placement& placement, const std::string& cook, int watches = 0);

/// Roast, done at -30; then carving, a salad and plating by one cook, with 5 min to spare.
LessonBuilder roastDinner();

}  // namespace rangeline::test
