#pragma once

#include "core/shop/queries.h"
#include "ui/desk/session.h"

#include <QObject>

#include <memory>

namespace riband::ui {

/// Reads the whole rack without holding up the window: in another thread on a connection of its own, or at
/// once where the shop lives in memory. Only the last reading is told.
class RackReader final : public QObject {
    Q_OBJECT
public:
    explicit RackReader(Session& session, QObject* parent = nullptr) : QObject{parent}, session_{session} {}
    void read();
    bool busy() const { return asked_ != nullptr; }

signals:
    void done(std::shared_ptr<std::vector<riband::shop::RackRow>> rows);

private:
    Session& session_;
    std::shared_ptr<int> asked_; ///< the last one, while it is read
};

} // namespace riband::ui
