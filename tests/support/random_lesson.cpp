#include "support/random_lesson.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <string>

namespace rangeline::test {
namespace {

int whole(Random& random, int low, int high) {
    return static_cast<int>(random.between(low, high));
}

Duration minutes(Random& random, int low, int high) {
    return Duration::minutes(random.between(low, high));
}

std::string numbered(const char* word, int number) {
    return word + std::to_string(number);
}

Ware ware(const char* kind, int count, Length width, int washMinutes) {
    Ware w;
    w.id.text = w.kind = kind;
    w.name = kind;
    w.count = count;
    w.width = width;
    w.cleaning = {Duration::minutes(washMinutes), PoolId{"sink"}};
    return w;
}

std::vector<Ware> wares(Random& random) {
    std::vector<Ware> all{ware("saute-pan", whole(random, 1, 2), Length::inches(10), 2),
                          ware("saucepan", whole(random, 1, 2), Length::inches(8), 2),
                          ware("sheet", whole(random, 1, 2), Length::inches(18), 2),
                          ware("board", whole(random, 1, 2), Length::inches(15), 1),
                          ware("bowl", whole(random, 2, 4), Length::inches(9), 0)};
    all[1].millilitres = 2800;
    all[2].depth = Length::inches(13);
    all.back().cleaning.sink.reset();
    return all;
}

Oven oven(int number) {
    Oven o;
    o.id.text = numbered("oven-", number);
    o.name = numbered("Oven ", number);
    o.slots = 2;
    o.lowest = Temperature::fahrenheit(150);
    o.highest = Temperature::fahrenheit(550);
    o.modes = {OvenMode::Bake, OvenMode::Convection};
    o.warmUp = {{Temperature::fahrenheit(350), Duration::minutes(12)},
                {Temperature::fahrenheit(450), Duration::minutes(18)}};
    o.modeChange = Duration::minutes(1);
    return o;
}

Kitchen kitchen(Random& random, const RandomLessonSize& size) {
    Kitchen k;
    k.name = "Test kitchen";
    k.rangeWidth = Length::inches(30);
    for (int i = 1; i <= size.burners; ++i) {
        Burner& b = k.burners.emplace_back();
        b.id.text = numbered("burner-", i);
        b.name = numbered("Burner ", i);
        b.widestVessel = Length::inches(12);
        b.power = Power{whole(random, 5, 15) * 1000, Power::Unit::BtuPerHour};
    }
    for (int i = 1; i <= size.ovens; ++i) {
        k.ovens.push_back(oven(i));
    }
    k.wares = wares(random);
    k.pools = {{PoolId{"sink"}, "Sink", "sink", 1},
               {PoolId{"shelf"}, "Fridge shelf", "fridge-shelf", whole(random, 1, 3)},
               {PoolId{"counter"}, "Counter", "counter", whole(random, 2, 4)}};
    for (int i = 1; i <= size.cooks; ++i) {
        k.cooks.push_back({CookId{numbered("cook-", i)},
                           numbered("Cook ", i),
                           i == 1 ? 100 : 25 * whole(random, 4, 6),
                           {}});
    }
    return k;
}

/// Fills one dish, step by step. Steps refer only to earlier ones, so there are no cycles.
class DishMaker {
  public:
    DishMaker(Random& random, const RandomLessonSize& size, int number)
        : random_(random), size_(size), number_(number) {}

    Dish make() {
        dish_.id.text = numbered("dish-", number_);
        dish_.name = numbered("Dish ", number_);
        dish_.writtenFor = size_.covers;
        dish_.platesHold = minutes(random_, 5, 15);
        for (int i = 1; i <= size_.components; ++i) {
            addComponent(numbered("part-", i));
        }
        addPlating();
        return std::move(dish_);
    }

  private:
    void addComponent(const std::string& name) {
        Component& c = dish_.components.emplace_back();
        c.id.text = dish_.id.text + "-" + name;
        c.name = name;
        const Rational amount{random_.between(1, 12), random_.between(1, 4)};
        c.ingredients.push_back({name + " stuff", Amount{amount, amount, "cup"}, {}, {}, {}, {}});
        const int count = whole(random_, 1, size_.stepsPerComponent);
        for (int i = 1; i <= count; ++i) {
            addStep(c, i);
        }
        ends_.push_back(c.steps.back().id);
    }

