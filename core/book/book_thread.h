#pragma once
// A book on a thread of its own, so that a window never waits for a disk. Work is done in the order
// in which it was asked for, after the book has been verified; so no write comes before that.

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <string>
#include <thread>

#include "book/book.h"

namespace rangeline {

class BookThread {
  public:
    /// Called on the book's thread. A window hands on what it is told to its own thread.
    using Work = std::function<void(Book& book)>;
    /// The book once it is verified, or as it stays where it cannot be; or why there is none.
    using Verified = std::function<void(Book* book, const std::optional<BookFault>& fault)>;

    /// Opens and verifies at once. Another Book of the same path, opened before and read on the
    /// caller's thread, shows it meanwhile.
    BookThread(const std::string& path, BookAccess wanted, Verified verified);
    /// Does what was asked for, but stops verifying.
    ~BookThread();
    BookThread(const BookThread&) = delete;
    BookThread& operator=(const BookThread&) = delete;

    /// Not called where the book could not be opened. Writes to a book that is not writable give
    /// their fault.
    void post(Work work);

  private:
    void run(const std::string& path, BookAccess wanted, const Verified& verified);
    std::optional<Work> next();

    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<Work> works_;
    bool ending_ = false;
    std::thread thread_;
};

}  // namespace rangeline
