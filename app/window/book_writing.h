#pragma once
// Dishes of the open book, written anew or changed, and recipes fetched into it.

#include <QLocale>
#include <QObject>
#include <QWidget>

#include "library/book_desk.h"

namespace rangeline {

class BookWriting : public QObject {
    Q_OBJECT

  public:
    /// Dialogs appear over `window`.
    BookWriting(BookDesk& desk, const QLocale& locale, QWidget& window);

    void writeDish();
    void changeDish(ItemId dish);
    /// Asks for a page or a file with recipes, and shows what is in it before it is stored.
    void fetchRecipe();

  private:
    void takeRecipe(const QString& path);
    void editDish(Dish dish, std::optional<ItemId> item);
    void keep(const Dish& dish, std::optional<ItemId> item);
    Units units() const;

    BookDesk& desk_;
    QLocale locale_;
    QWidget& window_;
};

}  // namespace rangeline
