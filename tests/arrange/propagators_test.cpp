// Each propagator against a slow decomposition: all solutions of small random problems are counted
// through the engine, one excluded after the other, and by trying every assignment.

#include <gtest/gtest.h>

#include <functional>

#include "arrange/engine/cumulative.h"
#include "arrange/engine/energy.h"
#include "arrange/engine/linear.h"
#include "arrange/engine/search.h"
#include "arrange/engine/squares.h"
#include "base/random.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

using engine::Engine;
using engine::Literal;
using engine::opposite;
using engine::Value;
using engine::View;

/// Tasks of a fixed length each, on [0, horizon], that may be there or not.
struct SmallProblem {
    struct Task {
        Value length = 0, demand = 0;
        bool optional = false;
    };
    std::vector<Task> tasks;
    Value horizon = 0;
    Value capacity = 0;
};

SmallProblem smallProblem(Random& random) {
    SmallProblem problem;
    problem.horizon = static_cast<Value>(random.between(3, 6));
    problem.capacity = static_cast<Value>(random.between(1, 3));
    for (auto left = random.between(2, 4); left > 0; --left) {
        problem.tasks.push_back({static_cast<Value>(random.between(1, 3)),
                                 static_cast<Value>(random.between(1, 2)), random.chance(0.3)});
    }
    return problem;
}

struct Assignment {
    std::vector<Value> starts;
    std::vector<bool> present;
};

bool fits(const SmallProblem& problem, const Assignment& plan) {
    for (Value at = 0; at < problem.horizon; ++at) {
        Value load = 0;
        for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
            const bool runs = plan.present[i] && plan.starts[i] <= at &&
                              at < plan.starts[i] + problem.tasks[i].length;
            load += runs ? problem.tasks[i].demand : 0;
        }
        if (load > problem.capacity) {
            return false;
        }
    }
    return true;
}

/// Calls `visit` for every assignment.
void everyAssignment(const SmallProblem& problem, Assignment& plan,
                     const std::function<void()>& visit) {
    const std::size_t i = plan.starts.size();
    if (i == problem.tasks.size()) {
        visit();
        return;
    }
    for (Value start = 0; start + problem.tasks[i].length <= problem.horizon; ++start) {
        for (const bool present : {true, false}) {
            if (present || problem.tasks[i].optional) {
                plan.starts.push_back(start);
                plan.present.push_back(present);
                everyAssignment(problem, plan, visit);
                plan.starts.pop_back();
                plan.present.pop_back();
            }
        }
    }
}

struct Model {
    explicit Model(const SmallProblem& problem) {
        for (const auto& task : problem.tasks) {
            starts.push_back(engine.newVariable(0, problem.horizon - task.length));
            present.push_back(task.optional ? engine.newBoolean() : engine.trueLiteral());
            choices.push_back({starts.back(), false, engine.trueLiteral()});
            choices.push_back({present.back().view, true, engine.trueLiteral()});
        }
    }

    /// Excludes the assignment the engine stands at; goes back to level 0.
    bool exclude() {
        std::vector<Literal> different;
        for (std::size_t i = 0; i < starts.size(); ++i) {
            const Value value = engine.low(starts[i]);
            different.push_back({starts[i], value + 1});
            different.push_back({opposite(starts[i]), 1 - value});
            if (present[i] != engine.trueLiteral()) {
                different.push_back(engine.isTrue(present[i]) ? engine.negated(present[i])
                                                              : present[i]);
            }
        }
        engine.backtrackTo(0);
        return engine.addClause(different);
    }

    Engine engine;
    std::vector<View> starts;
    std::vector<Literal> present;
    std::vector<engine::Choice> choices;
};

/// Every assignment the engine allows; `seen` may look at each.
int countSolutions(Model& model, const std::function<void(const Engine&)>& seen) {
    engine::Search search(model.engine, {}, model.choices, 1, [] { return true; });
    int count = 0;
    const View anything = model.engine.trueLiteral().view;
    while (search.solve({anything, std::nullopt, false}, std::nullopt) ==
           engine::Outcome::Solution) {
        ++count;
        seen(model.engine);
        if (!model.exclude()) {
            break;
        }
    }
    return count;
}

void inManyProblems(const std::function<void(const SmallProblem&)>& check) {
    const std::uint64_t seed = seedOr(20264);
    for (int i = 0; i < 150; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " problem " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        check(smallProblem(random));
        if (testing::Test::HasFailure()) {
            return;
        }
    }
}

