#include "app/reading_json.h"

#include "app/json.h"
#include "ui/words/words.h"

#include <QJsonArray>

namespace riband::app {

namespace {

const QJsonValue nothing{QJsonValue::Null};

QJsonValue ribsOf(const belt::Reading& reading) {
    if (!reading.width || reading.width->unit() != Unit::Rib) return nothing;
    return QJsonValue(static_cast<qint64>(reading.width->count()));
}

QJsonValue toleranceJson(const std::optional<belt::WidthTolerance>& tolerance) {
    if (!tolerance) return nothing;
    return QJsonObject{{"minus", millimetres(tolerance->minus.inMicrometres())},
                       {"plus", millimetres(tolerance->plus.inMicrometres())}};
}

} // namespace

std::optional<Width> widthOf(const belt::Reading& reading, const belt::Tables& tables) {
    const belt::Profile* profile = tables.profile(reading.belt.profile);
    if (!reading.width || !profile) return std::nullopt;
    return reading.width->shownWidth(Width::micrometres(profile->pitch.inNanometres() / 1000));
}

std::optional<belt::WidthTolerance> toleranceOf(const belt::Reading& reading, const belt::Tables& tables) {
    if (!reading.width || reading.width->unit() == Unit::Rib) return std::nullopt;
    return tables.widthTolerance(reading.belt, reading.width->width());
}

QString writtenForm(const belt::Reading& reading, const belt::Tables& tables) {
    return QString::fromStdString(reading.width ? belt::printed(reading.belt, *reading.width, tables)
                                                : belt::designation(reading.belt));
}

QJsonObject jsonOf(const belt::Reading& reading, const belt::Tables& tables) {
    const belt::Profile* profile = tables.profile(reading.belt.profile);
    const auto width = widthOf(reading, tables);
    const auto& teeth = reading.belt.teeth;
    return {
        {"profile", textValue(reading.belt.profile)},
        {"teeth", teeth ? QJsonValue(static_cast<qint64>(teeth->count())) : nothing},
        {"length_mm", millimetres(reading.belt.length)},
        {"width_mm", width ? millimetres(width->inMicrometres()) : nothing},
        {"ribs", ribsOf(reading)},
        {"quantity", static_cast<qint64>(reading.quantity)},
        {"standard", profile ? textValue(profile->standard) : nothing},
        {"text", writtenForm(reading, tables)},
        {"width_tolerance_mm", toleranceJson(toleranceOf(reading, tables))},
    };
}

QJsonObject jsonOf(const belt::Understanding& understanding, const belt::Tables& tables) {
    QJsonArray readings;
    for (const belt::Reading& reading : understanding.readings)
        readings << jsonOf(reading, tables);
    return {
        {"readings", readings},
        {"question", understanding.question ? QJsonValue(ui::say(*understanding.question)) : nothing},
        {"error", understanding.fault ? QJsonValue(ui::say(*understanding.fault, tables)) : nothing},
    };
}

} // namespace riband::app
