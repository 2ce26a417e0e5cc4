#include "live_store/service_file.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QCryptographicHash>
#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <optional>

#include "exchange/safe_write.h"
#include "live_store/entry_text.h"

namespace rangeline::live {
namespace {

constexpr std::size_t sealLength = 16;

/// Of a line that follows one with the seal `before`.
std::string sealAfter(const std::string& before, const QByteArray& text) {
    return QCryptographicHash::hash(QByteArray::fromStdString(before) + text,
                                    QCryptographicHash::Sha256)
        .toHex()
        .left(sealLength)
        .toStdString();
}

std::string lineOf(const std::string& seal, const QByteArray& text) {
    return seal + ' ' + text.toStdString() + '\n';
}

bool writeWhole(int file, const std::string& bytes) {
    std::size_t done = 0;
    while (done < bytes.size()) {
        const ssize_t written = ::write(file, bytes.data() + done, bytes.size() - done);
        if (written < 0 && errno == EINTR) {
            continue;
        }
        if (written <= 0) {
            return false;
        }
        done += static_cast<std::size_t>(written);
    }
    return ::fdatasync(file) == 0;
}

/// Whether the file ends there now.
bool cutTo(int file, std::int64_t size) {
    struct stat found {};
    return ::fstat(file, &found) == 0 &&
           (found.st_size == size || ::ftruncate(file, static_cast<off_t>(size)) == 0);
}

/// A new name in a folder is on the disk only once the folder is.
bool syncFolderOf(const std::string& path) {
    const auto folder = std::filesystem::absolute(path).parent_path();
    const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    const bool done = file >= 0 && ::fsync(file) == 0;
    if (file >= 0) {
        ::close(file);
    }
    return done;
}

/// Locked for this program; -1 with the fault where it cannot be.
int openLocked(const std::string& path, FileFault& fault) {
    const int file = ::open(path.c_str(), O_RDWR | O_APPEND | O_CLOEXEC);
    if (file < 0) {
        fault = errno == ENOENT ? FileFault::NotThere : FileFault::CannotWrite;
        return -1;
    }
    if (::flock(file, LOCK_EX | LOCK_NB) != 0) {
        ::close(file);
        fault = FileFault::Elsewhere;
        return -1;
    }
    return file;
}

/// Nothing where some of it cannot be read.
std::optional<std::string> readBytes(int file) {
    std::string bytes;
    char buffer[65536];
    while (true) {
        const ssize_t got = ::pread(file, buffer, sizeof buffer, static_cast<off_t>(bytes.size()));
        if (got == 0) {
            return bytes;
        }
        if (got > 0) {
            bytes.append(buffer, static_cast<std::size_t>(got));
        } else if (errno != EINTR) {
            return std::nullopt;
        }
    }
}

/// The text of a line (without its end) if its seal follows `before`, which becomes its own.
std::optional<QByteArray> textOfLine(const std::string& line, std::string& before) {
    if (line.size() <= sealLength || line[sealLength] != ' ') {
        return std::nullopt;
    }
    const QByteArray text = QByteArray::fromStdString(line.substr(sealLength + 1));
    std::string seal = sealAfter(before, text);
    if (line.compare(0, sealLength, seal) != 0) {
        return std::nullopt;
    }
    before = std::move(seal);
    return text;
}

}  // namespace

Result<std::unique_ptr<ServiceFile>, FileFault> ServiceFile::begin(const std::string& path,
                                                                   const ServiceHead& head) {
    FileFault fault{};
    if (const int before = openLocked(path, fault); before >= 0) {
        ::close(before);
    } else if (fault == FileFault::Elsewhere) {
        return fault;
    }
    const QByteArray text = headText(head);
    if (writeFile(path, lineOf(sealAfter({}, text), text)) || !syncFolderOf(path)) {
        return FileFault::CannotWrite;
    }
    return open(path);
}

Result<std::unique_ptr<ServiceFile>, FileFault> ServiceFile::open(const std::string& path) {
    FileFault fault{};
    const int file = openLocked(path, fault);
    if (file < 0) {
        return fault;
    }
    std::unique_ptr<ServiceFile> opened(new ServiceFile(path, file));
    if (!opened->readAll()) {
        return FileFault::Unreadable;
    }
    return opened;
}

ServiceFile::~ServiceFile() {
    ::close(file_);
}

bool ServiceFile::readAll() {
    const auto read = readBytes(file_);
    if (!read) {
        return false;
    }
    const std::string& bytes = *read;
    std::size_t from = 0;
    bool headRead = false;
    for (std::size_t end = 0; (end = bytes.find('\n', from)) != std::string::npos; from = end + 1) {
        std::string seal = seal_;
        const auto text = textOfLine(bytes.substr(from, end - from), seal);
        auto head = text && !headRead ? readHead(*text) : std::nullopt;
        auto entry = text && headRead ? readEntry(*text) : std::nullopt;
        if (!head && !entry) {
            break;
        }
        if (head) {
            head_ = *std::move(head);
            headRead = true;
        } else {
            entries_.push_back(*std::move(entry));
        }
        seal_ = std::move(seal);
        size_ = static_cast<std::int64_t>(end + 1);
    }
    return headRead && keepGoodPart(bytes);
}

bool ServiceFile::keepGoodPart(const std::string& bytes) {
    const std::string rest = bytes.substr(static_cast<std::size_t>(size_));
    if (rest.empty()) {
        return true;
    }
    damaged_ = static_cast<int>(std::ranges::count(rest, '\n'));
    torn_ = damaged_ == 0;
    if (damaged_ > 0 && writeFile(path_ + ".damaged", bytes)) {
        return false;
    }
    return cutTo(file_, size_) && ::fsync(file_) == 0;
}

bool ServiceFile::append(const std::vector<Entry>& entries) {
    std::string bytes;
    std::string seal = seal_;
    for (const Entry& entry : entries) {
        const QByteArray text = entryText(entry);
        seal = sealAfter(seal, text);
        bytes += lineOf(seal, text);
    }
    if (!cutTo(file_, size_) || !writeWhole(file_, bytes)) {
        cutTo(file_, size_);  // what a full disk let through; if not now, then before the next line
        return false;
    }
    size_ += static_cast<std::int64_t>(bytes.size());
    seal_ = std::move(seal);
    return true;
}

bool ServiceFile::remove() {
    return ::unlink(path_.c_str()) == 0 && syncFolderOf(path_);
}

}  // namespace rangeline::live
