#pragma once

#include "core/measure/extent.h"
#include "core/measure/length.h"

#include <QJsonValue>
#include <QString>

#include <string>

namespace riband::app {

// The rim where exact counts become JSON numbers. A double holds every count of micrometres or nanometres
// that the readers let through, divided once, and prints its shortest form: 2500 um is 2.5.

/// Micrometres as mm.
inline QJsonValue millimetres(std::int64_t micrometres) {
    return QJsonValue(static_cast<double>(micrometres) / 1e3);
}
inline QJsonValue millimetres(Length length) {
    return QJsonValue(static_cast<double>(length.inNanometres()) / 1e6);
}
/// Micrometres as mm, ribs as they are.
inline QJsonValue inUnit(Unit unit, std::int64_t count) {
    return unit == Unit::Rib ? QJsonValue(static_cast<qint64>(count)) : millimetres(count);
}
inline QJsonValue inUnit(Extent extent) { return inUnit(extent.unit(), extent.count()); }
/// "left" becomes left_mm or left_ribs.
inline QString keyOf(const char* name, Unit unit) {
    return QLatin1String(name) + (unit == Unit::Rib ? QLatin1String("_ribs") : QLatin1String("_mm"));
}
inline QJsonValue textValue(const std::string& text) { return QJsonValue(QString::fromStdString(text)); }

} // namespace riband::app
