#pragma once

#include "core/store/connection.h"
#include "core/store/id.h"

#include <string>
#include <vector>

namespace riband::store {

/// What a person sees and does; each role may all that the one before may (docs/clerk.md).
enum class Role : std::uint8_t { Clerk, StockManager, Owner };

struct Person {
    PersonId id;
    std::string initials;
    std::string name;
    Role role = Role::Clerk;
    bool locked = false; ///< asks for a number before somebody acts in this name
    bool gone = false;   ///< acts no more; what was done keeps the name
};

/// The people of the shop. The only code that names the table `person`.
class People {
public:
    explicit People(Connection& connection) : connection_{connection} {}
    std::vector<Person> all() const;     ///< by initials, also those who left
    std::vector<Person> present() const; ///< by initials, who may act
    Person at(PersonId id) const;        ///< throws StoreError if there is none
    PersonId add(const std::string& initials, const std::string& name, Role role);
    void change(const Person& person); ///< initials, name, role and gone
    /// Keeps what is derived from the number, never the number (PBKDF2 with SHA-256, RFC 8018); "" unlocks.
    void lock(PersonId id, const std::string& number);
    bool unlocks(PersonId id, const std::string& number) const; ///< true for who is not locked

private:
    Connection& connection_;
};

} // namespace riband::store
