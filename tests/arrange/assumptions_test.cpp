// The engine under assumptions, on random traces of its interface: clauses and differences are
// added between questions, and every answer and core is compared with trying all values.

#include <gtest/gtest.h>

#include <array>
#include <functional>

#include "arrange/engine/search.h"
#include "base/random.h"
#include "support/random_lesson.h"

namespace rangeline::engine {
namespace {

constexpr int variables = 5;
constexpr Value largest = 3;
using Values = std::array<Value, variables>;

class Trace {
  public:
    explicit Trace(std::uint64_t seed) : random_(seed) {
        for (int v = 0; v < variables; ++v) {
            views_.push_back(engine_.newVariable(0, largest));
            choices_.push_back({views_.back(), random_.chance(0.5), engine_.trueLiteral()});
        }
        search_ = std::make_unique<Search>(engine_, std::vector<Group>(), choices_, seed,
                                           [] { return true; });
    }

    void run() {
        for (int step = 0; step < 12 && !contradictory_; ++step) {
            if (random_.chance(0.5)) {
                addClause();
            } else {
                addDifference();
            }
            ask();
            ask();
        }
    }

  private:
    Literal someLiteral() {
        const View view = views_[static_cast<std::size_t>(random_.between(0, variables - 1))];
        const auto bound = static_cast<Value>(random_.between(1, largest));
        return random_.chance(0.5) ? Literal{view, bound} : engine_.negated({view, bound});
    }

    bool holds(Literal literal, const Values& values) const {
        for (std::size_t v = 0; v < variables; ++v) {
            if (literal.view / 2 == views_[v] / 2) {
                return (literal.view == views_[v] ? values[v] : -values[v]) >= literal.bound;
            }
        }
        return true;
    }

    void addClause() {
        const std::vector<Literal> clause = {someLiteral(), someLiteral(), someLiteral()};
        contradictory_ = !engine_.addClause(clause);
        rules_.push_back([=, this](const Values& values) {
            return std::ranges::any_of(clause, [&](Literal l) { return holds(l, values); });
        });
    }

    void addDifference() {
        const auto from = static_cast<std::size_t>(random_.between(0, variables - 1));
        const auto to = (from + 1) % variables;
        const auto offset = static_cast<Value>(random_.between(-1, 2));
        const Literal condition = someLiteral();
        engine_.addDifference(views_[from], offset, views_[to], condition);
        rules_.push_back([=, this](const Values& values) {
            return !holds(condition, values) || values[to] >= values[from] + offset;
        });
    }

    bool possible(const std::vector<Literal>& assumed) const {
        Values values{};
        const auto all = static_cast<int>(1) << (2 * variables);
        for (int code = 0; code < all; ++code) {
            for (std::size_t v = 0; v < variables; ++v) {
                values[v] = (code >> (2 * v)) & largest;
            }
            const bool fine =
                std::ranges::all_of(rules_, [&](const auto& rule) { return rule(values); }) &&
                std::ranges::all_of(assumed, [&](Literal l) { return holds(l, values); });
            if (fine) {
                return true;
            }
        }
        return false;
    }

    void ask() {
        std::vector<Literal> assumed;
        for (std::int64_t i = random_.between(1, 5); i > 0; --i) {
            assumed.push_back(someLiteral());
        }
        const Goal goal{engine_.trueLiteral().view, std::nullopt, false, assumed};
        const Outcome outcome = search_->solve(goal, std::nullopt);
        ASSERT_EQ(outcome == Outcome::Solution, possible(assumed));
        if (outcome == Outcome::Solution) {
            Values values{};
            for (std::size_t v = 0; v < variables; ++v) {
                values[v] = engine_.low(views_[v]);
            }
            EXPECT_TRUE(
                std::ranges::all_of(rules_, [&](const auto& rule) { return rule(values); }));
            engine_.backtrackTo(0);
            return;
        }
        for (const Literal literal : search_->core()) {
            EXPECT_EQ(std::ranges::count(assumed, literal) > 0, true);
        }
        EXPECT_FALSE(possible(search_->core()));
        contradictory_ = contradictory_ || search_->core().empty();
    }

    Random random_;
    Engine engine_;
    std::vector<View> views_;
    std::vector<Choice> choices_;
    std::unique_ptr<Search> search_;
    std::vector<std::function<bool(const Values&)>> rules_;
    bool contradictory_ = false;
};

TEST(Assumptions, RandomTracesAnswerAsTryingAllValuesDoes) {
    const std::uint64_t seed = test::seedOr(20268);
    for (std::uint64_t i = 0; i < 300; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " trace " << i);
        Trace(seed * 1000 + i).run();
        if (testing::Test::HasFailure()) {
            return;
        }
    }
}

}  // namespace
}  // namespace rangeline::engine
