#include "window/run_window.h"

#include <QApplication>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

#include "book/book.h"
#include "library/book_desk.h"
#include "text/fault_text.h"
#include "window/cooking.h"
#include "window/end_signals.h"
#include "window/main_window.h"
#include "window/readable_palette.h"
#include "window/recovery.h"
#include "window/wheel_guard.h"

namespace rangeline {
namespace {

enum class Answer : std::uint8_t { GoOn, GiveUp, Later };

Answer askAbout(const UnsavedLesson& unsaved, QWidget& window) {
    QMessageBox question(&window);
    question.setIcon(QMessageBox::Question);
    question.setWindowTitle(MainWindow::tr("Unsaved changes"));
    question.setText(MainWindow::tr("“%1” has changes that were not saved when Rangeline ended.")
                         .arg(QString::fromStdString(unsaved.lesson.head.name)));
    QPushButton* goOn =
        question.addButton(MainWindow::tr("Go &on with them"), QMessageBox::AcceptRole);
    QPushButton* drop =
        question.addButton(MainWindow::tr("&Give them up"), QMessageBox::DestructiveRole);
    question.addButton(MainWindow::tr("Ask &later"), QMessageBox::RejectRole);
    question.setDefaultButton(goOn);
    question.exec();
    return question.clickedButton() == goOn   ? Answer::GoOn
           : question.clickedButton() == drop ? Answer::GiveUp
                                              : Answer::Later;
}

/// Offers what earlier runs have left. True if the window goes on with one of it.
bool offerUnsaved(MainWindow& window, Recovery& recovery) {
    for (auto& kept : KeptLesson::left(unsavedFolder())) {
        auto unsaved = kept->read();
        if (!unsaved) {
            continue;
        }
        const Answer answer = askAbout(*unsaved, window);
        if (answer == Answer::GiveUp) {
            kept->remove();
        } else if (answer == Answer::GoOn) {
            window.goOnWith(std::move(unsaved->lesson), unsaved->path);
            recovery.goOnWith(std::move(kept));
            return true;
        }
    }
    return false;
}

}  // namespace

int runWindow(QApplication& application, const QString& path, const QString& name) {
    QApplication::setPalette(withReadableHighlight(QApplication::palette()));
    application.installEventFilter(new WheelGuard(&application));
    QCoreApplication::setApplicationName(QStringLiteral("rangeline"));
    QCoreApplication::setOrganizationName(QStringLiteral("rangeline"));
    MainWindow window(QLocale::system());
    Recovery recovery(window.document(), unsavedFolder());
    const EndSignals signals;
    QObject::connect(&signals, &EndSignals::received, &recovery, [&window, &recovery] {
        window.desk().journal().finish();
        recovery.flush();
        QCoreApplication::exit(0);
    });
    QObject::connect(&application, &QGuiApplication::commitDataRequest, &recovery,
                     &Recovery::flush);
    QObject::connect(&window, &MainWindow::left, &recovery, &Recovery::discard);
    QObject::connect(&recovery, &Recovery::failed, &window, [&window](const Fault& fault) {
        window.say(
            MainWindow::tr("Changes are not kept until you save them. %1").arg(sentence(fault)));
    });
    window.show();
    // In the event loop, so that a signal ends these questions too.
    QTimer::singleShot(0, &window, [&] {
        if (offerUnsaved(window, recovery)) {
            return;
        }
        if (!Book::isBook(nameOnDisk(path))) {
            window.openUsual();
        }
        if (!path.isEmpty() && window.openFile(path) && !name.isEmpty()) {
            window.openLessonNamed(name);
        }
        window.cooking().offer(Cooking::pathWithoutBook());
    });
    return application.exec();
}

}  // namespace rangeline
