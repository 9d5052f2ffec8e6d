#pragma once

#include <string>

namespace riband::store {

/// Where a symbolic link leads to; any other path as it is.
std::string resolved(const std::string& path);
bool isFile(const std::string& path);
bool hasFolder(const std::string& path);
/// Asked of the system for the user that acts; no file is opened.
bool canWriteFile(const std::string& path);
bool canWriteFolderOf(const std::string& path);

/// A name beside `path` that is not taken: "shop.riband.new", "shop.riband.new-2".
std::string freeNameBeside(const std::string& path, const std::string& ending);
/// Gives `from`, a file in the same folder that nobody has open, the name `to`, and makes both file and name
/// last through a loss of power. Throws StoreError; Exists if there is such a file and `replace` is false.
void takeName(const std::string& from, const std::string& to, bool replace);

/// A file that is deleted, with what SQLite keeps beside it, unless it was given another name.
class UnfinishedFile {
public:
    explicit UnfinishedFile(std::string path) : path_{std::move(path)} {}
    ~UnfinishedFile();
    UnfinishedFile(const UnfinishedFile&) = delete;
    UnfinishedFile& operator=(const UnfinishedFile&) = delete;
    const std::string& path() const { return path_; }

private:
    std::string path_;
};

} // namespace riband::store
