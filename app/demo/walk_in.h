#pragma once

#include "ui/desk/session.h"

namespace riband::app {

/// Serves one walk-in from words to the belts in hand, printing each step, and leaves ticket, order and label
/// papers and pictures of the pages in the session's papers folder. False if the shop could not give the
/// belts.
bool serveWalkIn(ui::Session& session);

} // namespace riband::app