void addLoad(Model& model, const SmallProblem& problem) {
    std::vector<engine::CumulativeTask> tasks;
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
        tasks.push_back({{model.starts[i], 0},
                         {model.starts[i], problem.tasks[i].length},
                         problem.tasks[i].demand,
                         model.present[i]});
    }
    engine::addCumulative(model.engine, std::move(tasks), problem.capacity);
}

int countByTrying(const SmallProblem& problem) {
    int count = 0;
    Assignment plan;
    everyAssignment(problem, plan, [&] { count += fits(problem, plan) ? 1 : 0; });
    return count;
}

TEST(Propagators, CumulativeAllowsExactlyThePlansThatFit) {
    inManyProblems([](const SmallProblem& problem) {
        Model model(problem);
        addLoad(model, problem);
        ASSERT_EQ(countSolutions(model, [](const Engine&) {}), countByTrying(problem));
    });
}

TEST(Propagators, EnergyBesideCumulativeForbidsNoPlan) {
    inManyProblems([](const SmallProblem& problem) {
        Model model(problem);
        addLoad(model, problem);
        std::vector<engine::EnergyTask> energy;
        for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
            const auto& task = problem.tasks[i];
            energy.push_back({{model.starts[i], 0},
                              {model.starts[i], task.length},
                              std::int64_t{task.length} * task.demand,
                              model.present[i]});
        }
        engine::addEnergy(model.engine, std::move(energy), problem.capacity);
        ASSERT_EQ(countSolutions(model, [](const Engine&) {}), countByTrying(problem));
    });
}

TEST(Propagators, EnergyAloneSeesMoreWorkThanTime) {
    Engine engine;
    std::vector<engine::EnergyTask> tasks;
    for (int i = 0; i < 3; ++i) {
        const View start = engine.newVariable(0, 6);  // 3 pieces of 4 end by 10
        tasks.push_back({{start, 0}, {start, 4}, 4, engine.trueLiteral()});
    }
    engine::addEnergy(engine, std::move(tasks), 1);
    EXPECT_FALSE(engine.propagate());
}

std::int64_t squaresOf(const SmallProblem& problem, const std::vector<Value>& starts,
                       const std::vector<bool>& present) {
    std::int64_t total = 0;
    for (Value at = 0; at < problem.horizon; ++at) {
        std::int64_t load = 0;
        for (std::size_t i = 0; i < starts.size(); ++i) {
            load += present[i] && starts[i] <= at && at < starts[i] + problem.tasks[i].length;
        }
        total += load * load;
    }
    return total;
}

TEST(Propagators, SquaresTotalIsThatOfEachPlan) {
    inManyProblems([](const SmallProblem& problem) {
        Model model(problem);
        std::vector<engine::SquaresTask> tasks;
        for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
            tasks.push_back({{model.starts[i], 0},
                             {model.starts[i], problem.tasks[i].length},
                             model.present[i]});
        }
        const View total = model.engine.newVariable(0, 1000);
        engine::addSquaresAtMost(model.engine, std::move(tasks), 1, total);
        countSolutions(model, [&](const Engine& at) {
            std::vector<Value> starts;
            std::vector<bool> present;
            for (std::size_t i = 0; i < model.starts.size(); ++i) {
                starts.push_back(at.low(model.starts[i]));
                present.push_back(at.isTrue(model.present[i]));
            }
            EXPECT_EQ(at.low(total), squaresOf(problem, starts, present));
        });
    });
}

TEST(Propagators, LinearKeepsSumsWithinTheTotal) {
    inManyProblems([](const SmallProblem& problem) {
        const Value most = problem.horizon * 2;
        Model model(problem);
        const View total = model.engine.newVariable(-100, most);
        std::vector<engine::Term> terms;
        for (std::size_t i = 0; i < model.starts.size(); ++i) {
            // Alternately the start and minus the start, to see both signs.
            const View view = i % 2 == 0 ? model.starts[i] : opposite(model.starts[i]);
            terms.push_back({view, problem.tasks[i].demand});
        }
        engine::addLinearAtMost(model.engine, std::move(terms), 1, total);
        int expected = 0;
        Assignment plan;
        everyAssignment(problem, plan, [&] {
            Value sum = 1;
            for (std::size_t i = 0; i < plan.starts.size(); ++i) {
                sum += (i % 2 == 0 ? 1 : -1) * problem.tasks[i].demand * plan.starts[i];
            }
            expected += sum <= most ? 1 : 0;
        });
        ASSERT_EQ(countSolutions(model, [](const Engine&) {}), expected);
    });
}

}  // namespace
}  // namespace rangeline::test
