#include "ui/desk/session.h"

#include "ui/words/words.h"

namespace riband::ui {

Session::Session(store::Connection connection, std::shared_ptr<const belt::Tables> tables,
                 store::PersonId person, std::function<Moment()> now, QString papersFolder)
    : connection_{std::move(connection)}, shop_{connection_, std::move(tables), person, std::move(now)},
      settings_{store::Settings{connection_}.read()}, person_{store::People{connection_}.at(person)},
      papersFolder_{std::move(papersFolder)} {}

void Session::save(const store::ShopSettings& settings) {
    store::Transaction transaction{connection_};
    store::Settings{connection_}.write(settings);
    transaction.commit();
    settings_ = store::Settings{connection_}.read(); // what is new has its number now
    emit settingsChanged();
}

void Session::actAs(store::PersonId person) {
    person_ = store::People{connection_}.at(person);
    shop_.person = person;
    emit personChanged();
}

QString Session::file() const {
    const std::string& path = connection_.path();
    return path == ":memory:" ? QString{} : QString::fromStdString(path);
}

bool Session::attempt(const std::function<void()>& act) {
    try {
        act();
        return true;
    } catch (const shop::Refusal& refusal) {
        warn(say(refusal));
    } catch (const store::StoreError& error) {
        warn(say(error));
    }
    return false;
}

bool openScanned(Session& session, const QString& text) {
    const std::string typed = text.trimmed().toStdString();
    shop::Scanned found;
    if (!session.attempt([&] { found = shop::scan(session.shop(), typed); })) return true;
    if (found.ticket)
        emit session.ticketWanted(found.ticket->id);
    else if (found.order)
        emit session.orderWanted(found.order->id);
    else if (found.piece)
        emit session.pieceWanted(found.piece->id);
    return found.any();
}

} // namespace riband::ui
