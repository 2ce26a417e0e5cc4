// The window's dialogs.

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QStatusBar>

#include "book/library.h"
#include "exchange/lesson_file.h"
#include "inspect/lesson_head_dialog.h"
#include "library/book_desk.h"
#include "library/recipe_preview.h"
#include "print/dialog/print_dialog.h"
#include "text/fault_text.h"
#include "window/lesson_export.h"
#include "window/main_window.h"

namespace rangeline {

void MainWindow::editHead() {
    LessonHeadDialog dialog(document_, locale_, this);
    dialog.exec();
}

void MainWindow::print() {
    PrintDialog dialog(document_, locale_, this);
    dialog.exec();
    if (!dialog.outcome().isEmpty()) {
        statusBar()->showMessage(dialog.outcome());
    }
}

void MainWindow::exportToOther() {
    const QString done = exportLesson(document_, locale_, this);
    if (!done.isEmpty()) {
        statusBar()->showMessage(done);
    }
}

void MainWindow::fetchRecipe() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("A saved page or a file with a recipe"), {},
                                     tr("Recipes (*.html *.htm *.jsonld *.json);;All files (*)"));
    if (!path.isEmpty()) {
        takeRecipe(path);
    }
}

void MainWindow::takeRecipe(const QString& path) {
    const auto bytes = loadBytes(QFile::encodeName(path).toStdString());
    auto read = bytes.ok() ? readRecipes(bytes.value())
                           : Result<std::vector<ImportedRecipe>, Fault>(bytes.error());
    if (!read.ok() || read.value().empty()) {
        const QString why =
            read.ok() ? tr("there is no recipe in it. What is read are recipes of schema.org, in a "
                           "saved web page or in a JSON-LD file.")
                      : sentence(read.error());
        QMessageBox::warning(this, tr("No recipe"),
                             QStringLiteral("%1: %2").arg(QFileInfo(path).fileName(), why));
        return;
    }
    RecipePreview preview(std::move(read.value()), locale_, this);
    if (preview.exec() != QDialog::Accepted) {
        return;
    }
    const Dish dish = preview.chosen().dish;
    desk_->book()->ask(
        [dish](Book& book) { return addDish(book, dish); },
        [this, dish](const Result<ItemId, BookFault>& added) {
            if (!added.ok()) {
                desk_->sayFault(added.error());
                return;
            }
            desk_->book()->refresh();
            statusBar()->showMessage(tr("“%1” is a dish of the book now; New lesson serves it.")
                                         .arg(QString::fromStdString(dish.name)));
        });
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
