#include "window/run_window.h"

#include <QLocale>

#include "window/main_window.h"

namespace rangeline {

int runWindow(QApplication& application, const QString& lessonPath) {
    QCoreApplication::setApplicationName(QStringLiteral("rangeline"));
    QCoreApplication::setOrganizationName(QStringLiteral("rangeline"));
    MainWindow window(QLocale::system());
    window.show();
    if (!lessonPath.isEmpty()) {
        window.openFile(lessonPath);
    }
    return application.exec();
}

}  // namespace rangeline
