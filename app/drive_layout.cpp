#include "app/drive_layout.h"

#include "app/console.h"
#include "app/drive_options.h"
#include "app/table_file.h"
#include "core/belt/drive/said_pulley.h"
#include "ui/words/drive_words.h"
#include "ui/words/tr.h"

#include <cmath>
#include <numbers>

namespace riband::app {

namespace {

using namespace belt::drive;
using ui::Words;

constexpr std::int64_t mostTeeth = 100'000;
constexpr std::size_t mostPulleys = 50;
constexpr double farthest = 1e6; // mm from the origin

/// A place, which unlike a length may be negative.
std::optional<double> placeOf(TableFile& file, const CsvTable::Row& row, const char* column) {
    bool good = false;
    QString text = ui::text(file.field(row, column));
    const double place = text.replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&good);
    if (good && std::abs(place) <= farthest) return place;
    file.fault(row, column, Words::tr("A number of millimetres is needed."));
    return std::nullopt;
}

std::optional<Side> sideOf(TableFile& file, const CsvTable::Row& row) {
    const std::string side = file.field(row, "side");
    if (side.empty() || side == "inside") return Side::Inside;
    if (side == "back") return Side::Back;
    file.fault(row, "side", Words::tr("Say inside or back."));
    return std::nullopt;
}

/// What is said of the pulley; nothing if a number is none.
std::optional<SaidPulley> saidPulley(TableFile& file, const CsvTable::Row& row, Side side) {
    SaidPulley said{{}, {}, side};
    if (!file.field(row, "teeth").empty()) {
        const auto teeth = file.count(row, "teeth", mostTeeth);
        if (!teeth) return std::nullopt;
        said.teeth = Teeth{*teeth};
    }
    if (!file.field(row, "diameter_mm").empty()) {
        const auto diameter =
            file.quantity<Length>(row, "diameter_mm", [](auto text) { return readLength(text); });
        if (!diameter) return std::nullopt;
        said.diameter = diameter->inMillimetres();
    }
    return said;
}

std::optional<Pulley> pulleyAt(TableFile& file, const CsvTable::Row& row, Side side,
                               const belt::Profile* profile) {
    const auto said = saidPulley(file, row, side);
    if (!said) return std::nullopt;
    const auto pulley = pulleyOfLayout(profile, *said);
    if (pulley) return *pulley;
    const bool ofTeeth = said->teeth && !said->diameter;
    file.fault(row, ofTeeth ? "teeth" : "diameter_mm", ui::say(pulley.reason(), profile));
    return std::nullopt;
}

std::optional<Station> stationOf(TableFile& file, const CsvTable::Row& row, const belt::Profile* profile) {
    const auto x = placeOf(file, row, "x_mm"), y = placeOf(file, row, "y_mm");
    const auto side = sideOf(file, row);
    if (!side) return std::nullopt;
    const auto pulley = pulleyAt(file, row, *side, profile);
    if (!x || !y || !pulley) return std::nullopt;
    return Station{{*x, *y}, *pulley, *side};
}

double angleOf(const Options& options) {
    if (!options.has("along")) return 0;
    bool good = false;
    const double degrees = options.value("along").toDouble(&good);
    if (!good || !(std::abs(degrees) <= 360))
        throw BadInput(Words::tr("--along needs degrees, from -360 to 360."));
    return degrees * std::numbers::pi / 180;
}

} // namespace

Layout layoutOf(const Options& options, const belt::Profile* profile) {
    TableFile file(options.value("layout"), {"x_mm", "y_mm", "diameter_mm"});
    file.refuseOthers({"x_mm", "y_mm", "teeth", "diameter_mm", "side"});
    if (file.rows().size() > mostPulleys)
        throw BadInput(Words::tr("A layout has up to %1 pulleys.").arg(mostPulleys));
    Layout layout{profile, {}};
    for (const CsvTable::Row& row : file.rows())
        if (const auto station = stationOf(file, row, profile)) layout.stations.push_back(*station);
    file.refuseFaults();
    return layout;
}

std::optional<Mover> moverOf(const Options& options, const Layout& layout) {
    const auto adjust = millimetresOf(options, "adjust");
    if (!options.has("move")) {
        if (adjust || options.has("along"))
            throw BadInput(Words::tr("--adjust and --along need --move: which pulley can be set?"));
        return std::nullopt;
    }
    bool whole = false;
    const auto number = options.value("move").toULongLong(&whole);
    if (!whole || number < 1 || number > layout.stations.size())
        throw BadInput(
            Words::tr("--move needs the number of a pulley, from 1 to %1.").arg(layout.stations.size()));
    if (!adjust) throw BadInput(Words::tr("--move needs --adjust: how far can it be set?"));
    return Mover{number - 1, wayOf(angleOf(options)), *adjust, *adjust};
}

} // namespace riband::app
