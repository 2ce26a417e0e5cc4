// The window's dialogs.

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QStatusBar>

#include "inspect/lesson_head_dialog.h"
#include "text/fault_text.h"
#include "window/lesson_printer.h"
#include "window/main_window.h"

namespace rangeline {

void MainWindow::editHead() {
    LessonHeadDialog dialog(document_, locale_, this);
    dialog.exec();
}

void MainWindow::print() {
    const QString name = document_.path().isEmpty()
                             ? QString::fromStdString(document_.lesson().head.name)
                             : QFileInfo(document_.path()).absolutePath() + u'/' +
                                   QFileInfo(document_.path()).completeBaseName();
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Print the station timeline to"),
                                     name + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    if (const auto fault = printTo(path, sheets().front(), document_, locale_)) {
        QMessageBox::warning(this, tr("The timeline was not printed"), sentence(*fault));
        return;
    }
    statusBar()->showMessage(tr("Printed to %1").arg(QFileInfo(path).fileName()));
}

void MainWindow::showHelp(HelpDialog::Page page) {
    if (help_ == nullptr) {
        help_ = new HelpDialog(this);
    }
    help_->open(page);
}

void MainWindow::showAbout() {
    QMessageBox::about(
        this, tr("About Rangeline"),
        tr("Rangeline plans a lesson of many components on one kitchen, so that everything is "
           "ready together, and says what collides and what decides plating.\n\nIts food-safety "
           "figures are those of the limits you choose; your local food code comes first."));
}

}  // namespace rangeline
