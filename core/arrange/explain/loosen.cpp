// The edits that make a change.

#include "arrange/explain/loosen.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <functional>

#include "model/done_ahead.h"
#include "model/turn_out.h"

namespace rangeline::explain {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

/// An id that none of the things has: the stem and a number.
template <class Thing>
std::string freeId(const std::vector<Thing>& things, const std::string& stem) {
    for (int number = 2;; ++number) {
        std::string id = stem + '-' + std::to_string(number);
        if (std::ranges::none_of(things, [&](const Thing& thing) { return thing.id.text == id; })) {
            return id;
        }
    }
}

/// Adds a copy of one of the things under an id and name of its own.
template <class Thing>
void addCopy(std::vector<Thing>& things, const Thing& original) {
    Thing copy = original;
    copy.id.text = freeId(things, original.id.text);
    copy.name += ' ' + std::to_string(things.size() + 1);
    things.push_back(std::move(copy));
}

int numberIn(const std::string& text, std::size_t from, std::size_t length) {
    int number = 0;
    if (from + length <= text.size()) {
        std::from_chars(text.data() + from, text.data() + from + length, number);
    }
    return number;
}

/// A local date and time, "2027-10-09T18:30" with or without seconds, that much later on the clock.
std::string laterBy(const std::string& local, Duration by) {
    using namespace std::chrono;
    const year_month_day day{year(numberIn(local, 0, 4)),
                             month(static_cast<unsigned>(numberIn(local, 5, 2))),
                             std::chrono::day(static_cast<unsigned>(numberIn(local, 8, 2)))};
    const auto then = local_days(day) + hours(numberIn(local, 11, 2)) +
                      minutes(numberIn(local, 14, 2)) + seconds(numberIn(local, 17, 2)) +
                      seconds(by.inSeconds());
    const auto midnight = floor<days>(then);
    const year_month_day date{midnight};
    const hh_mm_ss time{then - midnight};
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02uT%02d:%02d:%02d",
                  static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                  static_cast<unsigned>(date.day()), static_cast<int>(time.hours().count()),
                  static_cast<int>(time.minutes().count()),
                  static_cast<int>(time.seconds().count()));
    const std::string whole(text.data());
    return whole.ends_with(":00") ? whole.substr(0, whole.size() - 3) : whole;
}

class Loosener {
  public:
    Loosener(const Lesson& lesson, const Expanded& expanded, const Candidate& candidate)
        : lesson_(lesson), expanded_(expanded), candidate_(candidate) {}

    std::vector<Edit> edits(Duration by, const std::string& helperName) const {
        switch (candidate_.kind) {
            case RemedyKind::ServeLater:
                return serveLater(by);
            case RemedyKind::OpenEarlier:
                return head([&](Head& head) { head.kitchenOpens = *head.kitchenOpens - by; });
            case RemedyKind::CookEarlier:
                return head([&](Head& head) { head.cookingMayStart = *head.cookingMayStart - by; });
            case RemedyKind::LeaveLater:
                return head([&](Head& head) { head.everyoneOut = *head.everyoneOut + by; });
            case RemedyKind::WaitLess:
                return link([&](Link& link) { link.least = link.least - by; });
            case RemedyKind::WaitLonger:
                return link([&](Link& link) { link.most = *link.most + by; });
            case RemedyKind::KeepLonger:
                return keepLonger(by);
            case RemedyKind::PlatesWaitLonger:
                return platesWaitLonger(by);
            case RemedyKind::Unpin:
                return unpin();
            case RemedyKind::DoAhead:
                return doAhead();
            case RemedyKind::TurnOut:
                return turnOut();
            case RemedyKind::AnotherCook:
                return anotherCook(helperName);
            case RemedyKind::AnotherWare:
            case RemedyKind::MoreRoom:
            case RemedyKind::AnotherBurner:
            case RemedyKind::AnotherOven:
                break;
        }
        return moreEquipment();
    }

  private:
    std::vector<Edit> head(const std::function<void(Head&)>& change) const {
        Head changed = lesson_.head;
        change(changed);
        return {SetHead{std::move(changed)}};
    }

    /// Instants count from serving, so all that is bound to the clock comes earlier by as much.
    std::vector<Edit> serveLater(Duration by) const;

    const Wait& wait() const { return expanded_.waits[at(candidate_.index)]; }

    std::vector<Edit> link(const std::function<void(Link&)>& change) const {
        std::vector<Serving> servings = lesson_.servings;
        change(servings[at(wait().serving)].dish.links[at(wait().source)]);
        return {SetServings{std::move(servings)}};
    }

