#include "core/store/people.h"

#include "core/store/statement.h"

#include <QtCore/QByteArray>
#include <QtCore/QCryptographicHash>
#include <QtCore/QRandomGenerator>
#include <QtNetwork/QPasswordDigestor>

namespace riband::store {
namespace {

// A lock against a look over the counter, not against who holds the file: that one reads the figures without
// us.
constexpr int rounds = 60'000;
constexpr int saltBytes = 16;
constexpr int keyBytes = 32;

QByteArray derived(const std::string& number, const QByteArray& salt) {
    return QPasswordDigestor::deriveKeyPbkdf2(QCryptographicHash::Sha256, QByteArray::fromStdString(number),
                                              salt, rounds, keyBytes);
}

QByteArray newSalt() {
    QByteArray salt(saltBytes, '\0');
    for (char& byte : salt)
        byte = static_cast<char>(QRandomGenerator::system()->bounded(256));
    return salt;
}

std::string secretOf(const std::string& number) {
    if (number.empty()) return {};
    const QByteArray salt = newSalt();
    return (salt.toHex() + '.' + derived(number, salt).toHex()).toStdString();
}

Person personOf(const Statement& row) {
    return {row.get<PersonId>(0), row.get<std::string>(1), row.get<std::string>(2),
            row.get<Role>(3),     row.get<bool>(4),        row.get<bool>(5)};
}

std::vector<Person> rowsOf(Statement& rows) {
    std::vector<Person> people;
    while (rows.next())
        people.push_back(personOf(rows));
    return people;
}

} // namespace

std::vector<Person> People::all() const {
    Statement rows{connection_,
                   "SELECT id, initials, name, role, secret <> '', gone FROM person ORDER BY initials"};
    return rowsOf(rows);
}

std::vector<Person> People::present() const {
    Statement rows{connection_,
                   "SELECT id, initials, name, role, secret <> '', gone FROM person WHERE gone = 0 "
                   "ORDER BY initials"};
    return rowsOf(rows);
}

Person People::at(PersonId id) const {
    Statement row{connection_, "SELECT id, initials, name, role, secret <> '', gone FROM person WHERE id = ?",
                  id};
    if (!row.next())
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no person " + std::to_string(id.value())};
    return personOf(row);
}

PersonId People::add(const std::string& initials, const std::string& name, Role role) {
    return insert<PersonId>(connection_, "INSERT INTO person (initials, name, role) VALUES (?, ?, ?)",
                            initials, name, role);
}

void People::change(const Person& person) {
    store::change(connection_, "UPDATE person SET initials = ?, name = ?, role = ?, gone = ? WHERE id = ?",
                  person.initials, person.name, person.role, person.gone, person.id);
}

void People::lock(PersonId id, const std::string& number) {
    store::change(connection_, "UPDATE person SET secret = ? WHERE id = ?", secretOf(number), id);
}

bool People::unlocks(PersonId id, const std::string& number) const {
    const auto secret =
        only<std::string>(connection_, "SELECT secret FROM person WHERE id = ?", id).value_or("");
    if (secret.empty()) return true;
    const auto parts = QByteArray::fromStdString(secret).split('.');
    return parts.size() == 2 &&
           derived(number, QByteArray::fromHex(parts[0])) == QByteArray::fromHex(parts[1]);
}

} // namespace riband::store
