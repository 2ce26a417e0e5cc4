#pragma once
// A disk that fails at the n-th time something is asked of it: SQLite's own way to the disk,
// wrapped.

#include <cstdint>

namespace rangeline::test {

enum class DiskTrouble : std::uint8_t { Error, Full };

/// While it lives, the n-th write, sync, truncation or deletion (counted from 1) of this process
/// fails, and with `sticky` all that follow. Only one at a time.
class FailingDisk {
  public:
    FailingDisk(int nth, DiskTrouble trouble, bool sticky);
    ~FailingDisk();
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;

    /// Whether it has come to that.
    bool failed() const;

    /// Must be called before the first book is opened; may be called again.
    static void install();
};

}  // namespace rangeline::test
