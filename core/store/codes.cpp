#include "core/store/codes.h"

#include "core/store/inner.h"
#include "core/store/statement.h"

#include <utility>

namespace riband::store {

namespace {

std::int64_t nextOf(Connection& connection, CodeKind kind) {
    const auto number = only<std::int64_t>(connection, "SELECT next FROM code_counter WHERE kind = ?", kind);
    if (!number) throw StoreError{StoreError::Kind::Corrupt, connection.path(), "no counter of codes"};
    return *number;
}

} // namespace

/// Inside a transaction nobody else gives codes, so the counter is read and written once.
Code giveCode(Connection& connection, CodeKind kind) {
    auto& waiting = connection.inner().waiting.nextCodes;
    auto next = waiting.find(kind);
    if (next == waiting.end()) next = waiting.emplace(kind, nextOf(connection, kind)).first;
    const Code code = Code::next(kind, next->second);
    if (!connection.inner().inTransaction) writeCodes(connection);
    return code;
}

void writeCodes(Connection& connection) {
    for (const auto& [kind, next] : std::exchange(connection.inner().waiting.nextCodes, {}))
        change(connection, "UPDATE code_counter SET next = ? WHERE kind = ?", next, kind);
}

} // namespace riband::store
