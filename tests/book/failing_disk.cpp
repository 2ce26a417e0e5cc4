#include "book/failing_disk.h"

#include <sqlite3.h>

#include <cstring>

namespace rangeline::test {
namespace {

int remaining = 0;
bool sticks = false;
bool hasFailed = false;
DiskTrouble kind = DiskTrouble::Error;

/// Whether this act is one that fails.
bool fails() {
    if (remaining > 0 && --remaining == 0) {
        hasFailed = true;
        return true;
    }
    return sticks && hasFailed;
}

int trouble(int error) {
    return kind == DiskTrouble::Full ? SQLITE_FULL : error;
}

/// The wrapped file lies behind this one in memory.
struct File {
    sqlite3_file base;
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

sqlite3_file* real(sqlite3_file* file) {
    return reinterpret_cast<File*>(file)->real();
}
const sqlite3_io_methods& of(sqlite3_file* file) {
    return *real(file)->pMethods;
}

sqlite3_vfs* usual = nullptr;
sqlite3_vfs failing;

const sqlite3_io_methods methods = {
    1,
    [](sqlite3_file* f) { return of(f).xClose(real(f)); },
    [](sqlite3_file* f, void* to, int n, sqlite3_int64 at) {
        return of(f).xRead(real(f), to, n, at);
    },
    [](sqlite3_file* f, const void* from, int n, sqlite3_int64 at) {
        return fails() ? trouble(SQLITE_IOERR_WRITE) : of(f).xWrite(real(f), from, n, at);
    },
    [](sqlite3_file* f, sqlite3_int64 size) {
        return fails() ? SQLITE_IOERR_TRUNCATE : of(f).xTruncate(real(f), size);
    },
    [](sqlite3_file* f, int flags) {
        return fails() ? trouble(SQLITE_IOERR_FSYNC) : of(f).xSync(real(f), flags);
    },
    [](sqlite3_file* f, sqlite3_int64* size) { return of(f).xFileSize(real(f), size); },
    [](sqlite3_file* f, int lock) { return of(f).xLock(real(f), lock); },
    [](sqlite3_file* f, int lock) { return of(f).xUnlock(real(f), lock); },
    [](sqlite3_file* f, int* out) { return of(f).xCheckReservedLock(real(f), out); },
    [](sqlite3_file* f, int op, void* arg) { return of(f).xFileControl(real(f), op, arg); },
    [](sqlite3_file* f) { return of(f).xSectorSize(real(f)); },
    [](sqlite3_file* f) { return of(f).xDeviceCharacteristics(real(f)); },
    nullptr,
    nullptr,
    nullptr,
    nullptr,
    nullptr,
    nullptr,
};

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    const int result = usual->xOpen(usual, name, real(file), flags, outFlags);
    file->pMethods = real(file)->pMethods == nullptr ? nullptr : &methods;
    return result;
}

int deleteFile(sqlite3_vfs*, const char* name, int syncFolder) {
    return fails() ? SQLITE_IOERR_DELETE : usual->xDelete(usual, name, syncFolder);
}

}  // namespace

void FailingDisk::install() {
    if (usual != nullptr) {
        return;
    }
    usual = sqlite3_vfs_find(nullptr);
    failing = *usual;
    failing.zName = "failing-disk";
    failing.szOsFile = static_cast<int>(sizeof(File)) + usual->szOsFile;
    failing.xOpen = &openFile;
    failing.xDelete = &deleteFile;
    sqlite3_vfs_register(&failing, 1);
}

FailingDisk::FailingDisk(int nth, DiskTrouble wanted, bool sticky) {
    remaining = nth;
    kind = wanted;
    sticks = sticky;
    hasFailed = false;
}

FailingDisk::~FailingDisk() {
    remaining = 0;
    sticks = false;
}

bool FailingDisk::failed() const {
    return hasFailed;
}

}  // namespace rangeline::test
