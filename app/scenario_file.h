#pragma once

#include "core/foresight/scenario.h"

#include <QByteArray>
#include <QString>

#include <vector>

namespace riband::app {

/// The shops of a scenario file (docs/foresight.md, "Scenario files"). Throws BadInput that names the shop
/// and the field.
std::vector<foresight::Scenario> readScenarios(const QByteArray& json);

/// The shops called so: “practice” is all that come with the program, one of their names that one, “drawn N”
/// the N-th of an endless row of invented ones, anything else a file. Throws BadInput.
std::vector<foresight::Scenario> scenariosNamed(const QString& name);

} // namespace riband::app
