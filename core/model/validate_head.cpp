#include <algorithm>
#include <array>

#include "model/characters.h"
#include "model/quantity_text.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

/// The number in a fixed place of a text, or -1.
int digitsAt(std::string_view text, std::size_t begin, std::size_t count) {
    int value = 0;
    for (const char c : text.substr(begin, count)) {
        if (c < '0' || c > '9') {
            return -1;
        }
        value = value * 10 + (c - '0');
    }
    return value;
}

int daysInMonth(int year, int month) {
    constexpr std::array days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    return days[static_cast<std::size_t>(month - 1)] + (month == 2 && leap ? 1 : 0);
}

/// "2027-10-09T18:30", and a day that the calendar has.
bool isLocalTime(std::string_view text) {
    if (text.size() != 16 || text[4] != '-' || text[7] != '-' || text[10] != 'T' ||
        text[13] != ':') {
        return false;
    }
    const int year = digitsAt(text, 0, 4);
    const int month = digitsAt(text, 5, 2);
    const int day = digitsAt(text, 8, 2);
    const int hour = digitsAt(text, 11, 2);
    const int minute = digitsAt(text, 14, 2);
    return year >= 1900 && month >= 1 && month <= 12 && day >= 1 &&
           day <= daysInMonth(year, month) && hour >= 0 && hour <= 23 && minute >= 0 &&
           minute <= 59;
}

/// "America/Chicago", "UTC": the form only; which zones there are is not known here.
bool isZoneName(std::string_view text) {
    return !text.empty() && text.size() <= 64 && std::ranges::all_of(text, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '/' || c == '_' || c == '-' || c == '+';
    });
}

void times(ValueChecks& checks, const Place& place, const Head& head) {
    constexpr Duration day = Duration::hours(24);
    const Place grain = place.key("grain");
    if (head.grain <= Duration() || head.grain > day) {
        checks.duration(grain, head.grain, Duration::seconds(1), day);
    } else if (day.inSeconds() % head.grain.inSeconds() != 0) {
        checks.report(grain, FaultCode::BadNumber, {toText(head.grain), "a part of a day"});
    }
    const auto instant = [&](const char* key, const std::optional<Instant>& value) {
        checks.offset(place.key(key), value.value_or(Instant()) - Instant::serving());
    };
    instant("kitchenOpens", head.kitchenOpens);
    instant("cookingMayStart", head.cookingMayStart);
    instant("tasting", head.tasting);
    instant("everyoneOut", head.everyoneOut);
    if (head.kitchenOpens && head.everyoneOut && *head.everyoneOut <= *head.kitchenOpens) {
        checks.report(place.key("everyoneOut"), FaultCode::Contradiction,
                      {"everyoneOut", "kitchenOpens"});
    }
}

void crew(ValueChecks& checks, const Place& place, const Lesson& lesson) {
    const auto& crew = lesson.head.crew;
    if (crew.empty()) {
        checks.whole(place, 0, 1, static_cast<std::int64_t>(lesson.kitchen.cooks.size()));
    }
    MetIds met;
    for (std::size_t i = 0; i < crew.size(); ++i) {
        if (std::ranges::find(lesson.kitchen.cooks, crew[i], &Cook::id) ==
            lesson.kitchen.cooks.end()) {
            checks.report(place.at(i), FaultCode::UnknownReference, {crew[i].text, "cook"});
        }
        if (!met.insert(crew[i].text).second) {
            checks.report(place.at(i), FaultCode::DuplicateId, {crew[i].text});
        }
    }
}

bool isInKitchen(const Kitchen& kitchen, const std::string& id) {
    const auto has = [&](const auto& items) {
        return std::ranges::any_of(items, [&](const auto& item) { return item.id.text == id; });
    };
    return has(kitchen.burners) || has(kitchen.ovens) || has(kitchen.wares) || has(kitchen.pools) ||
           has(kitchen.cooks);
}

void groups(ValueChecks& checks, const Place& place, const Lesson& lesson) {
    const Groups& groups = lesson.head.groups;
    checks.whole(place.key("count"), groups.count, 1, 50);
    const Place shared = place.key("shared");
    MetIds met;
    for (std::size_t i = 0; i < groups.shared.size(); ++i) {
        if (!isInKitchen(lesson.kitchen, groups.shared[i])) {
            checks.report(shared.at(i), FaultCode::UnknownReference,
                          {groups.shared[i], "thing or cook of the kitchen"});
        }
        if (!met.insert(groups.shared[i]).second) {
            checks.report(shared.at(i), FaultCode::DuplicateId, {groups.shared[i]});
        }
    }
    checks.duration(place.key("stagger"), groups.stagger);
}

}  // namespace

void validateHead(ValueChecks& checks, const Lesson& lesson) {
    const Head& head = lesson.head;
    const Place file;
    const Place place = file.key("lesson");
    checks.text(place.key("name"), head.name);
    if (!isLocalTime(head.servingTime)) {
        checks.report(place.key("servingTime"), FaultCode::BadText,
                      {"not-a-date-and-time", excerpt(head.servingTime)});
    }
    if (!isZoneName(head.zone)) {
        checks.report(place.key("zone"), FaultCode::BadText,
                      {"not-a-time-zone", excerpt(head.zone)});
    }
    times(checks, place, head);
    crew(checks, place.key("crew"), lesson);
    groups(checks, place.key("groups"), lesson);
    checks.texts(place.key("guestAllergens"), head.guestAllergens);
}

}  // namespace rangeline
