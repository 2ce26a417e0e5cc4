#pragma once
// Dishes of the open book, written anew or changed, and recipes fetched into it.

#include <QLocale>
#include <QObject>
#include <QWidget>
#include <functional>

#include "library/book_desk.h"

namespace rangeline {

class BookWriting : public QObject {
    Q_OBJECT

  public:
    /// Dialogs appear over `window`.
    BookWriting(BookDesk& desk, const QLocale& locale, QWidget& window);

    /// After asking which kitchen to begin with.
    void writeKitchen();
    void changeKitchen(ItemId kitchen);
    void writeDish();
    void changeDish(ItemId dish);
    /// Asks for a page or a file with recipes, and shows what is in it before it is stored.
    void fetchRecipe();

  private:
    void takeRecipe(const QString& path);
    void editKitchen(Kitchen kitchen, std::optional<ItemId> item);
    void editDish(Dish dish, std::optional<ItemId> item);
    void keep(const Dish& dish, std::optional<ItemId> item);
    void keep(const Kitchen& kitchen, std::optional<ItemId> item);
    /// Writes, then lists the book anew and says so, or says why not.
    void keepBy(const std::function<std::optional<BookFault>(Book&)>& write, const QString& done);
    Units units() const;

    BookDesk& desk_;
    QLocale locale_;
    QWidget& window_;
};

}  // namespace rangeline
