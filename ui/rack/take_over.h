#pragma once

#include "core/shop/receive.h"
#include "ui/desk/session.h"

#include <QObject>

#include <atomic>
#include <memory>

namespace riband::ui {

/// Books many pieces in another thread, on a connection of its own, so that the window goes on; in the
/// window's own if the shop lives in memory. `progress` is told percents; `done` why nothing was booked, or
/// "" and how many were. Neither is called once `at` is gone. Set what it gives to stop.
std::shared_ptr<std::atomic_bool> takeOver(Session& session, std::vector<shop::Delivery> deliveries,
                                           QObject* at, std::function<void(int)> progress,
                                           std::function<void(const QString&, std::size_t)> done);

} // namespace riband::ui
