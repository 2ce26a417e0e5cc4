#include "document/lesson_state.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace rangeline {
namespace {

std::vector<PlacementKey> keysOf(const SetPlacements& edit) {
    std::vector<PlacementKey> keys;
    keys.reserve(edit.changes.size());
    for (const PlacementChange& change : edit.changes) {
        keys.push_back(change.key);
    }
    return keys;
}

bool mentions(const Finding& finding, const std::vector<PlacementKey>& keys) {
    return std::ranges::find_first_of(finding.keys, keys) != finding.keys.end();
}

}  // namespace

LessonState::LessonState(Lesson lesson)
    : lesson_(std::move(lesson)), derived_(std::make_unique<Derived>(lesson_)) {}

void LessonState::forget() const {
    all_.reset();
    analysis_.reset();
}

const std::vector<Finding>& LessonState::findings() const {
    if (!all_) {
        all_ = std::make_unique<std::vector<Finding>>(derived_->findings.all());
    }
    return *all_;
}

const PlatingAnalysis& LessonState::analysis() const {
    if (!analysis_) {
        analysis_ = std::make_unique<PlatingAnalysis>(analysePlating(derived_->index));
    }
    return *analysis_;
}

LessonChange LessonState::exchange(Edit& edit) {
    forget();
    edit = rangeline::apply(lesson_, std::move(edit));
    const auto* placements = std::get_if<SetPlacements>(&edit);
    if (placements == nullptr) {
        derived_ = std::make_unique<Derived>(lesson_);
        return {false, true, {}};
    }
    const std::vector<PlacementKey> keys = keysOf(*placements);
    derived_->findings.update(derived_->index.update(keys));
    return {false, false, keys};
}

LessonChange LessonState::exchange(std::vector<Edit>& edits) {
    LessonChange change;
    if (std::ranges::all_of(edits, keepsExpansion)) {
        for (Edit& edit : edits) {
            const LessonChange part = exchange(edit);
            change.placements.insert(change.placements.end(), part.placements.begin(),
                                     part.placements.end());
        }
        return change;
    }
    forget();
    for (Edit& edit : edits) {
        edit = rangeline::apply(lesson_, std::move(edit));
    }
    derived_ = std::make_unique<Derived>(lesson_);
    change.structure = true;
    return change;
}

std::vector<Finding> LessonState::findingsAbout(const TouchedSubjects& touched) const {
    std::vector<Finding> found;
    for (const Check& check : checks()) {
        for (const int subject : touched.of(check.subject)) {
            check.run(derived_->index, subject, found);
        }
    }
    std::ranges::sort(found);
    return found;
}

LessonState::Trial LessonState::trialOf(const SetPlacements& edit, const LookAtTrial& look) {
    const std::vector<PlacementKey> keys = keysOf(edit);
    Edit back = rangeline::apply(lesson_, edit);
    const TouchedSubjects touched = derived_->index.update(keys);
    Trial trial;
    trial.after = findingsAbout(touched);
    if (look) {
        look(derived_->index);
    }
    rangeline::apply(lesson_, std::move(back));
    derived_->index.update(keys);
    trial.before = findingsAbout(touched);
    return trial;
}

std::vector<Finding> LessonState::tryOut(const SetPlacements& edit, const LookAtTrial& look) {
    Trial trial = trialOf(edit, look);
    const std::vector<PlacementKey> keys = keysOf(edit);
    std::erase_if(trial.after, [&](const Finding& finding) {
        return !mentions(finding, keys) && std::ranges::binary_search(trial.before, finding);
    });
    std::ranges::stable_sort(trial.after, {}, [](const Finding& finding) {
        return std::pair(finding.severity, finding.interval.begin);
    });
    return std::move(trial.after);
}

int LessonState::collisionsAdded(const SetPlacements& edit) {
    const Trial trial = trialOf(edit, {});
    const auto collisions = [](const std::vector<Finding>& findings) {
        return static_cast<int>(std::ranges::count_if(findings, [](const Finding& finding) {
            return finding.severity == Severity::Collision || finding.severity == Severity::Open;
        }));
    };
    return collisions(trial.after) - collisions(trial.before);
}

}  // namespace rangeline
