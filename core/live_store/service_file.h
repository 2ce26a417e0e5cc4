#pragma once
// The file that keeps a service while it goes on: a line for its head, then one for each event. A
// line counts once it is on the disk; each carries a checksum over itself and those before it. A
// line that was being written when the program or the machine stopped is dropped: what it would
// have told had not been acted on yet.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "live/event.h"
#include "model/lesson.h"

namespace rangeline::live {

struct ServiceHead {
    std::string id;         ///< of this cooking, like no other
    std::int64_t item = 0;  ///< the lesson in its book; 0: in none
    Lesson lesson;          ///< as it was planned
    ClockAnchor begun;

    friend bool operator==(const ServiceHead&, const ServiceHead&) = default;
};

enum class FileFault : std::uint8_t {
    NotThere,    ///< no service is kept there
    Elsewhere,   ///< another program cooks along with it
    Unreadable,  ///< the head is damaged, or of a newer program; the file stays as it is
    CannotWrite
};

class ServiceFile {
  public:
    /// Replaces a file that is there, unless another program uses it. Returns when it is on the
    /// disk.
    static Result<std::unique_ptr<ServiceFile>, FileFault> begin(const std::string& path,
                                                                 const ServiceHead& head);
    /// Reads what is there and goes on with it.
    static Result<std::unique_ptr<ServiceFile>, FileFault> open(const std::string& path);
    ~ServiceFile();
    ServiceFile(const ServiceFile&) = delete;
    ServiceFile& operator=(const ServiceFile&) = delete;

    const std::string& path() const { return path_; }
    const ServiceHead& head() const { return head_; }
    /// Those read by open().
    const std::vector<Entry>& entries() const { return entries_; }
    /// The last line was only partly written.
    bool wasTorn() const { return torn_; }
    /// Lines that were whole once and are damaged, and those after them; a copy of the file with
    /// them is kept beside it, its name ends in ".damaged".
    int damagedLines() const { return damaged_; }

    /// True once they are on the disk. Otherwise none of them is in the file.
    bool append(const std::vector<Entry>& entries);
    /// The service is over and in the log: the file goes.
    bool remove();

  private:
    ServiceFile(std::string path, int file) : path_(std::move(path)), file_(file) {}
    bool readAll();
    bool keepGoodPart(const std::string& bytes);

    std::string path_;
    int file_;
    ServiceHead head_;
    std::vector<Entry> entries_;
    bool torn_ = false;
    int damaged_ = 0;
    std::int64_t size_ = 0;  ///< of what is whole
    std::string seal_;       ///< of the last whole line
};

}  // namespace rangeline::live
