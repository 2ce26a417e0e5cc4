#include "book/copy_file.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>

#include "book/book_file.h"
#include "book/connection.h"

namespace rangeline {
namespace {

BookFault cannotWrite(const std::string& target) {
    return {errno == ENOSPC ? BookFaultCode::DiskFull : BookFaultCode::CannotWrite,
            {target, std::strerror(errno)},
            {}};
}

std::optional<BookFault> copyPages(Connection& from, const std::string& target) {
    auto to = Connection::open(partName(target), Connection::Access::ReadWrite);
    if (!to.ok()) {
        return to.error();
    }
    sqlite3* handle = to.value()->handle();
    sqlite3_backup* backup = sqlite3_backup_init(handle, "main", from.handle(), "main");
    if (backup == nullptr) {
        to.value()->reportError();
        return to.value()->takeFault();
    }
    sqlite3_backup_step(backup, -1);
    if (sqlite3_backup_finish(backup) != SQLITE_OK) {
        to.value()->reportError();
        // The target's name, not the part's, means something to a reader.
        auto fault = to.value()->takeFault();
        if (!fault->figures.empty() && fault->figures.front() == partName(target)) {
            fault->figures.front() = target;
        }
        return fault;
    }
    return std::nullopt;
}

/// Neither a link, where there are links, nor this rename replaces what is there. Memory sticks
/// know only the one or the other; 0 once it is done, else errno says why not.
int moveWithoutReplacing(const std::string& part, const std::string& target) {
    const int linked = ::link(part.c_str(), target.c_str());
    const bool noLinks = linked != 0 && (errno == EPERM || errno == EOPNOTSUPP);
    return noLinks ? ::renameat2(AT_FDCWD, part.c_str(), AT_FDCWD, target.c_str(), RENAME_NOREPLACE)
                   : linked;
}

/// A journal left by a book of that name would be taken for one of the new book. What it takes back
/// in a book that is there still is taken back first, should the new one not come to be.
void dropOldJournal(const std::string& target) {
    const std::string journal = target + "-journal";
    if (::access(journal.c_str(), F_OK) != 0) {
        return;
    }
    if (::access(target.c_str(), F_OK) == 0) {
        auto old = Connection::open(target, Connection::Access::ReadWrite);
        if (old.ok()) {
            old.value()->number("SELECT count(*) FROM sqlite_schema");
            static_cast<void>(old.value()->takeFault());
        }
    }
    ::unlink(journal.c_str());
}

}  // namespace

std::string partName(const std::string& target) {
    const auto slash = target.rfind('/');
    const std::size_t name = slash == std::string::npos ? 0 : slash + 1;
    return target.substr(0, name) + "." + target.substr(name) + ".part";
}

void dropPart(const std::string& target) {
    ::unlink((partName(target) + "-journal").c_str());
    ::unlink(partName(target).c_str());
}

std::optional<BookFault> finishPart(const std::string& target, bool replace) {
    const std::string part = partName(target);
    if (replace || ::access(target.c_str(), F_OK) != 0) {
        dropOldJournal(target);
    }
    if (!replace) {
        const int linked = moveWithoutReplacing(part, target);
        const BookFault fault = linked == 0       ? BookFault()
                                : errno == EEXIST ? BookFault{BookFaultCode::AlreadyThere, {}, {}}
                                                  : cannotWrite(target);
        dropPart(target);
        syncFolderOf(target);
        return linked == 0 ? std::nullopt : std::optional(fault);
    }
    if (std::rename(part.c_str(), target.c_str()) != 0) {
        const BookFault fault = cannotWrite(target);
        dropPart(target);
        return fault;
    }
    syncFolderOf(target);
    return std::nullopt;
}

std::optional<BookFault> copyBook(Connection& from, const std::string& target) {
    dropPart(target);
    if (auto fault = copyPages(from, target)) {
        dropPart(target);
        return fault;
    }
    return finishPart(target, true);
}

}  // namespace rangeline
