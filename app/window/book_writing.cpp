#include "window/book_writing.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QMessageBox>

#include "book/library.h"
#include "exchange/lesson_file.h"
#include "library/recipe_preview.h"
#include "model/starting_kitchens.h"
#include "recipe/recipe_import.h"
#include "text/fault_text.h"
#include "writing/dish_changes.h"
#include "writing/dish_editor.h"
#include "writing/kitchen_editor.h"

namespace rangeline {

BookWriting::BookWriting(BookDesk& desk, const QLocale& locale, QWidget& window)
    : QObject(&window), desk_(desk), locale_(locale), window_(window) {}

Units BookWriting::units() const {
    return locale_.measurementSystem() == QLocale::MetricSystem ? Units::Metric
                                                                : Units::UsCustomary;
}

void BookWriting::writeDish() {
    editDish(newDish(tr("New dish").toStdString()), {});
}

void BookWriting::changeDish(ItemId item) {
    desk_.book()->ask([item](Book& book) { return book.dish(item); },
                      [this, item](Result<Dish, BookFault> dish) {
                          if (dish.ok()) {
                              editDish(std::move(dish.value()), item);
                          } else {
                              desk_.sayFault(dish.error());
                          }
                      });
}

void BookWriting::editDish(Dish dish, std::optional<ItemId> item) {
    DishEditor editor(std::move(dish), units(), &window_);
    if (editor.exec() == QDialog::Accepted) {
        keep(editor.dish(), item);
    }
}

void BookWriting::keepBy(const std::function<std::optional<BookFault>(Book&)>& write,
                         const QString& done) {
    desk_.book()->ask(write, [this, done](const std::optional<BookFault>& fault) {
        if (fault) {
            desk_.sayFault(*fault);
            return;
        }
        desk_.book()->refresh();
        Q_EMIT desk_.said(done);
    });
}

void BookWriting::keep(const Dish& dish, std::optional<ItemId> item) {
    keepBy(
        [dish, item](Book& book) -> std::optional<BookFault> {
            if (item) {
                return replaceDish(book, *item, dish);
            }
            const auto added = addDish(book, dish);
            return added.ok() ? std::nullopt : std::optional(added.error());
        },
        tr("“%1” is a dish of the book now; New lesson serves it.")
            .arg(QString::fromStdString(dish.name)));
}

void BookWriting::keep(const Kitchen& kitchen, std::optional<ItemId> item) {
    keepBy(
        [kitchen, item](Book& book) -> std::optional<BookFault> {
            if (item) {
                return replaceKitchen(book, *item, kitchen);
            }
            const auto added = addKitchen(book, kitchen);
            return added.ok() ? std::nullopt : std::optional(added.error());
        },
        tr("“%1” is a kitchen of the book now; New lesson offers it.")
            .arg(QString::fromStdString(kitchen.name)));
}

void BookWriting::writeKitchen() {
    QStringList names;
    for (const StartingKitchen& each : startingKitchens()) {
        names << QString::fromStdString(each.make().name);
    }
    bool chosen = false;
    const QString name = QInputDialog::getItem(
        &window_, tr("Write down a kitchen"),
        tr("Which is nearest to yours? All of it can be changed."), names, 0, false, &chosen);
    if (chosen) {
        const auto number = static_cast<std::size_t>(names.indexOf(name));
        editKitchen(startingKitchens()[number].make(), {});
    }
}

void BookWriting::changeKitchen(ItemId item) {
    desk_.book()->ask([item](Book& book) { return book.kitchen(item); },
                      [this, item](Result<Kitchen, BookFault> kitchen) {
                          if (kitchen.ok()) {
                              editKitchen(std::move(kitchen.value()), item);
                          } else {
                              desk_.sayFault(kitchen.error());
                          }
                      });
}

void BookWriting::editKitchen(Kitchen kitchen, std::optional<ItemId> item) {
    KitchenEditor editor(std::move(kitchen), units(), &window_);
    if (editor.exec() == QDialog::Accepted) {
        keep(editor.kitchen(), item);
    }
}

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
    RecipePreview preview(std::move(read.value()), locale_, &window_);
    if (preview.exec() == QDialog::Accepted) {
        keep(preview.chosen().dish, {});
    }
}

}  // namespace rangeline
