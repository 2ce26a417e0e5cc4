#include "support/natural_lesson.h"

#include <algorithm>
#include <string>

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

class NaturalLesson {
  public:
    explicit NaturalLesson(Random& random) : random_(random) {
        for (const char* id : {"front-left", "front-right", "back-left", "back-right"}) {
            builder_.burner(id);
        }
        Oven& oven = builder_.oven("oven");
        oven.slots = 3;
        builder_.ware("saute", "saute-pan", 3).cleaning.takes = 2_min;
        builder_.ware("sauce", "saucepan", 3).cleaning.takes = 2_min;
        builder_.ware("sheet", "sheet", 4).cleaning.takes = 1_min;
        builder_.ware("board", "board", 3).cleaning.takes = 1_min;
        builder_.ware("bowl", "bowl", 400);
        builder_.cook("ben", 150);
        builder_.lesson.head.crew = {CookId{"ann"}, CookId{"ben"}};
    }

    int steps() const { return steps_; }

    void addComponent() {
        prefix_ = "part" + std::to_string(++components_) + ".";
        switch (random_.between(0, 3)) {
            case 0:
                seared();
                break;
            case 1:
                roasted();
                break;
            case 2:
                simmered();
                break;
            default:
                dressed();
        }
        Step& plate = add("plate", {hands(some(1, 2))});
        plate.plates = true;
    }

    /// Two cooks take about two minutes a step: what is plated first must keep as long.
    Lesson take() {
        builder_.lesson.servings.front().dish.platesHold = std::max(4_h, 2_min * steps_);
        return std::move(builder_.lesson);
    }

  private:
    Duration some(std::int64_t low, std::int64_t high) {
        return Duration::minutes(random_.between(low, high));
    }

    /// Follows the step before, of the same component.
    Step& add(const char* name, const std::vector<Segment>& segments) {
        const std::string id = prefix_ + name;
        const std::string before = last_.starts_with(prefix_) ? last_ : std::string();
        builder_.step(id, segments);
        if (!before.empty()) {
            builder_.uses(id, before);
        }
        last_ = id;
        ++steps_;
        return builder_.get(id);
    }

    void prepare() {
        Step& step = add("prepare", {hands(some(3, 8))});
        step.wares = {fresh("board")};
        step.wares.front().turnedOut = true;
    }

    void seared() {
        prepare();
        Step& sear = add("sear", {hands(some(1, 3)), watch(some(3, 6))});
        sear.heat = onBurner();
        sear.wares = {fresh("saute-pan")};
        const std::string pan = last_;
        Step& finish = add("finish", {hands(some(2, 4))});
        finish.heat = onBurner();
        finish.wares = {carryOn("saute-pan", pan)};
        finish.wares.front().turnedOut = true;
        finish.after.atRoom = 40_min;
    }

    void roasted() {
        prepare();
        const Temperature low = random_.chance(0.5) ? 375_F : 400_F;
        Step& roast = add("roast", {hands(1_min), away(some(20, 45)), hands(1_min)});
        roast.heat = inOven(low, low + TemperatureDelta::fahrenheit(25));
        roast.wares = {fresh("sheet")};
        const std::string sheet = last_;
        Step& rest = add("rest", {away(some(5, 15))});
        rest.wares = {carryOn("sheet", sheet)};
        add("carve", {hands(some(2, 5))}).after.atRoom = 60_min;
    }

    void simmered() {
        prepare();
        Step& simmer = add("simmer", {hands(some(1, 3)), away(some(10, 30))});
        simmer.heat = onBurner();
        simmer.wares = {fresh("saucepan")};
        const std::string pan = last_;
        Step& season = add("season", {hands(some(1, 3))});
        season.heat = onBurner();
        season.wares = {carryOn("saucepan", pan)};
    }

    void dressed() {
        prepare();
        Step& mix = add("mix", {hands(some(2, 5))});
        mix.wares = {fresh("bowl")};
        add("chill", {away(some(20, 60))});
        add("dress", {hands(some(1, 2))}).after.atRoom = 20_min;
    }

    Random& random_;
    LessonBuilder builder_;
    std::string prefix_;
    std::string last_;
    int components_ = 0;
    int steps_ = 0;
};

}  // namespace

Lesson naturalLesson(Random& random, int steps) {
    NaturalLesson lesson(random);
    while (lesson.steps() < steps) {
        lesson.addComponent();
    }
    return lesson.take();
}

}  // namespace rangeline::test
