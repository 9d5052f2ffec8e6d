#include "core/store/shelf_lives.h"

#include "core/store/statement.h"

namespace riband::store {

namespace {

const std::string before = "shelf_life.", years = ".years", extension = ".extension";

void set(Connection& connection, const std::string& name, int value) {
    change(connection,
           "INSERT INTO setting (name, value) VALUES (?, ?)"
           " ON CONFLICT (name) DO UPDATE SET value = excluded.value",
           name, std::to_string(value));
}

} // namespace

ShelfLives readShelfLives(Connection& connection) {
    ShelfLives lives;
    try {
        Statement rows{connection, "SELECT name, value FROM setting WHERE name LIKE 'shelf_life.%'"};
        while (rows.next()) {
            const auto name = rows.get<std::string>(0);
            const int value = std::stoi(rows.get<std::string>(1));
            const auto bodyIn = [&](const std::string& end) {
                return name.substr(before.size(), name.size() - before.size() - end.size());
            };
            if (name.ends_with(years))
                lives[bodyIn(years)].years = value;
            else if (name.ends_with(extension))
                lives[bodyIn(extension)].extension = value;
        }
    } catch (const std::logic_error& broken) { // no number: put there behind our back
        throw StoreError{StoreError::Kind::Corrupt, connection.path(), broken.what()};
    }
    return lives;
}

void writeShelfLives(Connection& connection, const ShelfLives& lives) {
    for (const auto& [body, life] : lives) {
        set(connection, before + body + years, life.years);
        set(connection, before + body + extension, life.extension);
    }
}

} // namespace riband::store
