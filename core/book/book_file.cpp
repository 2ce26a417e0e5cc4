#include "book/book_file.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <string_view>

#include "book/schema.h"

namespace rangeline {
namespace {

constexpr std::size_t headerSize = 100;
using Header = std::array<unsigned char, headerSize>;

std::int64_t big32(const Header& header, std::size_t at) {
    std::int64_t value = 0;
    for (std::size_t i = at; i < at + 4; ++i) {
        value = value * 256 + header[i];
    }
    return value;
}

std::string folderOf(const std::string& path) {
    const auto slash = path.rfind('/');
    return slash == std::string::npos ? "." : path.substr(0, slash + 1);
}

constexpr std::string_view magic("SQLite format 3\0", 16);

Result<BookHeader, BookFault> judge(const Header& header) {
    // Offsets: "Database File Format" of SQLite's documentation, section 1.3.
    constexpr std::size_t writeMode = 18, readMode = 19, userVersion = 60, applicationId = 68;
    if (std::memcmp(header.data(), magic.data(), magic.size()) != 0 ||
        big32(header, applicationId) != bookApplicationId) {
        return BookFault{BookFaultCode::NotABook, {}, {}};
    }
    if (header[writeMode] != 1 || header[readMode] != 1) {
        return BookFault{BookFaultCode::ForeignMode, {}, {}};
    }
    const std::int64_t version = big32(header, userVersion);
    if (version < 1 || version > 1'000'000) {
        return BookFault{BookFaultCode::ForeignSchema, {"version " + std::to_string(version)}, {}};
    }
    return BookHeader{static_cast<int>(version)};
}

}  // namespace

Result<BookHeader, BookFault> readHeader(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    struct stat status {};
    if (file < 0 || fstat(file, &status) != 0) {
        const BookFault fault{BookFaultCode::CannotOpen, {std::strerror(errno)}, {}};
        if (file >= 0) {
            ::close(file);
        }
        return fault;
    }
    Header header{};
    const ssize_t got = S_ISREG(status.st_mode) ? ::read(file, header.data(), headerSize) : -1;
    ::close(file);
    if (!S_ISREG(status.st_mode)) {
        return BookFault{BookFaultCode::NotABook, {}, {}};
    }
    if (status.st_size == 0) {
        return BookFault{BookFaultCode::EmptyFile, {}, {}};
    }
    if (status.st_size > largestBook) {
        return BookFault{BookFaultCode::TooLarge,
                         {std::to_string(status.st_size), std::to_string(largestBook)},
                         {}};
    }
    if (got != static_cast<ssize_t>(headerSize)) {
        return BookFault{BookFaultCode::NotABook, {}, {}};
    }
    return judge(header);
}

bool startsLikeBook(const std::string& path) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error)) {
        return false;  // reading a pipe would take its bytes away
    }
    std::ifstream file(path, std::ios::binary);
    std::array<char, magic.size()> start{};
    return file.read(start.data(), start.size()) &&
           std::string_view(start.data(), start.size()) == magic;
}

bool hasJournal(const std::string& path) {
    struct stat status {};
    return stat((path + "-journal").c_str(), &status) == 0 && status.st_size > 0;
}

bool mayWrite(const std::string& path) {
    return access(path.c_str(), W_OK) == 0 && access(folderOf(path).c_str(), W_OK) == 0;
}

void syncFolderOf(const std::string& path) {
    const int folder = ::open(folderOf(path).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder >= 0) {
        static_cast<void>(fsync(folder));
        ::close(folder);
    }
}

FileHold::~FileHold() {
    if (file_ >= 0) {
        ::close(file_);
    }
}

bool FileHold::take(const std::string& path) {
    file_ = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    return file_ < 0 || flock(file_, LOCK_EX | LOCK_NB) == 0 || errno != EWOULDBLOCK;
}

FileStamp::FileStamp(const std::string& path) {
    struct stat status {};
    there_ = stat(path.c_str(), &status) == 0;
    device_ = status.st_dev;
    inode_ = status.st_ino;
    seconds_ = status.st_mtim.tv_sec;
    nanoseconds_ = status.st_mtim.tv_nsec;
    size_ = status.st_size;
}

bool FileStamp::isOfSameFile(const FileStamp& other) const {
    return there_ && other.there_ && device_ == other.device_ && inode_ == other.inode_;
}

std::optional<BookFault> FileStamp::difference(const std::string& path) const {
    const FileStamp now(path);
    if (!now.there_) {
        return BookFault{BookFaultCode::Gone, {}, {}};
    }
    if (!isOfSameFile(now)) {
        return BookFault{BookFaultCode::Replaced, {}, {}};
    }
    if (now.seconds_ != seconds_ || now.nanoseconds_ != nanoseconds_ || now.size_ != size_) {
        return BookFault{BookFaultCode::ChangedElsewhere, {}, {}};
    }
    return std::nullopt;
}

}  // namespace rangeline
