#include "app/open_shop.h"

#include "app/console.h"
#include "app/standard_tables.h"
#include "ui/words/tr.h"

namespace riband::app {

namespace {

store::PersonId personOf(store::Connection& connection, const QString& initials) {
    const auto people = store::People{connection}.present();
    if (people.empty())
        throw BadInput(ui::Words::tr("Nobody works in this shop yet. Open it once in its window."));
    if (initials.isEmpty()) return people.front().id;
    for (const store::Person& person : people)
        if (person.initials == initials.toStdString()) return person.id;
    throw BadInput(ui::Words::tr("Nobody in this shop has the initials %1.").arg(initials));
}

} // namespace

Moment presentMoment() {
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

OpenShop::OpenShop(const QString& file, store::Connection::Mode mode, const QString& initials)
    : connection_{file.toStdString(), mode}, shop_{connection_, standardTables(),
                                                   personOf(connection_, initials), presentMoment} {}

} // namespace riband::app
