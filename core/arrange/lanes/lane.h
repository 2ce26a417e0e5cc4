#pragma once
// One search for a plan, in one thread: least lateness, then least movement
// where that is asked for, then the aim, then the other aims to break ties.
// Alone it is deterministic under a limit of conflicts. With others it takes
// over what they find and prove.

#include <chrono>
#include <optional>
#include <stop_token>

#include "arrange/arrange.h"
#include "arrange/engine/search.h"
#include "arrange/lanes/board.h"
#include "arrange/lanes/report.h"
#include "arrange/rules/formulation.h"
#include "base/random.h"
#include "model/expand.h"

namespace rangeline::lanes {

enum class LaneKind : std::uint8_t {
    Lowers,  ///< works down from the best plan and around it, breaks ties and
             ///< reports
    Raises,  ///< works up from the bound; ends with the aim
};

class Lane {
  public:
    /// What is referred to must outlive the lane.
    Lane(const Lesson& lesson, const ArrangeOptions& options, LaneKind kind, Board& board,
         const ArrangeCallback& progress, std::stop_token stop);

    ArrangeResult run();

  private:
    using View = engine::View;
    using Outcome = engine::Outcome;

    bool findPlan();
    void suggest(const rules::Previous& plan);
    void dispatch(const rules::Previous& previous);
    bool stayClose(const rules::Previous& previous);
    bool approach();
    bool minimise(View objective, std::optional<std::int64_t> budget);
    bool searchOn(const engine::Goal& goal, std::optional<std::int64_t> budget);
    bool solve(const engine::Goal& goal, std::optional<std::int64_t> budget);
    void searchAround(std::int64_t conflicts);
    std::vector<engine::Literal> allButAStretch();
    bool needsNothingHeld() const;
    bool settle(bool proved);
    void keep();
    void readPlan();
    void tellPlan();
    std::optional<Value> valueInBest(View objective);
    ArrangeResult finish();

    bool inTime() const;
    bool keepGoing();
    bool mayGoOn() { return keepGoing() && conflictsLeft(1) != 0; }
    std::optional<std::int64_t> conflictsLeft(std::optional<std::int64_t> budget) const;
    void report();

    // what other lanes know
    void listen();
    bool takeNews();
    void adopt(const BoardPlan& plan, Value value);

    const ArrangeOptions& options_;
    LaneKind kind_;
    Board& board_;
    std::stop_token stop_;
    Report report_;
    Aim aim_;
    Expanded expanded_;
    rules::Formulation f_;
    engine::Search search_;
    Random random_;
    ArrangeResult result_;
    bool found_ = false;
    Outcome outcome_ = Outcome::Interrupted;
    View objective_ = 0;
    Value best_ = 0;           ///< of the objective
    Value earliestStart_ = 0;  ///< of the best plan
    std::optional<View> aimView_;
    double share_ = 1;  ///< of the limits, within which the stage at hand must end

    int stage_ = 0;
    bool shares_ = false;  ///< the stage at hand is one that all lanes go through
    bool news_ = false;    ///< another lane has a better plan, or has closed the stage
    std::uint64_t heard_ = 0;
};

}  // namespace rangeline::lanes
