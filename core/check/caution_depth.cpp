// More or less food in a load than the dish was written for: heating and reducing go by the depth.

#include <algorithm>
#include <array>
#include <string_view>

#include "check/cautions.h"
#include "model/loads.h"

namespace rangeline {
namespace {

/// What is done to a depth of food and not to pieces in one layer.
constexpr std::array<std::string_view, 7> byDepth = {"boil",   "caramelize", "melt", "reduce",
                                                     "render", "simmer",     "sweat"};

/// A quarter more or a fifth less is worth a word (common practice, no source).
constexpr std::int64_t deeperFrom = 125;
constexpr std::int64_t shallowerFrom = 80;

bool goesByDepth(const Step& step) {
    return std::holds_alternative<BurnerHeat>(step.heat) && step.timePer == TimePer::Load &&
           !step.pieceWidth && std::ranges::find(byDepth, step.technique) != byDepth.end();
}

}  // namespace

void cautionDepth(const UseIndex& index, int, std::vector<Finding>& findings) {
    const Loads loads(index.lesson());
    forEachStep(index.lesson(), [&](const Serving& serving, const Component&, const Step& step) {
        if (!goesByDepth(step) || serving.covers == serving.dish.writtenFor) {
            return;
        }
        const std::int64_t now = serving.covers * loads.of(step, serving.dish.writtenFor);
        const std::int64_t written = serving.dish.writtenFor * loads.of(step, serving.covers);
        const std::int64_t percent = (100 * now + written / 2) / written;
        if (percent >= deeperFrom || percent <= shallowerFrom) {
            findings.push_back(caution(FindingCode::DepthChanged, step, {percent}));
        }
    });
}

}  // namespace rangeline
