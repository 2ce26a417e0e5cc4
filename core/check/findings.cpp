#include <algorithm>
#include <tuple>

#include "analysis/at.h"
#include "check/check.h"

namespace rangeline {
namespace {

auto rank(const Finding& finding) {
    return std::tie(finding.severity, finding.interval.begin, finding.code, finding.interval.end,
                    finding.keys, finding.equipment);
}

bool comesBefore(const Finding& a, const Finding& b) {
    return rank(a) != rank(b) ? rank(a) < rank(b) : a < b;
}

}  // namespace

Findings::Findings(const UseIndex& index) : index_(&index), found_(checks().size()) {
    for (std::size_t check = 0; check < found_.size(); ++check) {
        const int subjects = index.count(checks()[check].subject);
        found_[check].resize(static_cast<std::size_t>(subjects));
        for (int subject = 0; subject < subjects; ++subject) {
            run(check, subject);
        }
    }
}

void Findings::run(std::size_t check, int subject) {
    auto& found = at(found_[check], subject);
    found.clear();
    checks()[check].run(*index_, subject, found);
}

void Findings::update(const TouchedSubjects& touched) {
    for (std::size_t check = 0; check < found_.size(); ++check) {
        for (const int subject : touched.of(checks()[check].subject)) {
            run(check, subject);
        }
    }
}

std::vector<Finding> Findings::all() const {
    std::vector<Finding> findings;
    for (const auto& ofCheck : found_) {
        for (const auto& ofSubject : ofCheck) {
            findings.insert(findings.end(), ofSubject.begin(), ofSubject.end());
        }
    }
    std::ranges::sort(findings, comesBefore);
    return findings;
}

int Findings::count(Severity severity) const {
    int count = 0;
    for (const auto& ofCheck : found_) {
        for (const auto& ofSubject : ofCheck) {
            count += static_cast<int>(std::ranges::count(ofSubject, severity, &Finding::severity));
        }
    }
    return count;
}

std::vector<Finding> checkLesson(const Lesson& lesson, const Expanded& expanded) {
    const UseIndex index(lesson, expanded);
    return Findings(index).all();
}

}  // namespace rangeline
