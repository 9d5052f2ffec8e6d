#include "ui/drive/entries.h"
#include "ui/drive/reading.h"
#include "ui/words/drive_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <cmath>
#include <numbers>

namespace riband::ui {

namespace {

using namespace belt::drive;

Station readStation(const ManyQuestion::Row& typed, const belt::Profile* profile, int row) {
    const auto x = readPlace(typed.x), y = readPlace(typed.y);
    if (!x || !y)
        refuse(DriveField::Pulleys, Words::tr("Pulley %1 needs its place, x and y in mm.").arg(row + 1), row);
    const Side side = typed.back ? Side::Back : Side::Inside;
    const bool toothed = profile && !profile->ribbed() && (side == Side::Inside || profile->doubleSided);
    const auto said = readPulley(typed.size, toothed, side);
    if (!said)
        refuse(DriveField::Pulleys,
               Words::tr("Pulley %1 needs its teeth, as in 22, or its diameter, as in 70 mm.").arg(row + 1),
               row);
    const auto pulley = pulleyOfLayout(profile, *said);
    if (!pulley) refuse(DriveField::Pulleys, say(pulley.reason(), profile), row);
    return {{*x, *y}, *pulley, side};
}

std::optional<Mover> readMover(const ManyQuestion& typed, std::optional<std::size_t> station) {
    if (!station) return std::nullopt;
    if (typed.reach.trimmed().isEmpty())
        ask(DriveField::Reach, Words::tr("Type how far the pulley can be set, in mm."));
    const auto reach = readRange(typed.reach);
    if (!reach)
        refuse(DriveField::Reach,
               Words::tr("Type how far it can be set: 10 for either way, or -5 +10 for back and on."));
    const auto degrees = typed.along.trimmed().isEmpty() ? std::optional{0.0} : readPlace(typed.along);
    if (!degrees || std::abs(*degrees) > 360)
        refuse(DriveField::Along, Words::tr("The way is an angle in degrees, from -360 to 360."));
    return Mover{*station, wayOf(*degrees * std::numbers::pi / 180), reach->nearer, reach->farther};
}

struct Asked {
    Layout layout;
    std::optional<Mover> mover;
    std::optional<Extent> width;
};

Asked read(const ManyQuestion& typed, const belt::Tables& tables) {
    const belt::Profile* profile = readProfile(typed.profile, tables);
    Asked asked{{profile, {}}, {}, readWidthOf(typed.width, profile)};
    std::optional<std::size_t> station;
    for (std::size_t i = 0; i < typed.rows.size(); ++i) {
        if (typed.rows[i].isEmpty()) continue;
        if (typed.mover == i) station = asked.layout.stations.size();
        asked.layout.stations.push_back(readStation(typed.rows[i], profile, static_cast<int>(i)));
    }
    if (asked.layout.stations.size() < 2)
        ask(DriveField::Pulleys,
            Words::tr(
                "Type the pulleys in the order in which the belt comes to them: their places, and teeth or "
                "diameter."));
    asked.mover = readMover(typed, station);
    return asked;
}

QString movedBy(const RouteChoice& choice, bool canBeSet) {
    if (choice.move) return shownMove(*choice.move);
    return canBeSet ? Words::tr("out of reach") : QStringLiteral("–");
}

RoutePicture pictureOf(const Asked& asked, const RouteChoice& choice) {
    RoutePicture picture{asked.layout, asked.mover};
    if (!choice.move) return picture;
    const Point way = (1 / std::hypot(asked.mover->way.x, asked.mover->way.y)) * asked.mover->way;
    Point& centre = picture.layout.stations[asked.mover->station].centre;
    centre = centre + *choice.move * way;
    picture.mover->back += *choice.move; // its ends stay where they are
    picture.mover->farthest -= *choice.move;
    return picture;
}

BeltRow rowOf(const Asked& asked, const RouteChoice& choice) {
    QStringList here;
    if (choice.inStock()) here << shownStock(choice.stock);
    if (!choice.listed) here << Words::tr("in no maker's list");
    return {asStocked(choice.belt, choice.stock),
            {text(belt::designation(choice.belt)),
             choice.belt.teeth ? QString::number(choice.belt.teeth->count()) : QStringLiteral("–"),
             choice.excess >= 0 ? Words::tr("%1 longer").arg(shownMillimetres(choice.excess))
                                : Words::tr("%1 shorter").arg(shownMillimetres(-choice.excess)),
             movedBy(choice, asked.mover.has_value()), here.join(QStringLiteral(" · "))},
            choice.inStock(),
            !asked.mover || choice.move.has_value(),
            pictureOf(asked, choice)};
}

void addBelts(DriveAnswer& answer, const Asked& asked, const Route& route, const belt::Tables& tables,
              const StockOf& stock) {
    const auto belts = beltsFor(asked.layout, route, asked.mover, asked.width, tables,
                                readStock(stock, asked.layout.profile->name, answer));
    for (const RouteChoice& choice : belts)
        answer.belts.push_back(rowOf(asked, choice));
    if (answer.belts.empty() || !answer.belts.front().reachable)
        answer.warnings << Words::tr("No belt that is made fits within what the pulley can be set.");
    if (!asked.mover)
        answer.notes << Words::tr("Mark the pulley that can be set to see how far each belt needs it.");
}

} // namespace

DriveAnswer answerTo(const ManyQuestion& question, const belt::Tables& tables, const StockOf& stock) {
    try {
        const Asked asked = read(question, tables);
        DriveAnswer answer;
        const auto route = routeOf(asked.layout);
        answer.picture = RoutePicture{asked.layout, asked.mover};
        answer.profile = asked.layout.profile;
        answer.width = asked.width;
        if (!route) {
            answer.open = say(route.reason());
            answer.wrong = true;
            answer.field = DriveField::Pulleys;
            return answer;
        }
        answer.exact = Words::tr("Exactly: belt %1").arg(shownMillimetres(route->length));
        for (std::size_t i = 0; i < route->contacts.size(); ++i)
            answer.notes << describe(route->contacts[i], i + 1);
        answer.headings = {Words::tr("Belt"), Words::tr("Teeth"), Words::tr("Against the route"),
                           Words::tr("Set the pulley"), Words::tr("Here")};
        if (asked.layout.profile)
            addBelts(answer, asked, *route, tables, stock);
        else
            answer.notes << Words::tr("Type the profile to see which belts exist.");
        return answer;
    } catch (const Unclear& why) {
        return unclear(why);
    }
}

} // namespace riband::ui
