#include "model/loads.h"

#include <algorithm>
#include <optional>

#include "model/packing.h"

namespace rangeline {
namespace {

// A finger's width lies between pieces, so that they brown and do not steam; a pot is filled to
// three quarters, so that it does not boil over. Both: common practice, no source.
constexpr Length betweenPieces = Length::millimetres(13);
constexpr std::int64_t filledParts = 3;
constexpr std::int64_t partsOfPot = 4;

std::int64_t timesNeeded(std::int64_t amount, std::int64_t atATime) {
    return std::max<std::int64_t>(1, (amount + atATime - 1) / atATime);
}

bool suits(const Ware& ware, const WareNeed& need) {
    return ware.kind == need.kind && ware.width >= need.leastWidth;
}

/// The most of it that any suitable ware of the kitchen gives; 0 where there is none.
template <class Measured>
std::int64_t mostOf(const Kitchen& kitchen, const WareNeed& need, Measured measured) {
    std::int64_t most = 0;
    for (const Ware& ware : kitchen.wares) {
        if (suits(ware, need)) {
            most = std::max<std::int64_t>(most, measured(ware));
        }
    }
    return most;
}

std::int64_t foodIn(const Ware& ware) {
    return ware.millilitres.value_or(0) * filledParts / partsOfPot;
}

/// For every step the first one of those that go on in the same ware; a step by itself is its own.
class SameWare {
  public:
    void join(const StepId& step, const StepId& before) { first_[firstOf(step)] = firstOf(before); }
    StepId firstOf(StepId step) const {
        for (auto at = first_.find(step); at != first_.end() && at->second != step;
             at = first_.find(step)) {
            step = at->second;
        }
        return step;
    }

  private:
    std::unordered_map<StepId, StepId> first_;
};

template <class Visit>
void forEachStep(const Lesson& lesson, Visit visit) {
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            std::ranges::for_each(component.steps, visit);
        }
    }
}

/// The least width of a suitable ware in which so many pieces lie; what one piece asks for where
/// they lie in none.
Length widthFor(const Kitchen& kitchen, const WareNeed& need, Length piece, std::int64_t pieces) {
    std::optional<Length> least;
    for (const Ware& ware : kitchen.wares) {
        if (suits(ware, need) && piecesIn(ware, piece, betweenPieces) >= pieces) {
            least = std::min(least.value_or(ware.width), ware.width);
        }
    }
    return least.value_or(std::max(need.leastWidth, widthForOne(piece)));
}

}  // namespace

std::int64_t piecesFor(const Step& step, int covers) {
    return (step.piecesPerCover * Rational(covers)).ceil();
}

Loads::Loads(const Lesson& lesson) : lesson_(lesson) {
    std::unordered_map<StepId, std::int64_t> ofFirst;
    SameWare same;
    bool any = false;
    forEachStep(lesson, [&](const Step& step) { any |= step.millilitresPerCover.has_value(); });
    if (!any) {
        return;
    }
    std::unordered_map<StepId, std::string> kindOfFirst;
    forEachStep(lesson, [&](const Step& step) {
        if (!step.wares.empty()) {
            kindOfFirst[step.id] = step.wares.front().kind;
        }
    });
    // The volume is that in the ware which a step names first. What is poured into it comes in
    // another one, which was as full as its own step says.
    forEachStep(lesson, [&](const Step& step) {
        const WareNeed* first = step.wares.empty() ? nullptr : &step.wares.front();
        if (first == nullptr || !first->carriesOn) {
            return;
        }
        const auto before = kindOfFirst.find(*first->carriesOn);
        if (before != kindOfFirst.end() && before->second == first->kind) {
            same.join(step.id, *first->carriesOn);
        }
    });
    forEachStep(lesson, [&](const Step& step) {
        std::int64_t& fullest = ofFirst[same.firstOf(step.id)];
        fullest = std::max(fullest, step.millilitresPerCover.value_or(0));
    });
    forEachStep(lesson, [&](const Step& step) {
        if (const std::int64_t fullest = ofFirst.at(same.firstOf(step.id)); fullest > 0) {
            fullest_.emplace(step.id, fullest);
        }
    });
}

const StatedBatches* Loads::stated(const Step& step) const {
    const auto& all = lesson_.choices.batches;
    const auto found = std::ranges::find(all, step.id, &StatedBatches::step);
    return found == all.end() ? nullptr : &*found;
}

std::int64_t Loads::byPieces(const Step& step, std::int64_t pieces) const {
    std::int64_t loads = step.piecesPerBatch ? timesNeeded(pieces, *step.piecesPerBatch) : 1;
    if (step.pieceWidth && !step.wares.empty()) {
        const WareNeed& need = step.wares.front();
        const std::int64_t layer = mostOf(lesson_.kitchen, need, [&](const Ware& ware) {
            return piecesIn(ware, *step.pieceWidth, betweenPieces);
        });
        loads = std::max(loads, layer > 0 ? timesNeeded(pieces, layer * need.count) : 1);
    }
    return loads;
}

std::int64_t Loads::byVolume(const Step& step, int covers) const {
    const auto fullest = fullest_.find(step.id);
    if (fullest == fullest_.end() || step.wares.empty()) {
        return 1;
    }
    const WareNeed& need = step.wares.front();
    const std::int64_t pot = mostOf(lesson_.kitchen, need, foodIn);
    return pot > 0 ? timesNeeded(fullest->second * covers, pot * need.count) : 1;
}

std::int64_t Loads::of(const Step& step, int covers) const {
    if (const StatedBatches* batches = stated(step)) {
        const std::int64_t pieces = piecesFor(step, covers);
        return pieces > 0 ? std::min<std::int64_t>(batches->batches, pieces) : batches->batches;
    }
    return std::max(byPieces(step, piecesFor(step, covers)), byVolume(step, covers));
}

bool Loads::mayBeSeveral(const Step& step) const {
    return step.piecesPerBatch || step.pieceWidth || fullest_.contains(step.id) ||
           stated(step) != nullptr;
}

WareNeed Loads::needOf(const Step& step, const WareNeed& need, int covers, int pieces,
                       int loads) const {
    WareNeed asked = need;
    // What the step states of the size of its food is about the ware it names first.
    if (&need != &step.wares.front() || stated(step) != nullptr) {
        return asked;
    }
    if (step.pieceWidth && pieces > 0) {
        asked.leastWidth =
            widthFor(lesson_.kitchen, need, *step.pieceWidth, timesNeeded(pieces, need.count));
    }
    if (step.millilitresPerCover) {
        const std::int64_t food =
            timesNeeded(*step.millilitresPerCover * covers, std::int64_t{loads} * need.count);
        asked.leastMillilitres = std::max(need.leastMillilitres.value_or(0),
                                          timesNeeded(food * partsOfPot, filledParts));
    }
    return asked;
}

}  // namespace rangeline
