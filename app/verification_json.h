#pragma once

#include "core/store/verify.h"

#include <QJsonObject>

namespace riband::app {

/// docs/commands.md, "verify".
QJsonObject jsonOf(const store::Verification& found);
/// For a person: a line for each disagreement, then what was looked at.
void printVerification(const store::Verification& found);

} // namespace riband::app
