#include "app/drive_json.h"

#include "app/json.h"

#include <QJsonArray>

#include <cmath>
#include <numbers>

namespace riband::app {

namespace {

using namespace belt::drive;

const QJsonValue nothing{QJsonValue::Null};

QJsonValue roundedIfAny(const std::optional<double>& value) { return value ? rounded(*value) : nothing; }

QJsonValue wholeTeeth(const std::optional<double>& mesh) {
    return mesh ? QJsonValue(std::floor(*mesh + 1e-9)) : nothing;
}

/// What every belt has.
QJsonObject beltJson(const belt::Belt& belt, bool inStock) {
    return {{"profile", textValue(belt.profile)},
            {"teeth", belt.teeth ? QJsonValue(static_cast<qint64>(belt.teeth->count())) : nothing},
            {"length_mm", millimetres(belt.length)},
            {"in_stock", inStock}};
}

QJsonArray pair(Point point) { return {rounded(point.x), rounded(point.y)}; }

QJsonObject contactJson(const Station& station, const Contact& contact) {
    return {{"centre_mm", pair(station.centre)},
            {"pitch_diameter_mm", rounded(station.pulley.pitchDiameter)},
            {"side", station.side == Side::Inside ? "inside" : "back"},
            {"arc_deg", rounded(contact.arc * 180 / std::numbers::pi)},
            {"entry_mm", pair(contact.entry)},
            {"exit_mm", pair(contact.exit)},
            {"counter_clockwise", contact.counterClockwise},
            {"teeth_in_mesh", wholeTeeth(contact.mesh)},
            {"turns", rounded(contact.turns)}};
}

QJsonObject spanJson(const Segment& span) {
    return {{"from_mm", pair(span.from)}, {"to_mm", pair(span.to)}, {"length_mm", rounded(lengthOf(span))}};
}

QJsonObject carryJson(const Carry& carry) {
    return {{"carries_kw", roundedIfAny(carry.kilowatts)},
            {"share", roundedIfAny(carry.share)},
            {"mesh_factor", rounded(carry.meshFactor)},
            {"least_width_mm", roundedIfAny(carry.leastWidth)},
            {"next_width_mm", carry.nextListed ? millimetres(carry.nextListed->extent.count()) : nothing},
            {"standard", textValue(carry.standard)}};
}

} // namespace

QJsonValue rounded(double value) { return std::round(value * 1e6) / 1e6; }

QJsonObject jsonOf(const Run& run, const std::vector<Choice>& belts, bool adjusted) {
    QJsonArray found;
    for (const Choice& choice : belts) {
        QJsonObject belt = beltJson(choice.belt, choice.inStock());
        belt.insert("centre_mm", rounded(choice.run.centre));
        if (adjusted) belt.insert("reachable", choice.reachable);
        found << belt;
    }
    return {{"length_exact_mm", rounded(run.length)},
            {"centre_mm", rounded(run.centre)},
            {"arc_small_deg", rounded(run.arcSmallDegrees)},
            {"arc_large_deg", rounded(run.arcLargeDegrees)},
            {"teeth_in_mesh", wholeTeeth(run.mesh)},
            {"ratio", rounded(run.ratio)},
            {"belts", found}};
}

QJsonObject jsonOf(const Pull& pull, const std::optional<Carry>& carry) {
    return {{"belt_speed_m_s", rounded(pull.beltSpeed)},
            {"pull_n", rounded(pull.effective)},
            {"torque_1_nm", rounded(pull.torqueFirst)},
            {"torque_2_nm", rounded(pull.torqueSecond)},
            {"carries", carry ? QJsonValue(carryJson(*carry)) : nothing}};
}

QJsonArray jsonOf(const std::vector<OtherWidth>& widths) {
    QJsonArray all;
    for (const OtherWidth& width : widths)
        all << QJsonObject{{keyOf("width", width.width.unit()), inUnit(width.width)},
                           {"share", rounded(width.share)}};
    return all;
}

QJsonObject jsonOf(const Layout& layout, const Route& route, const std::vector<RouteChoice>& belts) {
    QJsonArray pulleys, spans, found;
    for (std::size_t i = 0; i < route.contacts.size(); ++i) {
        pulleys << contactJson(layout.stations[i], route.contacts[i]);
        spans << spanJson(route.spans[i]);
    }
    for (const RouteChoice& choice : belts) {
        QJsonObject belt = beltJson(choice.belt, choice.inStock());
        belt.insert("excess_mm", rounded(choice.excess));
        belt.insert("move_mm", roundedIfAny(choice.move));
        found << belt;
    }
    return {
        {"length_exact_mm", rounded(route.length)}, {"pulleys", pulleys}, {"spans", spans}, {"belts", found}};
}

} // namespace riband::app
