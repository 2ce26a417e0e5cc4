#pragma once
// Dishes of the open book, written anew or changed, and recipes fetched into it.

#include <QLocale>
#include <QObject>
#include <QWidget>
#include <functional>

#include "library/book_desk.h"
#include "window/chosen_units.h"
#include "window/drafts.h"
#include "writing/own_terms.h"

namespace rangeline {

class DishEditor;

class BookWriting : public QObject {
    Q_OBJECT

  public:
    /// Dialogs appear over `window`.
    BookWriting(BookDesk& desk, const QLocale& locale, const ChosenUnits& units, QWidget& window);

    /// After asking which kitchen to begin with.
    void writeKitchen();
    void changeKitchen(ItemId kitchen);
    void writeDish();
    void changeDish(ItemId dish);
    /// Asks for a page or a file with recipes, and shows what is in it before it is stored.
    void fetchRecipe();

  private:
    void takeRecipe(const QString& path);
    void lookForInterrupted();
    void offerInterrupted(const DraftKey& key);
    void offerLearned(DishEditor& editor, const DraftKey& key);
    std::optional<bool> asksToGoOn(const std::string& name);
    /// Goes on with one that was begun, or begins another; `fresh` is what that is called.
    template <class Part>
    void beginOrGoOn(DraftSort sort, const QString& fresh,
                     const std::function<void(const DraftKey&)>& goOn,
                     const std::function<void(const DraftKey&)>& begin);
    std::optional<DraftKey> asksWhich(const std::vector<NewDraft>& drafts, DraftSort sort,
                                      const QString& fresh);
    void writeDishOf(const DraftKey& key);
    void beginKitchen(const DraftKey& key);
    void writeKitchenOf(const DraftKey& key);
    void openKitchen(const DraftKey& key, const Kitchen& fresh);
    template <class Editor, class Part, class Make>
    void open(const DraftKey& key, Make make);
    template <class Editor, class Part>
    void edit(Part part, const DraftKey& key, std::optional<Part> draft, const OwnTerms& terms);
    void keepTerms(const OwnTerms& terms);
    /// Where it cannot be kept, the cook may go on writing.
    void keep(const Dish& dish, const DraftKey& key, const std::function<void()>& goOn);
    void keep(const Kitchen& kitchen, const DraftKey& key, const std::function<void()>& goOn);
    QString isThereNow(const Dish& dish) const;
    /// Writes, then lists the book anew and says so, or says why not.
    /// Without `goOn` a fault is only said.
    void keepBy(const std::function<std::optional<BookFault>(Book&)>& write, const QString& done,
                const std::function<void()>& goOn);

    BookDesk& desk_;
    QLocale locale_;
    const ChosenUnits& units_;
    QWidget& window_;
    bool looked_ = false;   ///< for what was interrupted, in this book
    bool goingOn_ = false;  ///< that was wanted already
};

}  // namespace rangeline
