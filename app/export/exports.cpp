#include "export/exports.h"

#include <algorithm>
#include <array>

#include "exchange/lesson_file.h"
#include "exchange/recipe_file.h"
#include "export/calendar_export.h"
#include "export/export_text.h"
#include "export/picture_export.h"
#include "export/table_export.h"

namespace rangeline {
namespace {

QString lessonTitle() {
    return Exported::tr("The lesson, for Rangeline");
}

Result<std::string, Fault> makeLesson(const TimelineInput& input, const ExportSetup&) {
    return writeLesson(input.text.lesson);
}

QString recipeTitle() {
    return Exported::tr("The dishes, as recipes for other programs");
}

Result<std::string, Fault> makeRecipe(const TimelineInput& input, const ExportSetup&) {
    return writeRecipes(input.text.lesson);
}

constexpr std::array rows = {
    Export{"calendar", ".ics", calendarTitle, makeCalendar},
    Export{"cooks", ".cooks.csv", cooksTableTitle, makeCooksTable},
    Export{"equipment", ".equipment.csv", equipmentTableTitle, makeEquipmentTable},
    Export{"plan", ".csv", planTableTitle, makePlanTable},
    Export{"drawing", ".svg", drawingTitle, makeDrawing},
    Export{"picture", ".png", pictureTitle, makePicture},
    Export{"recipe", ".jsonld", recipeTitle, makeRecipe},
    Export{"lesson", ".json", lessonTitle, makeLesson},
};

}  // namespace

std::span<const Export> exports() {
    return rows;
}

const Export* exportFor(const QString& path) {
    const auto* found = std::ranges::find_if(rows, [&](const Export& row) {
        return path.endsWith(
            QLatin1String(row.ending.data(), static_cast<qsizetype>(row.ending.size())),
            Qt::CaseInsensitive);
    });
    return found == rows.end() ? nullptr : found;
}

const Export* findExport(std::string_view key) {
    const auto* found = std::ranges::find(rows, key, &Export::key);
    return found == rows.end() ? nullptr : found;
}

}  // namespace rangeline
