#include "core/store/fault.h"

#include <sqlite3.h>

namespace riband::store {
namespace {

StoreError::Kind kindOf(int primaryCode) {
    using Kind = StoreError::Kind;
    switch (primaryCode) {
    case SQLITE_NOTADB:
        return Kind::NotAShop;
    case SQLITE_CORRUPT:
        return Kind::Corrupt;
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return Kind::ReadOnly;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Kind::Held;
    case SQLITE_FULL:
        return Kind::Full;
    case SQLITE_CONSTRAINT:
        return Kind::Constraint;
    default:
        return Kind::Failed;
    }
}

} // namespace

StoreError faultOf(int code, const std::string& path, const std::string& detail) {
    return {kindOf(code & 0xff), path, detail};
}

} // namespace riband::store
