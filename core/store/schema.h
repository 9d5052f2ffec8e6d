#pragma once

#include "core/store/connection.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace riband::store {

/// Marks a file as a shop of Riband ("RbnD"); at offset 68 of the file, written when it is made.
constexpr std::int64_t applicationId = 0x52626E44;

/// One numbered step of the schema, core/store/migrations/NNNN_name.sql. A landed step never changes.
struct Migration {
    int number;
    std::string_view name;
    std::string_view sql; ///< statements with a line "-- next" between them
};

/// All steps, by number from 1 on. Made from the SQL files when the library is built.
std::vector<Migration> migrations();

/// The statements of a step.
std::vector<std::string> statementsOf(std::string_view sql);

/// Takes the steps that the shop does not have yet; each step and its version (PRAGMA user_version) in one
/// transaction. Throws StoreError; steps before the failed one stay, nothing of it does.
void bringUp(Connection& connection, const std::vector<Migration>& steps);

} // namespace riband::store
