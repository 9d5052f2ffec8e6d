#pragma once

#include "core/shop/learn.h"
#include "ui/desk/reading.h"

#include <QThreadPool>

#include <atomic>
#include <deque>
#include <memory>

namespace riband::ui {

/// Fits worth tables while nobody waits: in one thread that yields to all others, on a connection of its own,
/// belt after belt, the one that is asked for at the counter first. Stopped with the window; a half-fitted
/// table is not kept.
class Learner final : public QObject {
    Q_OBJECT
public:
    explicit Learner(Session& session, QObject* parent = nullptr);
    ~Learner() override;
    /// This belt next, if its table is due.
    void want(store::BeltId belt);
    /// Of the belts that are ordered most often those whose table is due: when the shop is opened.
    void wantMostOrdered();
    bool busy() const { return stop_ != nullptr; }

private:
    void next();
    void take(store::BeltId belt, const std::optional<store::StoredWorth>& table);

    Session& session_;
    Reading* reading_; ///< what is due at opening
    QThreadPool pool_;
    std::deque<store::BeltId> due_;
    std::shared_ptr<std::atomic_bool> stop_; ///< of the fit that is under way
};

} // namespace riband::ui
