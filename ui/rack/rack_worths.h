#pragma once

#include "core/shop/piece_worth.h"
#include "ui/desk/session.h"

#include <QThreadPool>

#include <atomic>
#include <deque>
#include <memory>
#include <vector>

namespace riband::ui {

/// Finds what the pieces on the rack are worth while nobody waits for it: belt after belt, those that are
/// seen first, on a connection of its own in a thread that yields to all others; at once where the shop lives
/// in memory.
class RackWorths final : public QObject {
    Q_OBJECT
public:
    using Found = std::vector<std::pair<store::PieceId, std::optional<shop::PieceWorth>>>;
    explicit RackWorths(Session& session, QObject* parent = nullptr);
    ~RackWorths() override;

    /// Of the pieces of all these belts; what is still being found of others is dropped.
    void find(std::vector<store::BeltId> belts);
    /// These first.
    void see(std::vector<store::BeltId> belts);
    /// This belt anew.
    void renew(store::BeltId belt);
    bool busy() const { return stop_ != nullptr; }

signals:
    void found(const riband::ui::RackWorths::Found& worths);
    void finished();

private:
    void next();
    void take(const Found& worths, const std::vector<store::BeltId>& left);
    void seenFirst();

    Session& session_;
    QThreadPool pool_;
    std::deque<store::BeltId> due_;
    std::vector<store::BeltId> seen_;
    std::shared_ptr<std::atomic_bool> stop_; ///< of the slice that is under way
};

} // namespace riband::ui
