#include "bench/instance_model.h"

#include <algorithm>
#include <map>

#include "arrange/engine/cumulative.h"
#include "arrange/engine/energy.h"
#include "arrange/engine/linear.h"

namespace rangeline::bench {
namespace {

using engine::CumulativeTask;
using engine::Literal;
using engine::opposite;
using engine::TimePoint;
using engine::Value;
using engine::View;

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

class Builder {
  public:
    Builder(InstanceModel& model, const Instance& instance) : m_(model), in_(instance) {}

    void build() {
        addTasks();
        addResources();
        addPans();
        addOvens();
        addAims();
    }

  private:
    Literal yes() const { return m_.engine.trueLiteral(); }
    Literal no(Literal l) const { return m_.engine.negated(l); }
    TimePoint start(int task) const { return {m_.starts[at(task)], 0}; }
    TimePoint end(int task) const { return {m_.starts[at(task)], in_.tasks[at(task)].minutes}; }
    void clause(std::vector<Literal> literals) {
        m_.possible = m_.possible && m_.engine.addClause(std::move(literals));
    }
    void order(TimePoint earlier, TimePoint later, Value gap, Literal condition) {
        m_.engine.addDifference(earlier.view, earlier.offset + gap - later.offset, later.view,
                                condition);
    }
    Literal boolean() {
        const Literal literal = m_.engine.newBoolean();
        m_.choices.push_back({literal.view, false, yes()});
        return literal;
    }

    void addTasks() {
        m_.span = m_.engine.newVariable(0, in_.horizon);
        m_.choices.push_back({m_.span, false, yes()});
        for (const InstanceTask& task : in_.tasks) {
            const View view = m_.engine.newVariable(0, in_.horizon - task.minutes);
            m_.starts.push_back(view);
            // The earliest first: the negated start at its highest.
            m_.groups.push_back({{opposite(view), 0}, {opposite(view), true, yes()}, {}});
            order({view, task.minutes}, {m_.span, 0}, 0, yes());
        }
        for (const StartLag& lag : in_.lags) {
            order(start(lag.a), start(lag.b), lag.least, yes());
        }
    }

    void addResources() {
        for (std::size_t r = 0; r < in_.capacities.size(); ++r) {
            std::vector<CumulativeTask> tasks;
            std::vector<engine::EnergyTask> energy;
            for (std::size_t t = 0; t < in_.tasks.size(); ++t) {
                const int task = static_cast<int>(t);
                const int demand = in_.tasks[t].demands[r];
                tasks.push_back({start(task), end(task), demand, yes()});
                energy.push_back(
                    {start(task), end(task), std::int64_t{demand} * in_.tasks[t].minutes, yes()});
            }
            addCumulative(m_.engine, std::move(tasks), in_.capacities[r]);
            engine::addEnergy(m_.engine, std::move(energy), in_.capacities[r]);
        }
    }

    /// Each chain takes a pan of one size, its own or a larger one: pans of one size need not be
    /// told apart. That no more chains need a size than pans are that large follows, and helps.
    void addPans() {
        std::vector<int> sizes = in_.pans;
        std::ranges::sort(sizes);
        const auto repeated = std::ranges::unique(sizes);
        sizes.erase(repeated.begin(), repeated.end());
        std::vector<std::vector<CumulativeTask>> taken(sizes.size());
        for (const PanChain& chain : in_.chains) {
            std::vector<Literal> ways;
            TimePoint free = end(chain.tasks.back());
            free.offset += chain.wash;
            CumulativeTask held{start(chain.tasks.front()), free, 1, yes()};
            for (std::size_t i = 0; i < sizes.size(); ++i) {
                if (chain.size <= sizes[i]) {
                    held.presence = sizes[i] == sizes.back() && ways.empty() ? yes() : boolean();
                    ways.push_back(held.presence);
                    taken[i].push_back(held);
                }
            }
            for (std::size_t i = 0; i < ways.size(); ++i) {
                for (std::size_t j = i + 1; j < ways.size(); ++j) {
                    clause({no(ways[i]), no(ways[j])});
                }
            }
            clause(ways);
            m_.groups[at(chain.tasks.front())].sets.push_back(std::move(ways));
        }
        for (std::size_t i = 0; i < sizes.size(); ++i) {
            addCumulative(m_.engine, std::move(taken[i]), panCount(sizes[i], sizes[i]));
            std::vector<CumulativeTask> atLeast;
            for (const PanChain& chain : in_.chains) {
                if (chain.size >= sizes[i]) {
                    TimePoint free = end(chain.tasks.back());
                    free.offset += chain.wash;
                    atLeast.push_back({start(chain.tasks.front()), free, 1, yes()});
                }
            }
            addCumulative(m_.engine, std::move(atLeast), panCount(sizes[i], sizes.back()));
        }
    }

    Value panCount(int least, int most) const {
        return static_cast<Value>(
            std::ranges::count_if(in_.pans, [&](int pan) { return least <= pan && pan <= most; }));
    }

    // ---- ovens ----

    struct Load {
        int task = 0;
        std::vector<std::vector<Literal>> chosen;  ///< [oven][setting], false where not possible
        std::vector<Literal> in;                   ///< by oven
    };

