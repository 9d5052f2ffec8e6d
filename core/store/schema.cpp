#include "core/store/schema.h"

#include "core/store/inner.h"

namespace riband::store {
namespace {

constexpr std::string_view separator = "\n-- next\n";

int versionOf(Connection::Inner& inner) { return std::stoi(inner.once("PRAGMA user_version")); }

void take(Connection& connection, const Migration& step) {
    Transaction transaction{connection};
    auto& inner = connection.inner();
    if (versionOf(inner) >= step.number) return; // another process was faster
    for (const auto& statement : statementsOf(step.sql))
        inner.once(statement);
    inner.once("PRAGMA user_version = " + std::to_string(step.number));
    transaction.commit();
}

} // namespace

std::vector<std::string> statementsOf(std::string_view sql) {
    std::vector<std::string> statements;
    for (;;) {
        const auto end = sql.find(separator);
        statements.emplace_back(sql.substr(0, end));
        if (end == std::string_view::npos) return statements;
        sql.remove_prefix(end + separator.size());
    }
}

void bringUp(Connection& connection, const std::vector<Migration>& steps) {
    const int version = versionOf(connection.inner());
    for (const auto& step : steps)
        if (step.number > version) take(connection, step);
}

} // namespace riband::store
