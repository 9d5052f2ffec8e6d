#pragma once

#include "ui/desk/session.h"

#include <functional>

namespace riband::app {

/// Serves one walk-in from words to the belts in hand, telling each step, and leaves ticket, order and label
/// papers and pictures of the pages in the session's papers folder. False if the shop could not give the
/// belts.
bool serveWalkIn(ui::Session& session, const std::function<void(const QString& line)>& tell);

} // namespace riband::app
