#include "print/supper.h"

#include <algorithm>
#include <array>

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

constexpr std::array preparing = {
    "Dice the roots small", "Cut", "Peel and slice the parsnips",
    "Mix the batter and let it stand until it is wanted at the range"};
constexpr std::array cooking = {
    "Fry",
    "Sear the fennel",
    "Roast the beets and squash",
    "Wilt the greens in brown butter",
    "Simmer the stock",
    "Roast the beets until a thin knife slips into the middle of the largest one easily"};
constexpr std::array finishing = {"Dress the salad", "Season", "Strain and whisk the sauce"};

/// Things of one sort, by the minute from which each is free.
using Free = std::vector<std::int64_t>;

std::size_t firstFree(const Free& free) {
    return static_cast<std::size_t>(std::ranges::min_element(free) - free.begin());
}

class SupperMaker {
  public:
    explicit SupperMaker(int parts) : parts_(parts) {
        for (const char* burner : {"front left", "front right", "back left", "back right"}) {
            made_.burner(burner);
        }
        made_.oven("oven");
        made_.ware("sauté pan", "saute-pan", 3);
        made_.ware("half sheet", "sheet", 2);
        made_.ware("cutting board", "board", 2);
        made_.ware("bowl", "bowl", 3);
        for (Ware& ware : made_.lesson.kitchen.wares) {
            ware.cleaning.takes = 2_min;
        }
        made_.lesson.kitchen.wares.back().cleaning.takes = {};
        made_.cook("robin");
        made_.lesson.head.name = "Autumn table, an evening with friends";
        made_.lesson.servings.front().dish.name = "Autumn table";
    }

    Lesson run() {
        for (int turn = 0; turn < parts_ + 2; ++turn) {
            if (turn < parts_) {
                prepare(turn);
            }
            if (turn >= 1 && turn <= parts_) {
                cook(turn - 1);
            }
            if (turn >= 2) {
                finish(turn - 2);
            }
        }
        plate();
        endAtServing();
        return std::move(made_.lesson);
    }

  private:
    static std::string id(const char* sort, int part) { return sort + std::to_string(part); }

    static const char* cookName(std::size_t cook) { return cook == 0 ? "ann" : "robin"; }

    Step& addStep(const std::string& step, const std::string& name, const std::string& ware,
                  const std::vector<Segment>& segments) {
        Step& made = made_.step(step, segments);
        made.name = name;
        if (!ware.empty()) {
            WareNeed need = fresh(ware);
            need.turnedOut = true;
            made.wares.push_back(need);
        }
        return made;
    }

    /// The placement, in the ware that is free first, by the cook who is free first.
    Placement& placeStep(const std::string& step, const char* ware, Free& wares,
                         std::int64_t earliest, std::int64_t hands, std::int64_t length) {
        const std::size_t number = firstFree(wares);
        const std::size_t cook = firstFree(cooks_);
        const std::int64_t start = std::max({earliest, wares[number], cooks_[cook]});
        cooks_[cook] = start + hands;
        wares[number] = start + length;
        ended_[step] = start + length;
        Placement& placement = made_.place(step, start);
        placement.wares = {{WareId{ware}, static_cast<int>(number)}};
        placement.hands = {{CookId{cookName(cook)}, 0}};
        return placement;
    }

    void wash(const std::string& step, Free& wares) {
        const auto ware =
            static_cast<std::size_t>(made_.lesson.placements.at(key(step)).wares.front().number);
        const std::size_t cook = firstFree(cooks_);
        const std::int64_t start = std::max(ended_.at(step), cooks_[cook]);
        made_.placeWash(step, start, cookName(cook));
        cooks_[cook] = wares[ware] = start + 2;
    }

    void prepare(int part) {
        const std::string step = id("prepare", part);
        addStep(step, preparing[static_cast<std::size_t>(part) % preparing.size()], "board",
                {hands(8_min)})
            .cue = "until all pieces are alike";
        placeStep(step, "cutting board", boards_, 0, 8, 8);
        wash(step, boards_);
    }

    void cook(int part) {
        const bool roast = part % 3 == 2;
        const std::string step = id("cook", part);
        const std::string name = cooking[static_cast<std::size_t>(part) % cooking.size()];
        const std::int64_t ready = ended_.at(id("prepare", part));
        if (roast) {
            Step& made = addStep(step, name, "sheet", {hands(1_min), away(20_min)});
            made.heat = inOven(400_F, 425_F);
            made.cue = "until the edges are deep gold";
            Placement& placement =
                placeStep(step, "half sheet", sheets_, std::max<std::int64_t>(ready, 15), 1, 21);
            placement.oven = spot("oven", 400_F, placement.wares.front().number);
            wash(step, sheets_);
        } else {
            addStep(step, name, "saute-pan", {hands(2_min), watch(7_min)}).heat = onBurner();
            const std::size_t burner = firstFree(burners_);
            Placement& placement =
                placeStep(step, "sauté pan", pans_, std::max(ready, burners_[burner]), 2, 9);
            burners_[burner] = ended_.at(step);
            placement.burners = {made_.lesson.kitchen.burners[burner].id};
            placement.watchers = {placement.hands.front().cook};
            wash(step, pans_);
        }
        made_.uses(step, id("prepare", part));
    }

    void finish(int part) {
        const std::string step = id("finish", part);
        addStep(step, finishing[static_cast<std::size_t>(part) % finishing.size()], "bowl",
                {hands(3_min)});
        placeStep(step, "bowl", bowls_, ended_.at(id("cook", part)), 3, 3);
        made_.uses(step, id("cook", part));
    }

    void plate() {
        Step& made = made_.step("plate", {hands(4_min)});
        made.name = "Plate";
        made.plates = true;
        std::int64_t ready = 0;
        for (const auto& [step, end] : ended_) {
            ready = std::max(ready, end);
        }
        end_ = ready + 4;
        made_.place("plate", ready).hands = {{CookId{"ann"}, 0}};
        made_.placeTurnOn("oven", Instant::atMinutes(0), 400_F, "robin");
        for (int part = 0; part < parts_; ++part) {
            made_.uses("plate", id("finish", part));
        }
    }

    void endAtServing() {
        for (auto& [key, placement] : made_.lesson.placements) {
            placement.start = placement.start - Duration::minutes(end_);
        }
    }

    int parts_;
    LessonBuilder made_;
    std::map<std::string, std::int64_t> ended_;
    std::int64_t end_ = 0;
    Free cooks_ = Free(2), burners_ = Free(4), pans_ = Free(3), sheets_ = Free(2),
         boards_ = Free(2), bowls_ = Free(3);
};

}  // namespace

Lesson supper(int parts) {
    return SupperMaker(parts).run();
}

}  // namespace rangeline::test
