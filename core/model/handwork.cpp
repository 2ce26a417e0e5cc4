#include "model/handwork.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace rangeline {
namespace {

constexpr std::array<std::string_view, 5> byPiece = {"", "dice", "mince", "peel", "slice"};

}  // namespace

bool isHandworkOfAllCovers(const Step& step) {
    const bool onlyHands =
        step.segments.size() == 1 && step.segments.front().attention == Attention::Hands;
    const bool inLoads = step.piecesPerBatch || step.pieceWidth || step.millilitresPerCover;
    return onlyHands && !inLoads && step.timePer == TimePer::Load &&
           std::holds_alternative<std::monostate>(step.heat) && !step.classWatches &&
           std::ranges::count(byPiece, step.technique) > 0;
}

void timeByPiece(Step& step, int writtenFor) {
    if (step.piecesPerCover == Rational(0)) {
        step.piecesPerCover = Rational(1);
    }
    const Rational pieces = step.piecesPerCover * Rational(writtenFor);
    const auto each = [&](Duration all) {
        return Duration::seconds((Rational(all.inSeconds()) / pieces).ceil());
    };
    step.time = {each(step.time.shortest), each(step.time.likely), each(step.time.longest)};
    step.timePer = TimePer::Piece;
}

}  // namespace rangeline
