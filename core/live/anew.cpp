#include "live/anew.h"

#include <algorithm>
#include <chrono>

#include "arrange/arrange.h"
#include "check/check.h"

namespace rangeline::live {
namespace {

/// A plan for the rest, and what the checker says of it.
struct Candidate {
    Lesson lesson;
    std::vector<Finding> broken;
    Duration wrong;  ///< how late all plates are together, and for how long rules are broken
};

/// What gains less than this is not worth another order.
constexpr Duration worthAChange = Duration::minutes(1);

bool isBetter(const Candidate& a, const Candidate& b) {
    return a.wrong + worthAChange <= b.wrong;
}

/// For how long from now on a rule is broken, a minute at least: hands that are wanted twice for a
/// few seconds are no reason to plate later.
Duration extentOf(const Finding& finding, Instant now) {
    switch (finding.code) {
        case FindingCode::KeptTooLong:
        case FindingCode::TooLateAfter:
        case FindingCode::StoredTooLong:
        case FindingCode::PlatedTooEarly:
            return std::get<Duration>(finding.figures[0]) - std::get<Duration>(finding.figures[1]);
        default:
            return std::max(finding.interval.end - std::max(finding.interval.begin, now),
                            Duration::minutes(1));
    }
}

Candidate judged(Lesson lesson, const Underway& underway) {
    Candidate candidate{std::move(lesson), {}, {}};
    for (Finding& finding : checkLesson(candidate.lesson, expand(candidate.lesson))) {
        if (finding.code == FindingCode::PlatingLate) {
            candidate.wrong = candidate.wrong + std::get<Duration>(finding.figures.front());
        }
        if (concernsTheRest(finding, candidate.lesson, underway)) {
            candidate.wrong = candidate.wrong + extentOf(finding, underway.now);
            candidate.broken.push_back(std::move(finding));
        }
    }
    return candidate;
}

/// The order kept, each step begun as soon as it can be, on the grain or not.
Lesson asItGoes(const Service& service, const Course& course, Instant now) {
    Lesson lesson = service.standing(now);
    for (std::size_t i = 0; i < course.keys.size(); ++i) {
        const auto placed = lesson.placements.find(course.keys[i]);
        if (course.goings[i].waits && placed != lesson.placements.end()) {
            placed->second.start = course.goings[i].begin;
        }
    }
    return lesson;
}

class Rearranger {
  public:
    Rearranger(const Service& service, Instant now, const AnewLimits& limits, std::stop_token stop)
        : standing_(service.standing(now)),
          underway_(underwayOf(service, now)),
          limits_(limits),
          stop_(std::move(stop)),
          best_(judged(asItGoes(service, courseOf(service, now), now), underway_)) {}

    /// Nothing if the order is best kept.
    std::optional<Lesson> run() {
        const bool better = attempt();
        const bool pinned = std::ranges::any_of(standing_.placements, [](const auto& entry) {
            return entry.second.pinned && !entry.second.started;
        });
        // What is pinned gives way where it stands in the way of everything else.
        if (pinned && !better) {
            underway_.pinsHold = false;
            attempt();
        }
        return found_ ? std::optional(best_.lesson) : std::nullopt;
    }

    const Candidate& best() const { return best_; }

  private:
    bool attempt() {
        ArrangeOptions options;
        options.underway = underway_;
        options.conflictLimit = limits_.conflicts;
        options.secondsLimit = limits_.seconds - secondsSpent();
        if (*options.secondsLimit <= 0 || stop_.stop_requested()) {
            return false;
        }
        ArrangeResult result = arrange(standing_, options, {}, stop_);
        if (result.placements.empty()) {
            return false;
        }
        Lesson lesson = standing_;
        lesson.placements = std::move(result.placements);
        Candidate candidate = judged(std::move(lesson), underway_);
        const bool better = isBetter(candidate, best_);
        if (better) {
            best_ = std::move(candidate);
            found_ = true;
        }
        return better;
    }

    double secondsSpent() const {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun_).count();
    }

    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
    Lesson standing_;
    Underway underway_;
    AnewLimits limits_;
    std::stop_token stop_;
    Candidate best_;
    bool found_ = false;
};

/// Placements that are no part of the plan any more are taken away.
SetPlacements changeTo(const Service& service, const Placements& placements) {
    SetPlacements change = placementDifference(service.lesson().placements, placements);
    std::erase_if(change.changes, [&](const PlacementChange& one) {
        const auto known = service.works().find(one.key);
        return known != service.works().end() && known->second.stage != Stage::Waiting;
    });
    return change;
}

}  // namespace

AnewLimits limitsFor(const Service& service) {
    constexpr double perPlacement = 0.001;
    const auto count = static_cast<double>(service.works().size());
    return {std::clamp(count * perPlacement, 0.03, 0.2), {}};
}

bool concernsTheRest(const Finding& finding, const Lesson& lesson, const Underway& underway) {
    // What has not begun begins in the grain of now at the earliest.
    const auto waits = [&](const PlacementKey& key) {
        const auto found = lesson.placements.find(key);
        return found != lesson.placements.end() && !found->second.started &&
               found->second.start > underway.now - lesson.head.grain;
    };
    return finding.severity == Severity::Collision && finding.code != FindingCode::OffGrain &&
           std::ranges::any_of(finding.keys, waits);
}

Underway underwayOf(const Service& service, Instant now) {
    Underway underway{now, {}, {}, true};
    for (const auto& [key, work] : service.works()) {
        if (work.stage == Stage::Skipped && !work.started) {
            underway.leftOut.insert(key);
        } else if (work.notBefore) {
            underway.notBefore.emplace(key, *work.notBefore);
        }
    }
    for (const Task& task : service.index().expanded().tasks) {
        if (!service.works().contains(task.key)) {
            underway.leftOut.insert(task.key);  // never was a part of the service
        }
    }
    return underway;
}

Anew rearrange(const Service& service, Instant now, const AnewLimits& limits,
               std::stop_token stop) {
    Rearranger rearranger(service, now, limits, std::move(stop));
    const auto lesson = rearranger.run();
    Anew anew;
    anew.broken = rearranger.best().broken;
    const Course before = courseOf(service, now);
    anew.outlook = outlook(service, before);
    if (lesson) {
        anew.change = changeTo(service, lesson->placements);
        Service after = service.copy();
        after.apply(PlanReplaced{anew.change}, now);
        const Course course = courseOf(after, now);
        anew.outlook = outlook(after, course);
        anew.moves = moves(after, before.dues(), course.dues());
    }
    return anew;
}

}  // namespace rangeline::live
