#pragma once
// The book as a file among others: what its first bytes say, who holds it, whether it is still the
// one that was opened. For core/book only.

#include <sys/types.h>

#include <cstdint>
#include <optional>
#include <string>

#include "base/result.h"
#include "book/book_fault.h"

namespace rangeline {

struct BookHeader {
    int version = 0;
};

/// Larger files are refused unread.
inline constexpr std::int64_t largestBook = 1'000'000'000;

/// Reads the first 100 bytes. Requires that this process has no connection to the file: closing a
/// file drops all of the process's locks on it (POSIX).
Result<BookHeader, BookFault> readHeader(const std::string& path);
/// Whether its first bytes are those of SQLite's files. Requires what readHeader requires.
bool startsLikeBook(const std::string& path);
/// Whether a change was under way when the last writer ended.
bool hasJournal(const std::string& path);
bool mayWrite(const std::string& path);
/// Makes a rename in the folder of this path last.
void syncFolderOf(const std::string& path);

/// Holds the file against other processes that would write, as long as it lives; a crash lets go.
/// Independent of SQLite's own locks, which are held for moments only.
class FileHold {
  public:
    FileHold() = default;
    ~FileHold();
    FileHold(const FileHold&) = delete;
    FileHold& operator=(const FileHold&) = delete;
    /// False if another holds it. Where the file system knows no such locks there is none: changes
    /// by others are still noticed.
    bool take(const std::string& path);

  private:
    int file_ = -1;
};

/// Which file it is, and when it was last written.
class FileStamp {
  public:
    explicit FileStamp(const std::string& path);
    /// What has happened to the file since; after own writes take a new stamp.
    std::optional<BookFault> difference(const std::string& path) const;
    /// Whether both are of the same file that is there, whatever was written to it.
    bool isOfSameFile(const FileStamp& other) const;

  private:
    bool there_ = false;
    dev_t device_ = 0;
    ino_t inode_ = 0;
    std::int64_t seconds_ = 0, nanoseconds_ = 0, size_ = 0;
};

}  // namespace rangeline
