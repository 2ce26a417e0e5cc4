#include "text/explain_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Explain)
};

/// The steps that a plain "after" ties, if it is of one step each.
std::optional<std::pair<int, int>> plainPair(const Requirement& requirement,
                                             const Expanded& expanded) {
    if (requirement.kind != RequirementKind::Follows) {
        return std::nullopt;
    }
    const Wait& wait = expanded.waits[static_cast<std::size_t>(requirement.index)];
    const bool plain =
        wait.origin != WaitOrigin::Link && wait.from.tasks.size() == 1 && wait.to.tasks.size() == 1;
    return plain ? std::optional(std::pair(wait.from.tasks.front(), wait.to.tasks.front()))
                 : std::nullopt;
}

/// Finds steps that follow each other one by one.
class Sequences {
  public:
    Sequences(const std::vector<Requirement>& requirements, const Expanded& expanded) {
        for (std::size_t i = 0; i < requirements.size(); ++i) {
            if (const auto pair = plainPair(requirements[i], expanded)) {
                pairs_.push_back({i, pair->first, pair->second});
            }
        }
    }

    /// The longest run through the requirement of that number, at least three steps; else empty.
    /// Marks what it takes in as told.
    std::vector<int> through(std::size_t number, std::set<std::size_t>& told) const {
        std::vector<int> steps;
        std::vector<std::size_t> taken;
        const auto self = std::ranges::find(pairs_, number, &Pair::number);
        if (self == pairs_.end()) {
            return {};
        }
        steps = {self->from, self->to};
        taken = {number};
        while (const Pair* before = only(&Pair::to, steps.front(), taken, told)) {
            steps.insert(steps.begin(), before->from);
            taken.push_back(before->number);
        }
        while (const Pair* after = only(&Pair::from, steps.back(), taken, told)) {
            steps.push_back(after->to);
            taken.push_back(after->number);
        }
        if (steps.size() < 3) {
            return {};
        }
        told.insert(taken.begin(), taken.end());
        return steps;
    }

  private:
    struct Pair {
        std::size_t number = 0;
        int from = 0;
        int to = 0;
    };

    const Pair* only(int Pair::*end, int step, const std::vector<std::size_t>& taken,
                     const std::set<std::size_t>& told) const {
        for (const Pair& pair : pairs_) {
            if (pair.*end == step && std::ranges::count(taken, pair.number) == 0 &&
                !told.contains(pair.number)) {
                return &pair;
            }
        }
        return nullptr;
    }

    std::vector<Pair> pairs_;
};

}  // namespace

QStringList requirementLines(const std::vector<Requirement>& requirements,
                             const TextContext& context) {
    const Names names(context);
    const Sequences sequences(requirements, context.expanded);
    std::set<std::size_t> told;
    QStringList lines;
    for (std::size_t i = 0; i < requirements.size(); ++i) {
        if (told.contains(i)) {
            continue;
        }
        const std::vector<int> steps = sequences.through(i, told);
        if (steps.empty()) {
            lines << requirementText(requirements[i], context);
            continue;
        }
        QStringList parts;
        for (const int task : steps) {
            parts << names.step(context.expanded.tasks[static_cast<std::size_t>(task)].key);
        }
        lines << Text::tr("One after the other: %1.").arg(parts.join(Text::tr(", then ")));
    }
    return lines;
}

QString notPossibleText(const Explanation& explanation) {
    if (explanation.requirements.empty()) {
        return explanation.status == ExplainStatus::Smallest
                   ? Text::tr("Not possible: nothing that could be changed here would help.")
                   : Text::tr("Not possible; the reason was not found within the time.");
    }
    if (explanation.requirements.size() == 1) {
        return Text::tr("Not possible, because of this:");
    }
    return explanation.status == ExplainStatus::Smallest
               ? Text::tr(
                     "Not possible: these cannot hold together, and without any one of them they "
                     "could:")
               : Text::tr(
                     "Not possible: these cannot hold together (it is not proved that all are "
                     "needed for that):");
}

QString noLaterText(const Explanation& explanation) {
    switch (explanation.status) {
        case ExplainStatus::Possible:
            return Text::tr("It could start later, or be less late: such a plan is possible.");
        case ExplainStatus::Stopped:
            return Text::tr("What keeps it from being better was not found within the time.");
        case ExplainStatus::NotProvedSmall:
            return Text::tr(
                "These together keep it from starting later (it is not proved that all are "
                "needed for that):");
        case ExplainStatus::Smallest:
            break;
    }
    return Text::tr(
        "These together keep it from starting later; without any one of them it could:");
}

}  // namespace rangeline