    static Step* findStep(std::vector<Serving>& servings, const StepId& id) {
        for (Serving& serving : servings) {
            for (Component& component : serving.dish.components) {
                const auto found = std::ranges::find(component.steps, id, &Step::id);
                if (found != component.steps.end()) {
                    return &*found;
                }
            }
        }
        return nullptr;
    }

    std::vector<Edit> keepLonger(Duration by) const {
        std::vector<Serving> servings = lesson_.servings;
        const StepId id = wait().from.tasks.empty()
                              ? lesson_.choices.doneAhead[at(wait().source)].step
                              : expanded_.tasks[at(wait().from.tasks.front())].key.step;
        Keeping& after = findStep(servings, id)->after;
        const bool cold = wait().storage == Storage::Cold;
        const bool room = wait().storage == Storage::Room;
        auto& limit = cold ? after.cold : room ? after.atRoom : after.hot;
        limit = *limit + by;
        return {SetServings{std::move(servings)}};
    }

    std::vector<Edit> platesWaitLonger(Duration by) const {
        std::vector<Serving> servings = lesson_.servings;
        const int task = expanded_.windows[at(candidate_.index)].task;
        Dish& dish = servings[at(expanded_.tasks[at(task)].serving)].dish;
        dish.platesHold = dish.platesHold + by;
        return {SetServings{std::move(servings)}};
    }

    std::vector<Edit> unpin() const {
        const PlacementKey key{expanded_.tasks[at(candidate_.index)].key};
        Placement placement = lesson_.placements.at(key);
        placement.pinned = false;
        return {SetPlacements{{{key, placement}}}};
    }

    std::vector<Edit> doAhead() const {
        auto choices =
            doneAheadWith(lesson_, expanded_, expanded_.tasks[at(candidate_.index)].key.step);
        return choices ? std::vector<Edit>{SetChoices{std::move(*choices)}} : std::vector<Edit>();
    }

    std::vector<Edit> turnOut() const {
        auto servings = turnedOut(lesson_, lesson_.kitchen.wares[at(candidate_.index)].kind);
        return servings ? std::vector<Edit>{SetServings{std::move(*servings)}}
                        : std::vector<Edit>();
    }

    std::vector<Edit> anotherCook(const std::string& name) const {
        Kitchen kitchen = lesson_.kitchen;
        Cook cook;
        cook.id.text = freeId(kitchen.cooks, "helper");
        cook.name = name;
        kitchen.cooks.push_back(cook);
        Head crewed = lesson_.head;
        crewed.crew.push_back(cook.id);
        return {SetKitchen{std::move(kitchen)}, SetHead{std::move(crewed)}};
    }

    std::vector<Edit> moreEquipment() const {
        Kitchen kitchen = lesson_.kitchen;
        if (candidate_.kind == RemedyKind::AnotherWare) {
            ++kitchen.wares[at(candidate_.index)].count;
        } else if (candidate_.kind == RemedyKind::MoreRoom) {
            ++kitchen.pools[at(candidate_.index)].capacity;
        } else if (candidate_.kind == RemedyKind::AnotherOven) {
            addCopy(kitchen.ovens, Oven(kitchen.ovens.front()));
        } else {
            const auto watts = [](const Burner& burner) {
                return burner.power ? burner.power->watts() : 0.0;
            };
            addCopy(kitchen.burners, Burner(*std::ranges::max_element(kitchen.burners, {}, watts)));
        }
        return {SetKitchen{std::move(kitchen)}};
    }

    const Lesson& lesson_;
    const Expanded& expanded_;
    const Candidate& candidate_;
};

std::vector<Edit> Loosener::serveLater(Duration by) const {
    Head later = lesson_.head;
    later.servingTime = laterBy(later.servingTime, by);
    for (auto* instant :
         {&later.kitchenOpens, &later.cookingMayStart, &later.tasting, &later.everyoneOut}) {
        if (*instant) {
            *instant = **instant - by;
        }
    }
    SetPlacements moved;
    for (const auto& [key, placement] : lesson_.placements) {
        Placement earlier = placement;
        earlier.start = earlier.start - by;
        moved.changes.push_back({key, std::move(earlier)});
    }
    Choices choices = lesson_.choices;
    for (DoneAhead& ahead : choices.doneAhead) {
        ahead.before = ahead.before + by;
    }
    return {SetHead{std::move(later)}, std::move(moved), SetChoices{std::move(choices)}};
}

}  // namespace

std::vector<Edit> editsOf(const Lesson& lesson, const Expanded& expanded,
                          const Candidate& candidate, Duration by, const std::string& helperName) {
    return Loosener(lesson, expanded, candidate).edits(by, helperName);
}

}  // namespace rangeline::explain
