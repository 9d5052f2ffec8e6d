#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <string>

namespace riband::store {

/// Every file of a folder with its bytes and the time of its last change: equal pictures, untouched folder.
struct FilePicture {
    std::string bytes;
    std::filesystem::file_time_type changed;
    friend bool operator==(const FilePicture&, const FilePicture&) = default;
};
using FolderPicture = std::map<std::string, FilePicture>;

inline std::string bytesOf(const std::string& path) {
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

inline FolderPicture pictureOf(const std::filesystem::path& folder) {
    FolderPicture picture;
    for (const auto& entry : std::filesystem::directory_iterator{folder})
        picture[entry.path().filename().string()] = {
            entry.is_regular_file() ? bytesOf(entry.path().string()) : "", entry.last_write_time()};
    return picture;
}

} // namespace riband::store
