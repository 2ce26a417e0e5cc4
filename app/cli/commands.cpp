#include <QtGlobal>
#include <algorithm>
#include <array>

#include "cli/arrange_command.h"
#include "cli/book_commands.h"
#include "cli/check_command.h"
#include "cli/command.h"
#include "cli/covers_command.h"
#include "cli/explain_command.h"
#include "cli/export_command.h"
#include "cli/import_command.h"
#include "cli/print_command.h"
#include "cli/rehearse_command.h"

namespace rangeline {
namespace {

constexpr Option json{"--json", nullptr,
                      QT_TRANSLATE_NOOP("Command", "answer in JSON, for programs")};

constexpr Option cook{"--cook", "NAME", QT_TRANSLATE_NOOP("Command", "only this cook's work")};

constexpr Option units{
    "--units", "us|metric",
    QT_TRANSLATE_NOOP("Command", "°F and inches, or °C and centimetres, instead of the lesson's")};

constexpr std::array jsonOnly = {json};

constexpr std::array unitsAndJson = {units, json};

constexpr std::array arrangeOptions = {
    Option{"-o", "OUT.json", QT_TRANSLATE_NOOP("Command", "write the arranged lesson")},
    Option{"--limit", "SECONDS",
           QT_TRANSLATE_NOOP("Command", "stop with the best plan so far (10 unless given)")},
    Option{"--seed", "N", QT_TRANSLATE_NOOP("Command", "another order of trying (1 unless given)")},
    Option{"--threads", "N",
           QT_TRANSLATE_NOOP("Command",
                             "1, or 2: another raises the bound; only 1 gives the same plan each "
                             "time (1 unless given)")},
    Option{"--aim", "NAME",
           QT_TRANSLATE_NOOP("Command",
                             "start-late, fresh, calm or few-pans, instead of the lesson's")},
    Option{"--stay-close", nullptr,
           QT_TRANSLATE_NOOP("Command", "move as little as possible, then the aim")},
    units,
    json,
};

constexpr std::array explainOptions = {
    Option{"--limit", "SECONDS",
           QT_TRANSLATE_NOOP("Command", "stop looking for reasons then (10 unless given)")},
    units,
    json,
};

constexpr std::array rehearseOptions = {
    Option{"--runs", "N", QT_TRANSLATE_NOOP("Command", "how many times (10000 unless given)")},
    Option{"--seed", "N", QT_TRANSLATE_NOOP("Command", "other lengths (1 unless given)")},
    Option{"--changes", nullptr,
           QT_TRANSLATE_NOOP("Command", "try which one change helps most: a pan, a burner, ...")},
    units,
    json,
};

constexpr std::array printOptions = {
    Option{"-o", "OUT.pdf", QT_TRANSLATE_NOOP("Command", "the PDF to write")},
    Option{"--sheet", "NAME",
           QT_TRANSLATE_NOOP("Command", "timeline, unless given; all for every sheet")},
    Option{"--paper", "a4|a3|letter",
           QT_TRANSLATE_NOOP("Command", "letter for °F lessons, else a4, unless given")},
    Option{"--classes", "N",
           QT_TRANSLATE_NOOP("Command", "buy for the lesson given so often (1 unless given)")},
    cook,
    units,
    json,
};

constexpr std::array exportOptions = {
    Option{"-o", "OUT", QT_TRANSLATE_NOOP("Command", "the file to write; its ending chooses")},
    Option{
        "--as", "NAME",
        QT_TRANSLATE_NOOP("Command",
                          "calendar, plan, cooks, equipment, drawing, picture, recipe or lesson, "
                          "whatever the ending")},
    cook,
    units,
    json,
};

constexpr std::array importOptions = {
    Option{"-o", "OUT.json", QT_TRANSLATE_NOOP("Command", "the lesson to write")},
    Option{"--kitchen", "LESSON.json",
           QT_TRANSLATE_NOOP(
               "Command", "in this lesson's kitchen (that of a 30-inch gas range unless given)")},
    Option{"--units", "us|metric",
           QT_TRANSLATE_NOOP("Command", "of the lesson (those of your country unless given)")},
    json,
};

constexpr std::array rows = {
    Command{"check",
            QT_TRANSLATE_NOOP("Command", "says what collides, what is late and what to mind"),
            unitsAndJson, false, runCheck},
    Command{
        "covers",
        QT_TRANSLATE_NOOP("Command", "says what changes where every dish is served to N covers"),
        unitsAndJson, false, runCovers, "LESSON.json N | BOOK NAME N", 2, 3},
    Command{"arrange",
            QT_TRANSLATE_NOOP("Command", "places every step that is not pinned and shows the plan"),
            arrangeOptions, false, runArrange},
    Command{"explain",
            QT_TRANSLATE_NOOP(
                "Command",
                "says why a lesson is not possible, or what decides plating, and what would "
                "help"),
            explainOptions, false, runExplain},
    Command{"rehearse",
            QT_TRANSLATE_NOOP("Command",
                              "says how likely plating is on time, and what to begin earlier"),
            rehearseOptions, false, runRehearse},
    Command{"print", QT_TRANSLATE_NOOP("Command", "writes sheets for the kitchen as PDF"),
            printOptions, true, runPrint},
    Command{"export",
            QT_TRANSLATE_NOOP("Command",
                              "writes the lesson for other programs: .ics, .csv, .cooks.csv, "
                              ".equipment.csv, .svg, .png, .jsonld, .json"),
            exportOptions, true, runExport},
    Command{"import",
            QT_TRANSLATE_NOOP(
                "Command", "makes a lesson of the recipes (schema.org) in a page or JSON-LD file"),
            importOptions, false, runImport, "RECIPE.html | RECIPE.jsonld", 1, 1},
    Command{"list", QT_TRANSLATE_NOOP("Command", "lists what is in a book"), jsonOnly, false,
            runList, "BOOK", 1, 1},
    Command{"copy",
            QT_TRANSLATE_NOOP("Command", "copies a lesson into a book, or out of it into a file"),
            {},
            false,
            runCopy,
            "LESSON.json BOOK | BOOK NAME OUT.json",
            2,
            3},
};

}  // namespace

std::span<const Command> commands() {
    return rows;
}

const Command* findCommand(const QString& name) {
    const auto* found = std::ranges::find_if(
        rows, [&](const Command& row) { return QString::fromUtf8(row.name) == name; });
    return found == rows.end() ? nullptr : found;
}

}  // namespace rangeline