    void addStep(Component& c, int number) {
        Step s;
        s.id.text = c.id.text + "-" + std::to_string(number);
        s.name = s.id.text;
        giveTime(s, minutes(random_, 2, 12));
        if (number > 1) {
            s.uses.push_back({c.steps.back().id, false});
        }
        const Step* before = number > 1 ? &c.steps.back() : nullptr;
        giveHeat(s);
        giveWares(s, before);
        giveBatches(s);
        giveKeeping(s);
        if (random_.chance(size_.links) && !earlier_.empty()) {
            addLink(s.id);
        }
        earlier_.push_back(s.id);
        c.steps.push_back(std::move(s));
    }

    void giveTime(Step& s, Duration likely) {
        s.time = {likely, likely, likely};
        if (random_.chance(size_.uncertain)) {
            s.time.shortest = Duration::seconds(likely.inSeconds() * 3 / 4);
            s.time.longest = likely + minutes(random_, 1, 5);
        }
        const Duration part = Duration::seconds(likely.inSeconds() / 4);
        switch (random_.between(0, 3)) {
            case 0:
                s.segments = {{Attention::Hands, part}};
                break;
            case 1:
                s.segments = {{Attention::Hands, part}, {Attention::Away, {}}};
                break;
            case 2:
                s.segments = {{Attention::Hands, part}, {Attention::Watch, {}}};
                break;
            default:
                s.segments = {
                    {Attention::Hands, part}, {Attention::Away, {}}, {Attention::Hands, part}};
        }
    }

    void giveHeat(Step& s) {
        if (size_.burners > 0 && random_.chance(size_.burnerSteps)) {
            s.heat = BurnerHeat{"medium", {}, 1, false};
        } else if (size_.ovens > 0 && random_.chance(size_.ovenSteps)) {
            const auto low = Temperature::fahrenheit(25 * random_.between(13, 17));
            const auto mode = random_.chance(0.8) ? OvenMode::Bake : OvenMode::Convection;
            const auto high = low + TemperatureDelta::fahrenheit(25 * random_.between(0, 1));
            s.heat = OvenHeat{low, high, mode, random_.chance(0.2), {}};
        }
    }

    static bool standsIn(const Step& s, const std::string& kind) {
        return std::ranges::any_of(s.wares, [&](const WareNeed& w) { return w.kind == kind; });
    }

    void giveWares(Step& s, const Step* before) {
        WareNeed need;
        if (std::holds_alternative<OvenHeat>(s.heat)) {
            need.kind = "sheet";
            need.leastWidth = Length::inches(16);
        } else if (std::holds_alternative<BurnerHeat>(s.heat)) {
            need.kind = random_.chance(0.5) ? "saute-pan" : "saucepan";
        } else {
            constexpr std::array kinds{"board", "bowl", ""};
            need.kind = kinds[static_cast<std::size_t>(random_.between(0, 2))];
        }
        if (need.kind.empty()) {
            return;
        }
        const bool likewise = before != nullptr && standsIn(*before, need.kind) &&
                              !before->piecesPerBatch.has_value();
        if (likewise && random_.chance(size_.carriesOn)) {
            need.carriesOn = before->id;
            if (auto* burner = std::get_if<BurnerHeat>(&s.heat)) {
                burner->staysOnHeat =
                    std::holds_alternative<BurnerHeat>(before->heat) && random_.chance(0.5);
            }
        }
        need.turnedOut = need.kind == "board" || random_.chance(0.2);
        s.wares.push_back(need);
    }

    void giveBatches(Step& s) {
        if (s.wares.empty() || s.wares.front().carriesOn || !random_.chance(size_.batches)) {
            return;
        }
        s.piecesPerCover = Rational(random_.between(1, 2));
        s.piecesPerBatch = whole(random_, (size_.covers + 1) / 2, 2 * size_.covers);
        s.batchesNeedWash = random_.chance(0.2);
        if (random_.chance(0.3)) {
            s.pieceWidth = Length::inches(2);
        }
        if (s.wares.front().kind == "saucepan" && random_.chance(0.5)) {
            s.millilitresPerCover = random_.between(100, 600);
        }
    }

