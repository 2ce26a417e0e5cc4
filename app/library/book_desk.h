#pragma once
// What the window does with books: opening one and its lessons, and the questions that belong to
// it.

#include <QObject>
#include <QWidget>
#include <memory>

#include "book/journal.h"
#include "document/lesson_document.h"
#include "library/lesson_journal.h"
#include "library/open_book.h"

namespace rangeline {

/// A lesson of a book, with the steps of its undo.
struct Contents {
    Lesson lesson;
    StepEdits steps;
};

class BookDesk : public QObject {
    Q_OBJECT

  public:
    /// Questions appear over `window`.
    BookDesk(LessonDocument& document, QWidget& window);
    ~BookDesk() override;

    /// Null while no book is open.
    OpenBook* book() { return book_.get(); }
    LessonDocument& document() { return document_; }
    /// Whether a book is open that takes changes.
    bool isWritable() const { return book_ && book_->isSettled() && !book_->whyNotWritable(); }
    LessonJournal& journal() { return *journal_; }

    bool isOpen(const QString& path) const;
    /// On a fault says why and stays as it is; the open book is opened anew. Requires mayLeave().
    bool openBook(const QString& path);
    /// An empty one, under a name that is asked for. Requires mayLeave().
    void newBook();
    /// The book of the samples, made if it is not there; where it cannot be, noBook() says why.
    bool openSamples();
    /// Why there is no book where there should be one, as a sentence; empty: it is not so.
    const QString& noBook() const { return noBook_; }
    /// lessonOpened() follows. Requires mayLeave().
    void openLesson(ItemId lesson);
    /// Puts the open lesson into the open book, unless just this lesson is there, and goes on with
    /// it there.
    void copyIntoBook();
    /// Whether the open lesson may be left: it is kept, or what could not be kept is given up.
    bool mayLeave();
    /// A copy of the whole book; what waits to be written goes on there.
    void saveCopy(const QString& target);
    void askForCopy();
    void askForSalvage();
    /// The damaged file is only read. Says what could not be read.
    void salvageTo(const QString& damaged, const QString& target);

    /// Writes on the book's thread; says the fault, if any, and lists the items anew.
    template <class Work>
    void change(Work work) {
        book_->ask(std::move(work), [this](const std::optional<BookFault>& fault) {
            if (fault) {
                sayFault(*fault);
            }
            book_->refresh();
        });
    }
    void sayFault(const BookFault& fault);

  Q_SIGNALS:
    void bookOpened();
    void lessonOpened();
    /// What is to be said of the book, or whether all is kept, may have changed.
    void stateChanged();
    void said(const QString& text);

  private:
    void take(std::unique_ptr<OpenBook> book);
    void refuse(const QString& path, const BookFault& fault);
    QString askForName(const QString& title);
    void show(ItemId id, Contents contents);

    LessonDocument& document_;
    QWidget& window_;
    std::unique_ptr<OpenBook> book_;
    LessonJournal* journal_;
    QString noBook_;
    int shown_ = 0;  ///< how many lessons the document has shown
};

}  // namespace rangeline
