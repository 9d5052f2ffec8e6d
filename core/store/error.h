#pragma once

#include <stdexcept>
#include <string>

namespace riband::store {

/// The database can't do what was asked. Caught at the edge of one user action; nothing is half written.
class StoreError : public std::runtime_error {
public:
    enum class Kind {
        Missing,    ///< no such file
        NotAShop,   ///< a file of something else
        Newer,      ///< written by a later Riband: `detail` its schema number
        Older,      ///< only to be looked at, and the schema would have to be brought up: `detail` its number
        Corrupt,    ///< SQLite's own check says so: `detail` what
        ReadOnly,   ///< the file or its folder can't be written
        Held,       ///< another program holds it in a way that can't work (exclusive lock)
        Full,       ///< the disk
        Exists,     ///< a file is in the way
        Constraint, ///< a rule of the schema was broken
        Failed,     ///< anything else
    };
    StoreError(Kind kind, std::string path, std::string detail)
        : std::runtime_error{path + ": " + detail}, kind_{kind}, path_{std::move(path)}, detail_{std::move(
                                                                                             detail)} {}
    Kind kind() const { return kind_; }
    const std::string& path() const { return path_; }
    const std::string& detail() const { return detail_; }

private:
    Kind kind_;
    std::string path_, detail_;
};

} // namespace riband::store
