// Which changes are worth trying.

#include <algorithm>

#include "arrange/explain/loosen.h"

namespace rangeline::explain {
namespace {

constexpr Duration longest = Duration::hours(4);

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

class Candidates {
  public:
    Candidates(const Lesson& lesson, const Expanded& expanded)
        : lesson_(lesson), expanded_(expanded) {}

    void loosen(const Requirement& requirement) {
        clock(requirement);
        waits(requirement);
        equipment(requirement);
    }

    void doneAhead() {
        for (std::size_t task = 0; task < expanded_.tasks.size(); ++task) {
            const Task& here = expanded_.tasks[task];
            if (here.key.batch == 0 && here.key.group == 0 &&
                stepOf(lesson_, here).after.mayBeDoneAhead) {
                add(RemedyKind::DoAhead, static_cast<int>(task));
            }
        }
    }

    std::vector<Candidate> take() { return std::move(found_); }

  private:
    void add(RemedyKind kind, int index = 0, std::optional<Duration> most = {}) {
        const Candidate candidate{kind, index, most};
        if (std::ranges::count(found_, candidate) == 0) {
            found_.push_back(candidate);
        }
    }

    void clock(const Requirement& requirement) {
        switch (requirement.kind) {
            case RequirementKind::Serving:
                add(RemedyKind::ServeLater, 0, longest);
                break;
            case RequirementKind::KitchenOpens:
                add(RemedyKind::OpenEarlier, 0, longest);
                break;
            case RequirementKind::CookingMayStart:
                add(RemedyKind::CookEarlier, 0, longest);
                break;
            case RequirementKind::EveryoneOut:
                add(RemedyKind::LeaveLater, 0, longest);
                break;
            case RequirementKind::PlateKeeps:
                add(RemedyKind::PlatesWaitLonger, requirement.index, longest);
                break;
            default:
                break;
        }
    }

    void waits(const Requirement& requirement) {
        if (requirement.kind == RequirementKind::Pinned) {
            const Task& task = expanded_.tasks[at(requirement.index)];
            if (!lesson_.placements.at(task.key).started) {
                add(RemedyKind::Unpin, requirement.index);
            }
            return;
        }
        if (requirement.kind != RequirementKind::Follows &&
            requirement.kind != RequirementKind::KeepsFor) {
            return;
        }
        const Wait& wait = expanded_.waits[at(requirement.index)];
        if (requirement.kind == RequirementKind::KeepsFor) {
            add(wait.origin == WaitOrigin::Keeping ? RemedyKind::KeepLonger
                                                   : RemedyKind::WaitLonger,
                requirement.index, longest);
        } else if (wait.origin == WaitOrigin::Link && *wait.least > Duration()) {
            add(RemedyKind::WaitLess, requirement.index, *wait.least);
        }
    }

    void equipment(const Requirement& requirement) {
        switch (requirement.kind) {
            case RequirementKind::Burners:
                add(RemedyKind::AnotherBurner);
                break;
            case RequirementKind::Wares:
                add(RemedyKind::TurnOut, requirement.index);
                add(RemedyKind::AnotherWare, requirement.index);
                break;
            case RequirementKind::PoolCapacity:
                add(RemedyKind::MoreRoom, requirement.index);
                break;
            case RequirementKind::OvenSlots:
            case RequirementKind::OvenSettings:
            case RequirementKind::DoorShut:
                add(RemedyKind::AnotherOven);
                break;
            case RequirementKind::Hands:
            case RequirementKind::Watching:
                add(RemedyKind::AnotherCook);
                break;
            default:
                break;
        }
    }

    const Lesson& lesson_;
    const Expanded& expanded_;
    std::vector<Candidate> found_;
};

}  // namespace

std::vector<Candidate> candidatesFor(const Lesson& lesson, const Expanded& expanded,
                                     const std::vector<Requirement>& requirements) {
    Candidates candidates(lesson, expanded);
    for (const Requirement& requirement : requirements) {
        candidates.loosen(requirement);
    }
    candidates.doneAhead();
    return candidates.take();
}

}  // namespace rangeline::explain
