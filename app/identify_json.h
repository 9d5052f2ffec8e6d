#pragma once

#include "core/belt/identify/identify.h"

#include <QJsonObject>

namespace riband::app {

/// docs/commands.md, "identify".
QJsonObject jsonOf(const belt::identify::Identification& answer, const belt::identify::Sample& sample,
                   bool keepWidth);

} // namespace riband::app
