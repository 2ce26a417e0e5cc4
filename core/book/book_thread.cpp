#include "book/book_thread.h"

namespace rangeline {

BookThread::BookThread(const std::string& path, BookAccess wanted, Verified verified)
    : thread_(
          [this, path, wanted, verified = std::move(verified)] { run(path, wanted, verified); }) {}

BookThread::~BookThread() {
    {
        const std::lock_guard lock(mutex_);
        ending_ = true;
    }
    changed_.notify_all();
    thread_.join();
}

void BookThread::post(Work work) {
    {
        const std::lock_guard lock(mutex_);
        works_.push_back(std::move(work));
    }
    changed_.notify_all();
}

/// Nothing once all is done and the end has come.
std::optional<BookThread::Work> BookThread::next() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return ending_ || !works_.empty(); });
    if (works_.empty()) {
        return std::nullopt;
    }
    Work work = std::move(works_.front());
    works_.pop_front();
    return work;
}

void BookThread::run(const std::string& path, BookAccess wanted, const Verified& verified) {
    auto opened = Book::open(path, wanted);
    if (!opened.ok()) {
        verified(nullptr, opened.error());
        return;
    }
    Book& book = *opened.value();
    const auto fault = book.verify([this] {
        const std::lock_guard lock(mutex_);
        // With work waiting the check must end first, whatever it costs.
        return ending_ && works_.empty();
    });
    verified(&book, fault);
    while (const auto work = next()) {
        (*work)(book);
    }
}

}  // namespace rangeline
