#include "core/store/files.h"

#include "core/store/error.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>

namespace riband::store {
namespace {

namespace fs = std::filesystem;

std::string folderOf(const std::string& path) {
    const auto folder = fs::path{path}.parent_path();
    return folder.empty() ? "." : folder.string();
}

bool canWrite(const std::string& path) { return ::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0; }

[[noreturn]] void fail(const std::string& path, int error) {
    using Kind = StoreError::Kind;
    const bool refused = error == EACCES || error == EPERM || error == EROFS;
    const bool full = error == ENOSPC || error == EDQUOT;
    throw StoreError{refused           ? Kind::ReadOnly
                     : full            ? Kind::Full
                     : error == EEXIST ? Kind::Exists
                                       : Kind::Failed,
                     path, std::strerror(error)};
}

void makeLast(const std::string& path) {
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) fail(path, errno);
    const int failed = ::fsync(descriptor) == 0 ? 0 : errno;
    ::close(descriptor);
    // Some file systems can't sync a folder; the name is then as safe as they make it.
    if (failed != 0 && failed != EINVAL) fail(path, failed);
}

int renameWithoutReplacing(const std::string& from, const std::string& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return 0;
    if (errno != EINVAL && errno != ENOSYS) return errno;
    // A file system without that promise (FAT): look first.
    if (fs::exists(to)) return EEXIST;
    return ::rename(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

} // namespace

std::string resolved(const std::string& path) {
    std::error_code ignored;
    return fs::is_symlink(path, ignored) ? fs::canonical(path).string() : path;
}

bool isFile(const std::string& path) {
    std::error_code ignored;
    return fs::is_regular_file(path, ignored);
}

bool hasFolder(const std::string& path) {
    std::error_code ignored;
    return fs::is_directory(folderOf(path), ignored);
}

bool canWriteFile(const std::string& path) { return canWrite(path); }
bool canWriteFolderOf(const std::string& path) { return canWrite(folderOf(resolved(path))); }

std::string freeNameBeside(const std::string& path, const std::string& ending) {
    std::string name = path + ending;
    for (int i = 2; fs::exists(name); ++i)
        name = path + ending + "-" + std::to_string(i);
    return name;
}

void takeName(const std::string& from, const std::string& to, bool replace) {
    makeLast(from);
    const int failed = !replace                                  ? renameWithoutReplacing(from, to)
                       : ::rename(from.c_str(), to.c_str()) == 0 ? 0
                                                                 : errno;
    if (failed != 0) fail(to, failed);
    makeLast(folderOf(to));
}

UnfinishedFile::~UnfinishedFile() {
    std::error_code ignored;
    for (const char* ending : {"", "-wal", "-shm", "-journal"})
        fs::remove(path_ + ending, ignored);
}

} // namespace riband::store
