#include "core/shop/people.h"

#include "core/shop/demand.h"

#include <algorithm>

namespace riband::shop {

namespace {

using store::Person;
using store::Role;
using Why = Refusal::Why;

bool isLetterOrDigit(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || (c & 0x80) != 0;
}

void demandInitials(const Person& person, const std::vector<Person>& all) {
    const std::string& initials = person.initials;
    constexpr std::size_t most = 8; // bytes: four letters of any alphabet in use
    const bool written = !initials.empty() && initials.size() <= most &&
                         std::all_of(initials.begin(), initials.end(), isLetterOrDigit);
    const bool taken = std::any_of(all.begin(), all.end(), [&](const Person& other) {
        return other.id != person.id && other.initials == initials;
    });
    if (!written || taken) refuse(Why::InitialsTaken, initials);
}

void demandOwnerWithout(const Person& changed, const std::vector<Person>& all) {
    const auto owns = [](const Person& person) { return !person.gone && person.role == Role::Owner; };
    const bool others = std::any_of(all.begin(), all.end(), [&](const Person& person) {
        return owns(person) && person.id != changed.id;
    });
    if (!others && !owns(changed)) refuse(Why::LastOwner, changed.initials);
}

bool isNumber(const std::string& number) {
    constexpr std::size_t fewest = 4, most = 12;
    return number.empty() ||
           (number.size() >= fewest && number.size() <= most &&
            std::all_of(number.begin(), number.end(), [](char c) { return c >= '0' && c <= '9'; }));
}

void lock(store::People& people, store::PersonId id, const std::optional<std::string>& number) {
    if (!number) return;
    if (!isNumber(*number)) refuse(Why::BadNumber, {});
    people.lock(id, *number);
}

} // namespace

void demandRole(const Shop& shop, Role least) {
    if (store::People{shop.connection}.at(shop.person).role < least)
        refuse(Why::NotTheirs, std::to_string(static_cast<int>(least)));
}

store::PersonId addPerson(const Shop& shop, const Person& person, const std::optional<std::string>& number) {
    store::Transaction transaction{shop.connection};
    demandRole(shop, Role::Owner);
    store::People people{shop.connection};
    demandInitials(person, people.all());
    const auto id = people.add(person.initials, person.name, person.role);
    lock(people, id, number);
    transaction.commit();
    return id;
}

void changePerson(const Shop& shop, const Person& person, const std::optional<std::string>& number) {
    store::Transaction transaction{shop.connection};
    demandRole(shop, Role::Owner);
    store::People people{shop.connection};
    const auto all = people.all();
    demandInitials(person, all);
    demandOwnerWithout(person, all);
    people.change(person);
    lock(people, person.id, number);
    transaction.commit();
}

} // namespace riband::shop
