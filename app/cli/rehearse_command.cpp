#include "cli/rehearse_command.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <algorithm>
#include <thread>

#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "text/columns.h"
#include "text/rehearsal_tables.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(RehearseCommand)
};

qint64 inSeconds(Duration length) {
    return static_cast<qint64>(length.inSeconds());
}

/// What came of it, in words and for programs.
class Answer {
  public:
    Answer(const OpenedLesson& opened, const RehearsalOptions& options)
        : opened_(opened),
          network_(networkOf(opened.index())),
          rehearsal_(rehearse(network_, options)),
          deciding_(decidingRows(rehearsal_, network_, opened.index(), opened.text())),
          food_(waitingFoodRows(rehearsal_, network_, opened.index(), opened.text())),
          hands_(shortHandsRows(rehearsal_, network_, opened.index(), opened.text())) {}

    void tryChanges(const RehearsalOptions& options) {
        helps_ = whatHelps(opened_.index(), options);
    }

    QJsonObject toMachine() const {
        const auto earlier = [&](double chance) {
            return inSeconds(rehearsal_.earlierFor(chance));
        };
        const auto lateness = [&](double part) { return inSeconds(rehearsal_.latenessIn(part)); };
        QJsonObject answer{
            {"runs", rehearsal_.runs},
            {"onTime", rehearsal_.chanceOnTime()},
            {"latenessSeconds",
             QJsonObject{{"10", lateness(0.1)}, {"50", lateness(0.5)}, {"90", lateness(0.9)}}},
            {"earlierSeconds",
             QJsonObject{{"80", earlier(0.8)}, {"90", earlier(0.9)}, {"95", earlier(0.95)}}},
            {"decides", decidingForMachine()},
            {"steps", bandsForMachine()},
            {"foodWaits", sufferingForMachine(food_, "food", "step")},
            {"handsShort", sufferingForMachine(hands_, "cook", "step")}};
        if (helps_) {
            answer.insert("changes", changesForMachine());
        }
        return answer;
    }

    QString toText(const QLocale& locale) const {
        QStringList parts{chanceText(rehearsal_) + '\n' + spreadText(rehearsal_, locale) + '\n' +
                          earlierText(rehearsal_, locale)};
        addTable(parts,
                 {{Text::tr("Decides plating")},
                  {Text::tr("Step"), true},
                  {Text::tr("Ends, in 80 of 100")}},
                 cellsOf(deciding_, [](const DecidingRow& row) {
                     return QStringList{Text::tr("%1 of 100").arg(row.percent), row.step, row.ends};
                 }));
        const auto suffering = [](const SufferingRow& row) {
            return QStringList{Text::tr("%1 of 100").arg(row.percent), row.by, row.who, row.step};
        };
        addTable(parts,
                 {{Text::tr("Food waits too long")},
                  {Text::tr("By")},
                  {Text::tr("Food of"), true},
                  {Text::tr("Until"), true}},
                 cellsOf(food_, suffering));
        addTable(parts,
                 {{Text::tr("Hands run short")},
                  {Text::tr("By")},
                  {Text::tr("Cook")},
                  {Text::tr("Step that waits"), true}},
                 cellsOf(hands_, suffering));
        if (helps_) {
            parts << helpsMostText(*helps_, opened_.text());
            addTable(parts,
                     {{Text::tr("On time with it")},
                      {Text::tr("To begin, for 90")},
                      {Text::tr("Change"), true}},
                     cellsOf(helpRows(*helps_, opened_.text()), [](const HelpRow& row) {
                         return QStringList{Text::tr("%1 of 100").arg(row.percent), row.earlier,
                                            row.change};
                     }));
        }
        return parts.join(QStringLiteral("\n\n"));
    }

  private:
    template <class Row, class Cells>
    static std::vector<QStringList> cellsOf(const std::vector<Row>& rows, Cells cells) {
        constexpr std::size_t most = 12;
        std::vector<QStringList> made;
        for (std::size_t i = 0; i < std::min(most, rows.size()); ++i) {
            made.push_back(cells(rows[i]));
        }
        return made;
    }

    static void addTable(QStringList& parts, const std::vector<Column>& columns,
                         const std::vector<QStringList>& cells) {
        if (!cells.empty()) {
            parts << inColumns(columns, cells, terminalWidth());
        }
    }

    QJsonArray decidingForMachine() const {
        QJsonArray rows;
        for (const DecidingRow& row : deciding_) {
            rows.append(QJsonObject{{"step", row.step}, {"percent", row.percent}});
        }
        return rows;
    }

    static QJsonArray sufferingForMachine(const std::vector<SufferingRow>& rows, const char* who,
                                          const char* step) {
        QJsonArray all;
        for (const SufferingRow& row : rows) {
            all.append(QJsonObject{{who, row.who},
                                   {step, row.step},
                                   {"share", row.excess.share},
                                   {"bySeconds", inSeconds(row.excess.by)}});
        }
        return all;
    }

    QJsonArray bandsForMachine() const {
        const Names names(opened_.text());
        const Clock clock(opened_.lesson().head, opened_.text().locale);
        QJsonArray rows;
        for (std::size_t i = 0; i < rehearsal_.bands.size(); ++i) {
            const Band& band = rehearsal_.bands[i];
            const PlacementKey key = opened_.index().keyOf(network_.activities[i].node);
            const auto three = [&clock](Instant early, Instant middle, Instant late) {
                return QJsonArray{clock.iso(early), clock.iso(middle), clock.iso(late)};
            };
            rows.append(
                QJsonObject{{"step", sentenceCase(names.plainStep(key))},
                            {"begins", three(band.beginEarly, band.beginMiddle, band.beginLate)},
                            {"ends", three(band.endEarly, band.endMiddle, band.endLate)}});
        }
        return rows;
    }

    QJsonArray changesForMachine() const {
        QJsonArray rows;
        const auto shown = helpRows(*helps_, opened_.text());
        for (std::size_t i = 0; i < shown.size(); ++i) {
            rows.append(QJsonObject{{"change", shown[i].change},
                                    {"onTime", helps_->tried[i].onTime},
                                    {"earlierSeconds90", inSeconds(helps_->tried[i].earlier)}});
        }
        return rows;
    }

    const OpenedLesson& opened_;
    Network network_;
    Rehearsal rehearsal_;
    std::vector<DecidingRow> deciding_;
    std::vector<SufferingRow> food_;
    std::vector<SufferingRow> hands_;
    std::optional<Helps> helps_;
};

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
    if (networkOf(opened->index()).plating.empty()) {
        complain(Text::tr("%1: nothing is to be ready by a serving, so there is nothing to be on "
                          "time for.")
                     .arg(invocation.file));
        return Exit::Wrong;
    }
    RehearsalOptions options;
    options.runs = static_cast<int>(runs);
    options.seed = static_cast<std::uint64_t>(seed);
    options.threads = std::clamp(static_cast<int>(std::thread::hardware_concurrency()), 1, 8);
    Answer answer(*opened, options);
    if (invocation.has("--changes")) {
        answer.tryChanges(options);
    }
    if (invocation.has("--json")) {
        say(answer.toMachine());
    } else {
        say(answer.toText(invocation.locale));
    }
    return Exit::Fine;
}

}  // namespace rangeline