    void addOvens() {
        for (std::size_t t = 0; t < in_.tasks.size(); ++t) {
            if (in_.tasks[t].oven) {
                addLoad(static_cast<int>(t));
            }
        }
        for (std::size_t oven = 0; oven < in_.ovens.size(); ++oven) {
            std::vector<CumulativeTask> slots;
            for (const Load& load : loads_) {
                slots.push_back({start(load.task), end(load.task),
                                 in_.tasks[at(load.task)].oven->slots, load.in[oven]});
            }
            addCumulative(m_.engine, std::move(slots), in_.ovens[oven]);
        }
        for (std::size_t a = 0; a < loads_.size(); ++a) {
            for (std::size_t b = a + 1; b < loads_.size(); ++b) {
                after_.clear();
                for (std::size_t oven = 0; oven < in_.ovens.size(); ++oven) {
                    separate(loads_[a], loads_[b], oven);
                }
            }
        }
    }

    void addLoad(int task) {
        Load load{task, {}, {}};
        const OvenUse& use = *in_.tasks[at(task)].oven;
        std::vector<Literal> all;
        for (std::size_t oven = 0; oven < in_.ovens.size(); ++oven) {
            std::vector<Literal> here;
            load.chosen.emplace_back(in_.warmUps.size(), no(yes()));
            const bool mirrored = loads_.empty() && oven > 0 && in_.ovens[oven] == in_.ovens[0];
            for (const int setting : use.settings) {
                if (use.slots <= in_.ovens[oven] && !mirrored) {
                    const Literal literal = boolean();
                    load.chosen.back()[at(setting)] = literal;
                    here.push_back(literal);
                    all.push_back(literal);
                    clause({no(literal), {m_.starts[at(task)], in_.warmUps[at(setting)]}});
                }
            }
            const Literal in = here.size() == 1 ? here.front() : boolean();
            load.in.push_back(in);
            for (const Literal literal : here) {
                clause({no(literal), in});
            }
            here.push_back(no(in));
            clause(here);
        }
        for (std::size_t i = 0; i < all.size(); ++i) {
            for (std::size_t j = i + 1; j < all.size(); ++j) {
                clause({no(all[i]), no(all[j])});
            }
        }
        clause(all);
        m_.groups[at(task)].sets.push_back(all);
        loads_.push_back(std::move(load));
    }

    Literal afterBy(int a, int b, int gap) {
        const auto [known, isNew] = after_.try_emplace({a, gap});
        if (isNew) {
            known->second = boolean();
            order(end(a), start(b), gap, known->second);
        }
        return known->second;
    }

    void separate(const Load& a, const Load& b, std::size_t oven) {
        for (std::size_t s = 0; s < in_.warmUps.size(); ++s) {
            for (std::size_t t = 0; t < in_.warmUps.size(); ++t) {
                const Literal one = a.chosen[oven][s];
                const Literal other = b.chosen[oven][t];
                if (s != t && !m_.engine.isFalse(one) && !m_.engine.isFalse(other)) {
                    clause({no(one), no(other), afterBy(a.task, b.task, in_.changeOvers[s][t]),
                            afterBy(b.task, a.task, in_.changeOvers[t][s])});
                }
            }
        }
    }

    void addAims() {
        if (in_.hot.empty()) {
            return;
        }
        std::vector<engine::Term> terms;
        std::int64_t constant = 0;
        for (const HotFood& food : in_.hot) {
            terms.push_back({m_.starts[at(food.served)], food.weight});
            terms.push_back({opposite(m_.starts[at(food.made)]), food.weight});
            constant -= std::int64_t{food.weight} * in_.tasks[at(food.made)].minutes;
        }
        m_.waiting = m_.engine.newVariable(0, 1'000'000);
        m_.choices.push_back({m_.waiting, false, yes()});
        engine::addLinearAtMost(m_.engine, std::move(terms), constant, m_.waiting);
    }

    InstanceModel& m_;
    const Instance& in_;
    std::vector<Load> loads_;
    std::map<std::pair<int, int>, Literal> after_;  ///< of one pair: {first task, gap}
};

bool running(const Instance& in, const std::vector<int>& starts, std::size_t task, int minute) {
    return starts[task] <= minute && minute < starts[task] + in.tasks[task].minutes;
}

}  // namespace

InstanceModel::InstanceModel(const Instance& instance) {
    Builder(*this, instance).build();
}

std::string brokenBy(const Instance& in, const std::vector<int>& starts) {
    for (const StartLag& lag : in.lags) {
        if (starts[at(lag.b)] < starts[at(lag.a)] + lag.least) {
            return "lag " + std::to_string(lag.a) + " " + std::to_string(lag.b);
        }
    }
    for (const int minute : starts) {
        for (std::size_t r = 0; r < in.capacities.size(); ++r) {
            int load = 0;
            for (std::size_t t = 0; t < in.tasks.size(); ++t) {
                load += running(in, starts, t, minute) ? in.tasks[t].demands[r] : 0;
            }
            if (load > in.capacities[r]) {
                return "resource " + std::to_string(r) + " at " + std::to_string(minute);
            }
        }
    }
    return {};
}

}  // namespace rangeline::bench
