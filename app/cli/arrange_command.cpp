#include "cli/arrange_command.h"

#include <QCoreApplication>
#include <QFile>
#include <atomic>
#include <chrono>
#include <csignal>
#include <thread>

#include "arrange/arrange.h"
#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "exchange/lesson_file.h"
#include "exchange/words.h"
#include "text/arrange_text.h"
#include "text/fault_text.h"
#include "text/machine_form.h"
#include "text/plan_text.h"

namespace rangeline {
namespace {

constexpr double usualLimit = 10;  // seconds

struct Text {
    Q_DECLARE_TR_FUNCTIONS(ArrangeCommand)
};

std::atomic<bool> interrupted = false;

void interrupt(int) {
    interrupted = true;
}

/// While it lives, Ctrl+C stops the arranging and keeps the best plan instead of ending the
/// program.
class StopOnInterrupt {
  public:
    StopOnInterrupt() : before_(std::signal(SIGINT, interrupt)) {
        watcher_ = std::jthread([this](const std::stop_token& done) {
            while (!done.stop_requested() && !interrupted) {
                std::this_thread::sleep_for(std::chrono::milliseconds(20));
            }
            if (interrupted) {
                stop_.request_stop();
            }
        });
    }
    ~StopOnInterrupt() { std::signal(SIGINT, before_); }
    StopOnInterrupt(const StopOnInterrupt&) = delete;
    StopOnInterrupt& operator=(const StopOnInterrupt&) = delete;

    std::stop_token token() const { return stop_.get_token(); }

  private:
    void (*before_)(int);
    std::stop_source stop_;
    std::jthread watcher_;
};

bool readOptions(const Invocation& invocation, ArrangeOptions& options) {
    double limit = usualLimit;
    double seed = static_cast<double>(options.seed);
    double threads = 1;
    constexpr double largestSeed = 4294967295.0;
    if (!readNumber(invocation, "--limit", 0.001, 86400, limit) ||
        !readNumber(invocation, "--seed", 0, largestSeed, seed) ||
        !readNumber(invocation, "--threads", 1, 2, threads)) {
        return false;
    }
    if (invocation.has("--aim")) {
        options.aim = meaningOf<Aim>(invocation.value("--aim").toStdString());
        if (!options.aim) {
            complain(Text::tr("There is no aim \"%1\". Use start-late, fresh, calm or few-pans.")
                         .arg(invocation.value("--aim")));
            return false;
        }
    }
    options.stayClose = invocation.has("--stay-close");
    options.secondsLimit = limit;
    options.seed = static_cast<std::uint64_t>(seed);
    options.threads = static_cast<int>(threads);
    return true;
}

bool save(const Invocation& invocation, const Lesson& lesson) {
    const QString path = invocation.value("-o");
    if (path == QStringLiteral("-")) {
        say(QString::fromStdString(writeLesson(lesson)));
        return true;
    }
    const auto fault = saveLesson(QFile::encodeName(path).toStdString(), lesson);
    if (fault) {
        complain(QStringLiteral("%1: %2").arg(path, sentence(*fault)));
    }
    return !fault;
}

void report(const Invocation& invocation, const ArrangeResult& result,
            const OpenedLesson& arranged) {
    const auto rows = planRows(arranged.index(), arranged.text());
    const Head& head = arranged.lesson().head;
    if (invocation.has("--json")) {
        QJsonObject object = toMachine(result, head, invocation.locale);
        if (!result.placements.empty()) {
            object["plan"] = toMachine(rows, arranged.text());
            object["findings"] = toMachine(arranged.findings(), arranged.text());
        }
        say(object);
        return;
    }
    say(arrangeText(result, head, invocation.locale) + '\n');
    if (!result.placements.empty()) {
        say('\n' + planText(rows, terminalWidth()));
    }
}

}  // namespace

Exit runArrange(const Invocation& invocation) {
    ArrangeOptions options;
    auto lesson = readLesson(invocation);
    if (!lesson || !readOptions(invocation, options)) {
        return Exit::Unusable;
    }
    const StopOnInterrupt stop;
    const ArrangeResult result = arrange(*lesson, options, {}, stop.token());
    const bool planned = !result.placements.empty();
    if (planned) {
        lesson->placements = result.placements;
    }
    const OpenedLesson arranged(std::move(*lesson), invocation.locale);
    if (planned && !arranged.works()) {
        // Never shown: the checker is the judge of the planner.
        complain(
            Text::tr("The plan that was found breaks a rule of this lesson, so it is not shown. "
                     "Please report the lesson."));
        return Exit::Wrong;
    }
    const bool toStandardOutput = invocation.value("-o") == QStringLiteral("-");
    if (!toStandardOutput) {
        report(invocation, result, arranged);
    } else if (!planned) {
        complain(arrangeText(result, arranged.lesson().head, invocation.locale));
    }
    if (planned && invocation.has("-o") && !save(invocation, arranged.lesson())) {
        return Exit::Unusable;
    }
    return planned ? Exit::Fine : Exit::Wrong;
}

}  // namespace rangeline
