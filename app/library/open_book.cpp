#include "library/open_book.h"

#include <QFile>
#include <algorithm>

namespace rangeline {

std::string nameOnDisk(const QString& path) {
    return QFile::encodeName(path).toStdString();
}

Result<std::unique_ptr<OpenBook>, BookFault> OpenBook::open(const QString& path) {
    std::vector<Item> items;
    {
        auto shown = Book::open(nameOnDisk(path), BookAccess::ReadOnly);
        if (!shown.ok()) {
            return shown.error();
        }
        auto listed = shown.value()->items();
        if (!listed.ok()) {
            return listed.error();
        }
        items = std::move(listed.value());
    }
    return std::unique_ptr<OpenBook>(new OpenBook(path, std::move(items)));
}

OpenBook::OpenBook(QString path, std::vector<Item> items)
    : path_(std::move(path)),
      items_(std::move(items)),
      search_(std::make_shared<std::unique_ptr<Search>>()) {
    const auto verified = [this](const Book* book, const std::optional<BookFault>& fault) {
        // A book that is whole may still be one that can only be read.
        const auto why = fault || book == nullptr ? fault : book->whyNotWritable();
        QMetaObject::invokeMethod(
            this, [this, why] { settle(why); }, Qt::QueuedConnection);
    };
    thread_ = std::make_unique<BookThread>(nameOnDisk(path_), BookAccess::ReadWrite, verified);
}

OpenBook::~OpenBook() {
    thread_->post([search = search_](Book&) { search->reset(); });
    thread_.reset();
}

const Item* OpenBook::item(ItemId id) const {
    const auto found = std::ranges::find(items_, id, &Item::id);
    return found == items_.end() ? nullptr : &*found;
}

void OpenBook::settle(std::optional<BookFault> why) {
    why_ = std::move(why);
    settled_ = true;
    Q_EMIT settled();
}

void OpenBook::refresh() {
    const auto list = [search = search_](Book& book) {
        search->reset();
        return book.items();
    };
    ask(list, [this](Result<std::vector<Item>, BookFault> listed) {
        if (listed.ok()) {
            items_ = std::move(listed.value());
            Q_EMIT itemsChanged();
        }
    });
}

void OpenBook::find(const QString& words, std::function<void(std::vector<Hit>)> then) {
    const auto look = [search = search_, words = words.toStdString()](Book& book) {
        if (!*search) {
            *search = std::make_unique<Search>();
            (*search)->fill(book);
        }
        return (*search)->find(words);
    };
    ask(look, std::move(then));
}

}  // namespace rangeline
