#pragma once

#include "core/store/connection.h"

#include <map>
#include <string>

namespace riband::store {

/// Whole years that a body may lie, and that an inspection adds once.
struct ShelfYears {
    int years;
    int extension;
    friend bool operator==(const ShelfYears&, const ShelfYears&) = default;
};

/// By the name of the body, as far as the shop set them itself: a part of its settings of its own, for only
/// ageing needs it. Rows of the table `setting` whose names begin with shelf_life.
using ShelfLives = std::map<std::string, ShelfYears>;
ShelfLives readShelfLives(Connection& connection);
void writeShelfLives(Connection& connection, const ShelfLives& lives);

} // namespace riband::store
