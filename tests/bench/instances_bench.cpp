// Times the planner's core, in processor time, on files of instances and prints a line for each and
// one for all:
//   instances_bench FILE.jsonl [--limit SECONDS] [--only PREFIX] [--aim span|waiting]
// Every plan is held against the instance, every proved least span against the known one.

#include <algorithm>
#include <cstdio>
#include <cstring>
#include <ctime>

#include "bench/instance_model.h"

namespace rangeline::bench {
namespace {

struct Run {
    std::optional<int> best;
    bool proved = false;
    double firstSeconds = 0, seconds = 0;
    std::int64_t conflicts = 0, decisions = 0, restarts = 0;
    int plans = 0;
    std::string fault;
};

/// Seconds of this process on a processor, whatever else the machine does.
double since(std::clock_t begun) {
    return static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
}

struct Solver {
    Solver(const Instance& in, double limit)
        : instance(in),
          model(in),
          search(model.engine, model.groups, model.choices, 1,
                 [this, limit] { return since(begun) < limit; }) {}

    void minimise(engine::View objective) {
        engine::Goal goal{objective, std::nullopt, true};
        run.proved = false;
        while (true) {
            const engine::Outcome outcome = search.solve(goal, std::nullopt);
            if (outcome != engine::Outcome::Solution) {
                run.proved = outcome == engine::Outcome::Contradiction;
                model.engine.backtrackTo(0);
                return;
            }
            if (!run.best) {
                run.firstSeconds = since(begun);
            }
            run.best = model.engine.low(objective);
            ++run.plans;
            std::vector<int> starts;
            for (const engine::View view : model.starts) {
                starts.push_back(model.engine.low(view));
            }
            run.fault = brokenBy(instance, starts);
            goal.atMost = *run.best - 1;
            search.rememberValues();
            model.engine.backtrackTo(0);
        }
    }

    void solve(bool waiting) {
        if (!model.possible || !model.engine.propagate()) {
            run.proved = true;
        } else {
            minimise(model.span);
            if (waiting && run.best) {
                // A plan at most 5 % longer than the shortest known, with the least waiting.
                model.engine.fix({engine::opposite(model.span), -(*run.best + *run.best / 20)});
                run.best.reset();
                minimise(model.waiting);
            }
        }
        run.seconds = since(begun);
        run.conflicts = search.conflicts();
        run.decisions = search.decisions();
        run.restarts = search.restarts();
    }

    const Instance& instance;
    std::clock_t begun = std::clock();
    Run run;
    InstanceModel model;
    engine::Search search;
};

std::string faultOf(const Instance& in, const Run& run, bool waiting) {
    if (!run.fault.empty() || waiting) {
        return run.fault;
    }
    if (run.best && in.knownImpossible) {
        return "a plan, known to be impossible";
    }
    if (run.best && in.leastSpan && *run.best < *in.leastSpan) {
        return "better than the known optimum " + std::to_string(*in.leastSpan);
    }
    if (run.proved && in.leastSpan && run.best != in.leastSpan) {
        return "proved, but the known optimum is " + std::to_string(*in.leastSpan);
    }
    return {};
}

double quantile(std::vector<double> values, double share) {
    std::ranges::sort(values);
    const auto last = static_cast<double>(values.size() - 1);
    return values[static_cast<std::size_t>(share * last + 0.5)];
}

int measure(const std::vector<Instance>& instances, double limit, bool waiting) {
    std::vector<double> seconds;
    std::vector<double> first;
    double total = 0;
    int proved = 0;
    int faults = 0;
    for (const Instance& instance : instances) {
        Solver solver(instance, limit);
        solver.solve(waiting);
        const Run& run = solver.run;
        const std::string fault = faultOf(instance, run, waiting);
        std::printf(
            "%-10s %6d %-8s %9.4f s, first %8.4f s, %8lld conflicts, %lld decisions, %lld "
            "restarts, %d plans %s\n",
            instance.name.c_str(), run.best.value_or(-1), run.proved ? "proved" : "", run.seconds,
            run.firstSeconds, static_cast<long long>(run.conflicts),
            static_cast<long long>(run.decisions), static_cast<long long>(run.restarts), run.plans,
            fault.c_str());
        seconds.push_back(run.seconds);
        first.push_back(run.firstSeconds);
        total += run.seconds;
        proved += run.proved ? 1 : 0;
        faults += fault.empty() ? 0 : 1;
    }
    if (seconds.empty()) {
        return 1;
    }
    std::printf(
        "%d of %zu proved; median %.4f, 95 %% %.4f, worst %.4f, total %.2f s; first plan"
        " median %.4f, worst %.4f s; %d faults\n",
        proved, seconds.size(), quantile(seconds, 0.5), quantile(seconds, 0.95),
        quantile(seconds, 1), total, quantile(first, 0.5), quantile(first, 1), faults);
    return faults == 0 ? 0 : 1;
}

int run(int count, char** arguments) {
    double limit = 10;
    std::string only;
    bool waiting = false;
    for (int i = 2; i + 1 < count; i += 2) {
        if (std::strcmp(arguments[i], "--limit") == 0) {
            limit = std::atof(arguments[i + 1]);
        } else if (std::strcmp(arguments[i], "--only") == 0) {
            only = arguments[i + 1];
        } else if (std::strcmp(arguments[i], "--aim") == 0) {
            waiting = std::strcmp(arguments[i + 1], "waiting") == 0;
        }
    }
    std::vector<Instance> instances = readInstances(QString::fromLocal8Bit(arguments[1]));
    std::erase_if(instances, [&](const Instance& in) { return !in.name.starts_with(only); });
    return measure(instances, limit, waiting);
}

}  // namespace
}  // namespace rangeline::bench

int main(int count, char** arguments) {
    if (count < 2) {
        std::fputs(
            "usage: instances_bench FILE.jsonl [--limit SECONDS] [--only PREFIX] [--aim waiting]\n",
            stderr);
        return 2;
    }
    try {
        return rangeline::bench::run(count, arguments);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "instances_bench: %s\n", error.what());
        return 1;
    }
}
