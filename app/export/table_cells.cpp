#include "export/table_cells.h"

#include "export/export_text.h"

namespace rangeline {

CsvRow headings(std::initializer_list<const char*> titles) {
    CsvRow row;
    for (const char* title : titles) {
        row.push_back(Exported::tr(title).toStdString());
    }
    return row;
}

std::string timeCell(const Clock& clock, Instant instant) {
    return clock.moment(instant).toString(QStringLiteral("yyyy-MM-dd HH:mm:ss")).toStdString();
}

std::string minutesCell(Duration length) {
    return QString::number(length.inMinutes(), 'g', 10).toStdString();
}

}  // namespace rangeline
