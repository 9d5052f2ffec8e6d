#pragma once

#include "core/shop/shop.h"

#include <optional>
#include <string>

namespace riband::shop {

/// Throws Refusal NotTheirs unless who acts has that role or one above it.
void demandRole(const Shop& shop, store::Role least);

/// Owners keep the people. Initials are one to four letters or digits and nobody else's; an owner must stay.
/// `number`: four to twelve digits that lock the person, "" unlocks, nothing leaves the lock as it is.
store::PersonId addPerson(const Shop& shop, const store::Person& person,
                          const std::optional<std::string>& number = std::nullopt);
void changePerson(const Shop& shop, const store::Person& person,
                  const std::optional<std::string>& number = std::nullopt);

} // namespace riband::shop
