#pragma once
// The book that a window has open. All work on it is done on the book's own thread; the answers
// come back to this one.

#include <QMetaObject>
#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "book/book_thread.h"
#include "book/search.h"

namespace rangeline {

/// As the file system writes it.
std::string nameOnDisk(const QString& path);

class OpenBook : public QObject {
    Q_OBJECT

  public:
    /// Lists the book at once; it is checked on its own thread, and only then written.
    static Result<std::unique_ptr<OpenBook>, BookFault> open(const QString& path);
    /// Waits for what was asked for.
    ~OpenBook() override;

    const QString& path() const { return path_; }
    /// As last read, deleted ones too.
    const std::vector<Item>& items() const { return items_; }
    const Item* item(ItemId id) const;
    /// While it is being checked NotVerified; then what keeps it from being written, if anything.
    const std::optional<BookFault>& whyNotWritable() const { return why_; }
    bool isSettled() const { return settled_; }

    /// Does the work on the book's thread, after all that was asked for before, and hands its
    /// answer to `then` on this one. Nothing is handed over once this book is closed.
    template <class Work, class Then>
    void ask(Work work, Then then) {
        thread_->post([this, work = std::move(work), then = std::move(then)](Book& book) {
            auto answer = std::make_shared<decltype(work(book))>(work(book));
            QMetaObject::invokeMethod(
                this, [answer, then] { then(std::move(*answer)); }, Qt::QueuedConnection);
        });
    }
    /// Reads the list again; itemsChanged() follows.
    void refresh();
    /// Best first. See Search::find.
    void find(const QString& words, std::function<void(std::vector<Hit>)> then);

  Q_SIGNALS:
    void settled();
    void itemsChanged();

  private:
    OpenBook(QString path, std::vector<Item> items);
    void settle(std::optional<BookFault> why);

    QString path_;
    std::vector<Item> items_;
    std::optional<BookFault> why_ = BookFault{BookFaultCode::NotVerified, {}, {}};
    bool settled_ = false;
    std::shared_ptr<std::unique_ptr<Search>> search_;  ///< the thread's; empty: made anew
    std::unique_ptr<BookThread> thread_;
};

}  // namespace rangeline
