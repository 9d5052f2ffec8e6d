#include "core/store/codes.h"

#include "core/store/statement.h"

namespace riband::store {

Code giveCode(Connection& connection, CodeKind kind) {
    auto number = only<std::int64_t>(connection, "SELECT next FROM code_counter WHERE kind = ?", kind);
    if (!number) throw StoreError{StoreError::Kind::Corrupt, connection.path(), "no counter of codes"};
    const Code code = Code::next(kind, *number);
    change(connection, "UPDATE code_counter SET next = ? WHERE kind = ?", *number, kind);
    return code;
}

} // namespace riband::store
