// Recipes from saved pages, shown before they become dishes of the book.

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

#include "book/library.h"
#include "exchange/lesson_file.h"
#include "library/recipe_preview.h"
#include "recipe/recipe_import.h"
#include "text/fault_text.h"
#include "window/book_writing.h"

namespace rangeline {

void BookWriting::fetchRecipe() {
    const QString path =
        QFileDialog::getOpenFileName(&window_, tr("A saved page or a file with a recipe"), {},
                                     tr("Recipes (*.html *.htm *.jsonld *.json);;All files (*)"));
    if (!path.isEmpty()) {
        takeRecipe(path);
    }
}

void BookWriting::takeRecipe(const QString& path) {
    const auto bytes = loadBytes(QFile::encodeName(path).toStdString());
    auto read = bytes.ok() ? readRecipes(bytes.value())
                           : Result<std::vector<ImportedRecipe>, Fault>(bytes.error());
    if (!read.ok() || read.value().empty()) {
        const QString why =
            read.ok() ? tr("there is no recipe in it. What is read are recipes of schema.org, in a "
                           "saved web page or in a JSON-LD file.")
                      : sentence(read.error());
        QMessageBox::warning(&window_, tr("No recipe"),
                             QStringLiteral("%1: %2").arg(QFileInfo(path).fileName(), why));
        return;
    }
    RecipePreview preview(std::move(read.value()), locale_, units_.units(), &window_);
    if (preview.exec() == QDialog::Accepted) {
        const Dish dish = preview.chosen().dish;
        keepBy(
            [dish](Book& book) -> std::optional<BookFault> {
                const auto added = addDish(book, dish);
                return added.ok() ? std::nullopt : std::optional(added.error());
            },
            isThereNow(dish), {});
    }
}

}  // namespace rangeline
