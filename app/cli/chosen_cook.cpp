#include "cli/chosen_cook.h"

#include <QCoreApplication>

#include "analysis/at.h"
#include "cli/output.h"
#include "model/stations.h"

namespace rangeline {

bool readCook(const Invocation& invocation, const Lesson& lesson, std::optional<CookId>& cook) {
    if (!invocation.has("--cook")) {
        return true;
    }
    const QString wanted = invocation.value("--cook");
    QStringList crew;
    for (const CookId& id : lesson.head.crew) {
        const QString name =
            QString::fromStdString(at(lesson.kitchen.cooks, cookItem(lesson.kitchen, id)).name);
        if (wanted.compare(name, Qt::CaseInsensitive) == 0 ||
            wanted == QString::fromStdString(id.text)) {
            cook = id;
            return true;
        }
        crew << name;
    }
    complain(QCoreApplication::translate("Command", "There is no cook “%1” in the crew: %2.")
                 .arg(wanted, crew.join(QStringLiteral(", "))));
    return false;
}

}  // namespace rangeline
