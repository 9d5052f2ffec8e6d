#pragma once

#include "core/shop/queries.h"
#include "core/store/settings.h"

#include <QObject>
#include <QString>

#include <functional>
#include <memory>
#include <optional>

namespace riband::ui {

/// An open shop as the pages see it: the connection of the window's thread, who acts, what time it is, and
/// where papers are kept. Pages tell it what they did; it tells the others.
class Session final : public QObject {
    Q_OBJECT
public:
    Session(store::Connection connection, std::shared_ptr<const belt::Tables> tables, store::PersonId person,
            std::function<Moment()> now, QString papersFolder);

    const shop::Shop& shop() const { return shop_; }
    const store::Person& person() const { return person_; }
    bool reaches(store::Role least) const { return person_.role >= least; }
    /// From now on this person acts.
    void actAs(store::PersonId person);
    const belt::Tables& tables() const { return *shop_.tables; }
    /// Read once and kept until somebody saves others.
    const store::ShopSettings& settings() const { return settings_; }
    void save(const store::ShopSettings& settings);
    const Currency& currency() const { return settings_.prices.currency; }
    /// The currency in which this person is told what stock costs; nothing if that is not for him.
    std::optional<Currency> costsIn() const {
        return reaches(store::Role::Owner) ? std::optional{currency()} : std::nullopt;
    }
    Date today() const { return dayOf(shop_.now()); }
    const QString& papersFolder() const { return papersFolder_; }
    /// The file of the shop; empty if it lives in memory.
    QString file() const;

    /// Does one act of a person. A refusal or a failing store is said in words and gives false; nothing that
    /// was typed is lost.
    bool attempt(const std::function<void()>& act);
    void tell(const QString& words) { emit told(words); }
    void warn(const QString& words) { emit warned(words); }
    /// Pieces, orders or tickets are not what they were.
    void touch() { emit changed(); }

signals:
    void changed();
    void settingsChanged();
    void personChanged();
    void told(const QString& words);
    void warned(const QString& words);
    /// The counter would rather have a worth table of this belt.
    void worthWanted(riband::store::BeltId belt);
    /// There is a new worth table of this belt.
    void worthLearned(riband::store::BeltId belt);
    /// Somebody wants to see this thing, wherever it is shown.
    void pieceWanted(riband::store::PieceId piece);
    void ticketWanted(riband::store::TicketId ticket);
    void orderWanted(riband::store::OrderId order);
    /// A parked or quoted order is to go on at the Counter.
    void takeUpWanted(riband::store::OrderId order);

private:
    store::Connection connection_;
    shop::Shop shop_;
    store::ShopSettings settings_;
    store::Person person_;
    QString papersFolder_;
};

/// Shows what a code names: the piece on the Rack, the ticket on the Bench, the order by itself. False if it
/// names nothing.
bool openScanned(Session& session, const QString& text);

} // namespace riband::ui
