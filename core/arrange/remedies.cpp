#include "arrange/remedies.h"

#include <algorithm>
#include <chrono>

#include "arrange/arrange.h"
#include "arrange/explain/earliest_start.h"
#include "arrange/explain/loosen.h"
#include "arrange/explain/minimal_conflict.h"
#include "arrange/rules/formulation.h"
#include "model/validate.h"

namespace rangeline {
namespace {

using explain::Candidate;
using explain::Verdict;

constexpr Duration usualAmount = Duration::minutes(10);
constexpr std::int64_t conflictsForStart = 1000;
constexpr double secondsForStart = 0.5;

class Trials {
  public:
    Trials(const Lesson& lesson, const Explanation& explanation, const RemedyOptions& options,
           std::stop_token stop)
        : lesson_(lesson),
          expanded_(expand(lesson)),
          candidates_(explain::candidatesFor(lesson, expanded_, explanation.requirements)),
          options_(options),
          stop_(std::move(stop)) {}

    std::vector<Remedy> makePossible() {
        for (const Candidate& candidate : candidates_) {
            const auto remedy = candidate.most ? leastAmount(candidate) : asItIs(candidate, {});
            if (remedy && keepGoing()) {
                found_.push_back(*remedy);
            }
        }
        std::ranges::stable_sort(found_, [](const Remedy& a, const Remedy& b) {
            if (a.by.has_value() != b.by.has_value()) {
                return a.by.has_value();
            }
            return a.by ? *a.by < *b.by : a.start > b.start;
        });
        return std::move(found_);
    }

    std::vector<Remedy> startLater() {
        const Instant now = earliestStart(lesson_.placements, expand(lesson_));
        for (const Candidate& candidate : candidates_) {
            if (ofTheClock(candidate.kind)) {
                continue;
            }
            std::optional<Duration> by;
            if (candidate.most) {
                by = std::min(*candidate.most, onGrain(usualAmount));
            }
            auto remedy = asItIs(candidate, by);
            if (remedy && remedy->start > now && keepGoing()) {
                remedy->least = false;
                found_.push_back(*remedy);
            }
        }
        std::ranges::stable_sort(found_, std::greater(), &Remedy::start);
        return std::move(found_);
    }

  private:
    static bool ofTheClock(RemedyKind kind) {
        return kind == RemedyKind::ServeLater || kind == RemedyKind::OpenEarlier ||
               kind == RemedyKind::CookEarlier || kind == RemedyKind::LeaveLater;
    }

    double spent() const {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun_).count();
    }
    bool keepGoing() const {
        return !stop_.stop_requested() &&
               !(options_.explain.secondsLimit && spent() > *options_.explain.secondsLimit);
    }

    /// Nothing if the change cannot be made.
    std::optional<Lesson> changed(const Candidate& candidate, Duration by) const {
        const auto edits = edit(candidate, by);
        if (edits.empty()) {
            return std::nullopt;
        }
        Lesson lesson = lesson_;
        for (const Edit& one : edits) {
            apply(lesson, one);
        }
        return validate(lesson).empty() ? std::optional(std::move(lesson)) : std::nullopt;
    }

    std::vector<Edit> edit(const Candidate& candidate, Duration by) const {
        return explain::editsOf(lesson_, expanded_, candidate, by, options_.helperName);
    }

    /// Whether the changed lesson has a plan at all.
    Verdict possibleWith(const Candidate& candidate, Duration by) const {
        const auto lesson = changed(candidate, by);
        if (!lesson) {
            return Verdict::NotPossible;
        }
        const Expanded expanded = expand(*lesson);
        rules::Formulation f(*lesson, expanded);
        if (!f.possible || !f.engine.propagate()) {
            return Verdict::NotPossible;
        }
        engine::Search search(f.engine, f.groups, f.choices, options_.explain.seed,
                              [this] { return keepGoing(); });
        const engine::Goal goal{f.yes().view, std::nullopt, false, {}};
        switch (search.solve(goal, options_.explain.conflictsPerQuestion)) {
            case engine::Outcome::Solution:
                return Verdict::Possible;
            case engine::Outcome::Contradiction:
                return Verdict::NotPossible;
            case engine::Outcome::Interrupted:
                break;
        }
        return Verdict::Unknown;
    }

    Duration onGrain(Duration length) const {
        const std::int64_t grain = lesson_.head.grain.inSeconds();
        return Duration::seconds((length.inSeconds() + grain - 1) / grain * grain);
    }

    /// By halving: the least amount on the grain that is enough.
    std::optional<Remedy> leastAmount(const Candidate& candidate) const {
        const std::int64_t grain = lesson_.head.grain.inSeconds();
        std::int64_t enough = candidate.most->inSeconds() / grain;
        const auto verdictOf = [&](std::int64_t grains) {
            return possibleWith(candidate, Duration::seconds(grains * grain));
        };
        if (enough == 0 || verdictOf(enough) != Verdict::Possible) {
            return std::nullopt;
        }
        bool proved = true;
        std::int64_t tooLittle = 0;
        while (enough - tooLittle > 1 && keepGoing()) {
            // Most changes that help at all are small, so the lower half is tried unevenly.
            const std::int64_t middle =
                tooLittle + std::max<std::int64_t>((enough - tooLittle) / 3, 1);
            const Verdict verdict = verdictOf(middle);
            if (verdict == Verdict::Possible) {
                enough = middle;
            } else {
                tooLittle = middle;
                proved = proved && verdict == Verdict::NotPossible;
            }
        }
        auto remedy = asItIs(candidate, Duration::seconds(enough * grain));
        if (remedy) {
            remedy->least = proved && enough - tooLittle == 1;
        }
        return remedy;
    }

    /// The change, if there is a plan with it.
    std::optional<Remedy> asItIs(const Candidate& candidate, std::optional<Duration> by) const {
        const auto lesson = changed(candidate, by.value_or(Duration()));
        if (!lesson || !keepGoing()) {
            return std::nullopt;
        }
        ArrangeOptions limits;
        limits.seed = options_.explain.seed;
        limits.aim = Aim::StartLate;
        limits.conflictLimit = conflictsForStart;
        limits.secondsLimit = secondsForStart;
        const ArrangeResult result = arrange(*lesson, limits, {}, stop_);
        if (result.placements.empty()) {
            return std::nullopt;
        }
        return Remedy{candidate.kind,
                      candidate.index,
                      by,
                      true,
                      earliestStart(result.placements, expand(*lesson)),
                      edit(candidate, by.value_or(Duration()))};
    }

    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
    const Lesson& lesson_;
    Expanded expanded_;
    std::vector<Candidate> candidates_;
    const RemedyOptions& options_;
    std::stop_token stop_;
    std::vector<Remedy> found_;
};

}  // namespace

std::vector<Remedy> whatMakesItPossible(const Lesson& lesson, const Explanation& explanation,
                                        const RemedyOptions& options, std::stop_token stop) {
    return Trials(lesson, explanation, options, std::move(stop)).makePossible();
}

std::vector<Remedy> whatStartsLater(const Lesson& placed, const Explanation& explanation,
                                    const RemedyOptions& options, std::stop_token stop) {
    return Trials(placed, explanation, options, std::move(stop)).startLater();
}

}  // namespace rangeline
