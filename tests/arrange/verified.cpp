#include "arrange/verified.h"

#include <algorithm>
#include <sstream>

#include "model/expand.h"
#include "model/validate.h"

namespace rangeline::test {
namespace {

std::string nameOf(const PlacementKey& key) {
    std::ostringstream out;
    if (const auto* step = std::get_if<StepKey>(&key)) {
        out << step->step.text << '#' << step->batch << '@' << step->group;
    } else if (const auto* wash = std::get_if<WashKey>(&key)) {
        out << "wash after " << wash->after.step.text << '#' << wash->after.batch << '/'
            << wash->spot;
    } else {
        out << "turn on " << std::get<TurnOnKey>(key).oven.text;
    }
    return out.str();
}

}  // namespace

std::string describe(const Lesson& lesson, const std::vector<Finding>& findings) {
    std::ostringstream out;
    for (const Finding& finding : findings) {
        if (finding.severity == Severity::Caution) {
            continue;
        }
        out << "code " << static_cast<int>(finding.code) << ':';
        for (const PlacementKey& key : finding.keys) {
            const auto found = lesson.placements.find(key);
            out << ' ' << nameOf(key) << " at "
                << (found == lesson.placements.end() ? 0 : found->second.start.inSeconds());
        }
        out << '\n';
    }
    return out.str();
}

Instant earliestStart(const Placements& placements) {
    Instant earliest = Instant::atSeconds(1'000'000'000);
    for (const auto& [key, placement] : placements) {
        earliest = std::min(earliest, placement.start);
    }
    return earliest;
}

ArrangeResult arrangeVerified(const Lesson& lesson, const ArrangeOptions& options) {
    EXPECT_TRUE(validate(lesson).empty()) << validate(lesson).front().place;
    ArrangeResult result = arrange(lesson, options);
    if (result.placements.empty()) {
        return result;
    }
    Lesson planned = lesson;
    planned.placements = result.placements;
    std::vector<Finding> findings = checkLesson(planned, expand(planned));
    std::erase_if(findings, [&](const Finding& finding) {
        return finding.severity == Severity::Caution ||
               (finding.severity == Severity::Late && lesson.head.lateAllowed);
    });
    EXPECT_TRUE(findings.empty()) << describe(planned, findings);
    EXPECT_EQ(result.last.best, earliestStart(result.placements));
    EXPECT_LE(*result.last.best, result.last.bound);
    return result;
}

}  // namespace rangeline::test
