#include "cli/rehearse_command.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <algorithm>
#include <thread>

#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "text/columns.h"
#include "text/rehearsal_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(RehearseCommand)
};

QJsonObject toMachine(const Rehearsal& rehearsal, const std::vector<DecidingRow>& rows) {
    QJsonArray deciding;
    for (const DecidingRow& row : rows) {
        deciding.append(QJsonObject{{"step", row.step}, {"percent", row.percent}});
    }
    const auto earlier = [&](double chance) {
        return static_cast<qint64>(rehearsal.earlierFor(chance).inSeconds());
    };
    return {{"runs", rehearsal.runs},
            {"onTime", rehearsal.chanceOnTime()},
            {"earlierSeconds",
             QJsonObject{{"80", earlier(0.8)}, {"90", earlier(0.9)}, {"95", earlier(0.95)}}},
            {"decides", deciding}};
}

QString tableOf(const std::vector<DecidingRow>& rows) {
    constexpr std::size_t most = 12;
    std::vector<QStringList> cells;
    for (const DecidingRow& row : rows) {
        if (cells.size() < most) {
            cells.push_back({Text::tr("%1 of 100").arg(row.percent), row.step, row.ends});
        }
    }
    return inColumns(
        {{Text::tr("Decides plating")}, {Text::tr("Step"), true}, {Text::tr("Ends, in 80 of 100")}},
        cells, terminalWidth());
}

}  // namespace

Exit runRehearse(const Invocation& invocation) {
    double runs = RehearsalOptions().runs;
    double seed = 1;
    constexpr double mostRuns = 1'000'000;
    constexpr double mostSeed = 1e15;
    if (!readNumber(invocation, "--runs", 1, mostRuns, runs) ||
        !readNumber(invocation, "--seed", 0, mostSeed, seed)) {
        return Exit::Unusable;
    }
    const auto opened = openLesson(invocation);
    if (opened == nullptr) {
        return Exit::Unusable;
    }
    if (!opened->works()) {
        complain(Text::tr("%1: something collides, is late or has no place yet; arrange it first.")
                     .arg(invocation.file));
        return Exit::Wrong;
    }
    const Network network = networkOf(opened->index());
    RehearsalOptions options;
    options.runs = static_cast<int>(runs);
    options.seed = static_cast<std::uint64_t>(seed);
    options.threads = std::clamp(static_cast<int>(std::thread::hardware_concurrency()), 1, 8);
    const Rehearsal rehearsal = rehearse(network, options);
    const std::vector<DecidingRow> rows =
        decidingRows(rehearsal, network, opened->index(), opened->text());
    if (invocation.has("--json")) {
        say(toMachine(rehearsal, rows));
    } else {
        say(chanceText(rehearsal) + '\n' + earlierText(rehearsal, invocation.locale) +
            QStringLiteral("\n\n") + tableOf(rows));
    }
    return Exit::Fine;
}

}  // namespace rangeline
