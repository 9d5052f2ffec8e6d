#pragma once

#include "app/console.h"

#include <QStringList>

namespace riband::app {

/// Opens a shop in its window and stays until that is closed. Without a file it is the one that was open
/// last; the first time, a new one in the person's own folder. Needs a QApplication.
Exit openWindow(const QStringList& files);

} // namespace riband::app
