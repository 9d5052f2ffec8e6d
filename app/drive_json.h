#pragma once

#include "core/belt/drive/load.h"
#include "core/belt/drive/route_choices.h"
#include "core/belt/drive/substitutes.h"

#include <QJsonObject>

namespace riband::app {

/// mm, degrees and plain numbers of geometry, rounded to a millionth: what is beyond is not known anyway.
QJsonValue rounded(double value);

/// The form of a drive of two pulleys, with the belts; `adjusted`: whether each is reachable is told, too.
QJsonObject jsonOf(const belt::drive::Run& run, const std::vector<belt::drive::Choice>& belts, bool adjusted);
QJsonObject jsonOf(const belt::drive::Pull& pull, const std::optional<belt::drive::Carry>& carry);
QJsonArray jsonOf(const std::vector<belt::drive::OtherWidth>& widths);
/// The form of a drive of more pulleys.
QJsonObject jsonOf(const belt::drive::Layout& layout, const belt::drive::Route& route,
                   const std::vector<belt::drive::RouteChoice>& belts);

} // namespace riband::app