    void giveKeeping(Step& s) {
        if (!random_.chance(size_.keeps)) {
            return;
        }
        s.after.atRoom = minutes(random_, 10, 60);
        s.after.cold = minutes(random_, 60, 600);
        if (random_.chance(0.3)) {
            s.after.storage = Storage::Cold;
            s.after.place = PoolNeed{PoolId{"shelf"}, 1};
        } else if (random_.chance(0.2)) {
            s.after.place = PoolNeed{PoolId{"counter"}, 1};
        }
    }

    void addLink(const StepId& to) {
        const auto last = static_cast<std::int64_t>(earlier_.size()) - 1;
        Link link;
        link.from = {earlier_[static_cast<std::size_t>(random_.between(0, last))],
                     random_.chance(0.7) ? StepEnd::End : StepEnd::Start};
        link.to = {to, random_.chance(0.7) ? StepEnd::Start : StepEnd::End};
        link.least = minutes(random_, 0, 8);
        if (random_.chance(0.4)) {
            link.most = link.least + minutes(random_, 0, 40);
        }
        dish_.links.push_back(link);
    }

    void addPlating() {
        Component& c = dish_.components.emplace_back();
        c.id.text = dish_.id.text + "-plate";
        c.name = "plate";
        Step s;
        s.id.text = c.id.text + "-up";
        s.name = s.id.text;
        s.time = {Duration::minutes(3), Duration::minutes(3), Duration::minutes(3)};
        s.segments = {{Attention::Hands, {}}};
        s.plates = true;
        for (const StepId& end : ends_) {
            s.uses.push_back({end, false});
        }
        c.steps.push_back(std::move(s));
    }

    Random& random_;
    const RandomLessonSize& size_;
    int number_;
    Dish dish_;
    std::vector<StepId> earlier_;  ///< of this dish, in order
    std::vector<StepId> ends_;     ///< last step of each component
};

void chooseFor(Random& random, const Step& s, Choices& choices) {
    const std::int64_t way = random.between(0, 2);
    if (way == 0 && s.after.mayBeDoneAhead) {
        choices.doneAhead.push_back({s.id,
                                     Duration::hours(random.between(2, 6)),
                                     Storage::Cold,
                                     PoolNeed{PoolId{"shelf"}, 1},
                                     {}});
    } else if (way == 1 && s.after.mayBeSwappedIn) {
        choices.swapIns.push_back({s.id, {{WareId{"bowl"}, 0}}});
    } else if (way == 2 && s.piecesPerBatch) {
        choices.batches.push_back({s.id, static_cast<int>(random.between(1, 3))});
    }
}

void choose(Random& random, const RandomLessonSize& size, Lesson& lesson) {
    for (Serving& serving : lesson.servings) {
        for (Component& c : serving.dish.components) {
            Step& first = c.steps.front();
            if (!first.plates && random.chance(size.choices)) {
                first.after.mayBeDoneAhead = first.after.mayBeSwappedIn = true;
                chooseFor(random, first, lesson.choices);
            }
        }
    }
}

Head head(Random& random, const RandomLessonSize& size, const Kitchen& kitchen) {
    Head h;
    h.name = "Random lesson";
    h.servingTime = "2027-10-09T18:30";
    h.zone = "America/Chicago";
    h.everyoneOut = Instant::atMinutes(180);
    for (const Cook& c : kitchen.cooks) {
        h.crew.push_back(c.id);
    }
    h.groups.count = size.groups;
    if (size.groups > 1) {
        h.groups.stagger = minutes(random, 0, 10);
        for (const Oven& o : kitchen.ovens) {
            h.groups.shared.push_back(o.id.text);
        }
        h.groups.shared.push_back("sink");
    }
    return h;
}

}  // namespace

Lesson randomLesson(Random& random, const RandomLessonSize& size) {
    Lesson lesson;
    lesson.kitchen = kitchen(random, size);
    lesson.head = head(random, size, lesson.kitchen);
    for (int i = 1; i <= size.dishes; ++i) {
        lesson.servings.push_back({DishMaker(random, size, i).make(), size.covers,
                                   Duration::minutes(i == 1 ? 0 : random.between(0, 3) * 10)});
    }
    choose(random, size, lesson);
    return lesson;
}

std::uint64_t seedOr(std::uint64_t usual) {
    const char* given = std::getenv("RANGELINE_SEED");
    return given == nullptr ? usual : std::strtoull(given, nullptr, 10);
}

}  // namespace rangeline::test
